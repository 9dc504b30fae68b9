// The end of axlewright.js, the ES module: the wasm file lies beside it.
// The hash in an address keeps a cached file of another build away from this script. WORDS holds those of
// the languages.
async function loadModule() {
  const url = new URL(`axlewright_bg.wasm?${WASM_HASH}`, import.meta.url);
  const response = await fetch(url);
  if (!response.ok) throw new Error(`${url} answered ${response.status}`);
  const streams = WebAssembly.compileStreaming && response.headers.get("content-type") === "application/wasm";
  return streams ? WebAssembly.compileStreaming(response) : WebAssembly.compile(await response.arrayBuffer());
}
async function loadWords(tag) {
  const url = new URL(`words/${tag}.txt?${WORDS[tag]}`, import.meta.url);
  const response = await fetch(url);
  if (!response.ok) throw new Error(`${url} answered ${response.status}`);
  return response.text();
}
const home = import.meta.url;
export default api.init;
export const { version, solve, topics, schema, provokeTrap } = api;
