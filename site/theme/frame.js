// A frame shows one element, set up by the query of its address, and tells the page that holds it how
// high it is and what its reader does. The frame has nothing to hide, so it tells whoever holds it.
(() => {
  const element = document.querySelector(ELEMENTS);
  applyQuery(element);
  if (parent === window) return;
  const tell = (message) => parent.postMessage(message, "*");
  const page = document.documentElement;
  const topic = element.localName.slice("axle-".length);
  let told;
  new ResizeObserver(() => {
    const height = Math.ceil(page.getBoundingClientRect().height);
    if (height !== told) tell({ type: "axlewright-height", height, topic });
    told = height;
  }).observe(page);
  for (const event of EVENTS) {
    element.addEventListener(event, ({ detail }) => tell({ type: "axlewright-event", event, detail }));
  }
})();
