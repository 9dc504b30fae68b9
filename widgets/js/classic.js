// The end of axlewright.classic.js, a classic script for pages that are opened from the file system:
// such a page may neither import a module nor fetch a file, so the wasm is inside, and in WORDS the
// text of every language.
function loadModule() {
  return WebAssembly.compile(Uint8Array.from(atob(WASM_BASE64), (letter) => letter.charCodeAt(0)));
}
async function loadWords(tag) {
  return WORDS[tag];
}
const home = document.currentScript?.src ?? "";
globalThis.axlewright ??= api;
