// A still picture of an element whose instance died: it looks the same, and nothing in it listens.
const picture = (live) => {
  const still = live.cloneNode(true);
  const originals = live.querySelectorAll("canvas");
  still.querySelectorAll("canvas").forEach((canvas, index) => {
    try {
      canvas.getContext("2d").drawImage(originals[index], 0, 0);
    } catch {
      // No size, or no canvas in this browser: the chart stays blank, its description is there.
    }
  });
  const chosen = live.querySelectorAll("select");
  still.querySelectorAll("select").forEach((select, index) => {
    select.selectedIndex = chosen[index].selectedIndex; // the only control whose state a clone forgets
  });
  for (const control of still.querySelectorAll("input, select, textarea, button")) control.disabled = true;
  for (const stop of still.querySelectorAll("[tabindex]")) stop.removeAttribute("tabindex");
  return still;
};

// Where the focus is, as child numbers, so that it can be put back into the same control of a new tree.
const pathTo = (root, node) => {
  const path = [];
  for (; node && node !== root; node = node.parentElement) {
    path.unshift([...node.parentNode.children].indexOf(node));
  }
  return path;
};
const focusAt = (root, path) => {
  const node = path.reduce((parent, index) => parent?.children[index], root);
  if (document.activeElement === document.body) node?.focus({ preventScroll: true });
};

// A sentence for the reader, in the nearest language that the catalogue has.
const sentence = (language, key) => {
  return (TABLE.words[tagOf(language)] ?? TABLE.words.en)[key] ?? "";
};

// A figure as a PNG file, `scale` pixels for each of its units.
const pngOf = async (svg, scale) => {
  if (!(scale >= 1 && scale <= 4)) throw new RangeError("scale: 1 to 4");
  const address = URL.createObjectURL(new Blob([svg], { type: "image/svg+xml" }));
  try {
    const image = new Image();
    image.src = address;
    await image.decode();
    const canvas = document.createElement("canvas");
    canvas.width = scale * image.naturalWidth;
    canvas.height = scale * image.naturalHeight;
    canvas.getContext("2d").drawImage(image, 0, 0, canvas.width, canvas.height);
    return await new Promise((done) => canvas.toBlob(done, "image/png"));
  } finally {
    URL.revokeObjectURL(address);
  }
};
