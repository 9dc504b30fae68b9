// Chooses the build of the elements: a page opened from the file system may neither import a module
// nor fetch wasm, so there the classic script with the wasm inside is taken. The query of the address is
// for the element that its part after # names, or for the first one.
(() => {
  const first = document.querySelector(ELEMENTS);
  const talk = document.querySelector("axle-talk");
  if (!first && !talk && !document.getElementById("builder")) return;
  const named = document.getElementById(location.hash.slice(1));
  if (first) applyQuery(named?.matches(ELEMENTS) ? named : first);
  for (const name of talk ? ["axlewright", "axlewright-talk"] : ["axlewright"]) {
    const script = document.createElement("script");
    if (location.protocol === "file:") {
      script.src = `${name}.classic.js`;
      script.async = false; // the second needs the first
    } else {
      script.type = "module";
      script.src = `${name}.js`;
    }
    document.head.append(script);
  }
})();

// The reader sees the menu close when going elsewhere with a click or with Escape.
(() => {
  const menu = document.querySelector(".top details");
  if (!menu) return;
  addEventListener("click", ({ target }) => { if (!menu.contains(target)) menu.open = false; });
  menu.addEventListener("keydown", ({ key }) => {
    if (key !== "Escape" || !menu.open) return;
    menu.open = false;
    menu.querySelector("summary").focus();
  });
})();

// The worker keeps the pages for times without a network. A newer version waits until it is taken.
addEventListener("load", async () => {
  // Pages of the development server change under their reader's hands.
  if (!navigator.serviceWorker || !location.protocol.startsWith("http") || location.hostname === "127.0.0.1") return;
  const offer = (waiting) => {
    if (!waiting || document.querySelector(".version")) return;
    const line = Object.assign(document.createElement("p"), { className: "version", textContent: `${NEW_VERSION} ` });
    line.setAttribute("role", "status");
    const button = Object.assign(document.createElement("button"), { type: "button", textContent: TAKE_IT });
    button.addEventListener("click", () => {
      navigator.serviceWorker.addEventListener("controllerchange", () => location.reload(), { once: true });
      waiting.postMessage("take over");
    });
    line.append(button);
    document.body.prepend(line);
  };
  try {
    const held = await navigator.serviceWorker.register("sw.js", { updateViaCache: "none" });
    if (navigator.serviceWorker.controller) offer(held.waiting);
    const watch = () => {
      const fresh = held.installing;
      fresh?.addEventListener("statechange", () => {
        if (fresh.state === "installed" && navigator.serviceWorker.controller) offer(fresh);
      });
    };
    // One may have been found before this page listened.
    watch();
    held.addEventListener("updatefound", watch);
  } catch {
    // Without a worker everything works as long as there is a network.
  }
});
