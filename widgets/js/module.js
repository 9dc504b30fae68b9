// The end of axlewright.js, the ES module: the wasm files lie beside it.
// The hash in an address keeps a cached file of another build away from this script. WASM and WORDS hold
// them.
async function loadModule(file) {
  const url = new URL(`${file}?${WASM[file]}`, import.meta.url);
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
export const { version, solve, topics, schema, talk, provokeTrap } = api;
