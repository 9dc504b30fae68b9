// The page that makes lines to embed: an element of the chosen topic, and its lines, which follow it.
(() => {
  const builder = document.getElementById("builder");
  const topic = document.getElementById("topic");
  const place = document.getElementById("set-up");
  const still = document.getElementById("still");
  const copied = document.getElementById("copied");
  builder.hidden = false;
  let element;
  let kept; // address of the figure that may be saved
  const altOf = (svg) => {
    const drawn = new DOMParser().parseFromString(svg, "image/svg+xml");
    const text = (name) => drawn.querySelector(`svg > ${name}`)?.textContent ?? "";
    return [text("title"), text("desc")].filter(Boolean).join(". ");
  };
  const escaped = (text) => text.replaceAll("&", "&amp;").replaceAll("<", "&lt;").replaceAll('"', "&quot;");
  const write = async () => {
    const own = element;
    for (const kind of ["module", "classic", "frame"]) {
      const line = await own.embed(kind);
      if (own !== element) return;
      // The offline file has no address of its own.
      document.getElementById(kind).value = line.replace(' src="/', ' src="https://example.org/axlewright/');
    }
    const svg = await own.figure("svg");
    if (own !== element || !svg) return;
    const name = `${own.localName.slice("axle-".length)}.svg`;
    document.getElementById("image").value = `<img src="${name}" alt="${escaped(altOf(svg))}">`;
    URL.revokeObjectURL(kept);
    kept = URL.createObjectURL(new Blob([svg], { type: "image/svg+xml" }));
    still.href = kept;
    still.download = name;
  };
  const show = async () => {
    element = document.createElement(topic.value);
    place.replaceChildren(element);
    element.addEventListener("axle-change", write);
    await customElements.whenDefined(topic.value);
    await element.updateComplete;
    write();
  };
  topic.addEventListener("change", show);
  builder.addEventListener("click", async ({ target }) => {
    const id = target.dataset?.copy;
    if (!id) return;
    const field = document.getElementById(id);
    try {
      await navigator.clipboard.writeText(field.value);
    } catch {
      field.select();
      document.execCommand("copy");
    }
    copied.textContent = builder.dataset.copied;
    setTimeout(() => { copied.textContent = ""; }, 4000);
  });
  show();
})();
