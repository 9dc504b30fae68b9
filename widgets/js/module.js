// The end of axlewright.js, the ES module: the wasm file lies beside it.
// The hash in the address keeps a cached wasm file of another build away from this script.
async function loadModule() {
  const url = new URL(`axlewright_bg.wasm?${WASM_HASH}`, import.meta.url);
  const response = await fetch(url);
  if (!response.ok) throw new Error(`${url} answered ${response.status}`);
  const streams = WebAssembly.compileStreaming && response.headers.get("content-type") === "application/wasm";
  return streams ? WebAssembly.compileStreaming(response) : WebAssembly.compile(await response.arrayBuffer());
}
export default api.init;
export const { version, solve, topics, schema, provokeTrap } = api;
