// Chooses the build of the elements: a page opened from the file system may neither import a module
// nor fetch wasm, so there the classic script with the wasm inside is taken. The query of the address is
// for the element that its part after # names, or for the first one.
(() => {
  const first = document.querySelector(ELEMENTS);
  if (!first) return;
  const named = document.getElementById(location.hash.slice(1));
  applyQuery(named?.matches(ELEMENTS) ? named : first);
  const script = document.createElement("script");
  if (location.protocol === "file:") {
    script.src = "axlewright.classic.js";
  } else {
    script.type = "module";
    script.src = "axlewright.js";
  }
  document.head.append(script);
})();
