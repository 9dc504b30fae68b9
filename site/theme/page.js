// Chooses the build of the elements: a page opened from the file system may neither import a module
// nor fetch wasm, so there the classic script with the wasm inside is taken.
(() => {
  const script = document.createElement("script");
  if (location.protocol === "file:") {
    script.src = "axlewright.classic.js";
  } else {
    script.type = "module";
    script.src = "axlewright.js";
  }
  if (document.querySelector(ELEMENTS)) document.head.append(script);
})();
