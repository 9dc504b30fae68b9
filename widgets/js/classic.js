// The end of axlewright.classic.js, a classic script for pages that are opened from the file system:
// such a page may neither import a module nor fetch a file, so the wasm files are inside, compressed, in
// WASM, and in WORDS the text of every language.
async function loadModule(file) {
  const packed = Uint8Array.from(atob(WASM[file]), (letter) => letter.charCodeAt(0));
  const plain = new Blob([packed]).stream().pipeThrough(new DecompressionStream("gzip"));
  return WebAssembly.compile(await new Response(plain).arrayBuffer());
}
async function loadWords(tag) {
  return WORDS[tag];
}
const home = document.currentScript?.src ?? "";
globalThis.axlewright ??= api;
