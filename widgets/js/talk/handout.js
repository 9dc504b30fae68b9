// A talk on paper: one block for each step. And as a text, for whoever does not see the figures.

// SVG text that Rust wrote, with the ink of its step.
const figureOf = (svg, inks) => {
  const figure = new DOMParser().parseFromString(svg, "image/svg+xml").documentElement;
  figure.append(...inks.map((ink) => document.importNode(ink, true)));
  return document.importNode(figure, true);
};

const blockOf = (sheet, at, count, inks, words) => {
  const block = make("section", { "class": "block" });
  const shown = make("div", { "class": "shown" });
  shown.append(make("p", { "class": "count" }, fill(words.step, at + 1, count)));
  if (sheet.svg) shown.append(figureOf(sheet.svg, inks));
  if (sheet.question) shown.append(make("p", { "class": "asked" }, sheet.question));
  shown.append(make("p", { "class": "said" }, sheet.said));
  if (sheet.note) shown.append(make("p", { "class": "note" }, sheet.note));
  const working = make("div");
  working.innerHTML = sheet.working; // Rust wrote it and has escaped every text
  block.append(shown, working);
  return block;
};

const handoutOf = (title, sheets, inksOf, words) => {
  const handout = make("div", { "class": "handout" });
  handout.append(make("h1", {}, title));
  sheets.forEach((sheet, at) => handout.append(blockOf(sheet, at, sheets.length, inksOf(at), words)));
  return handout;
};

// Prints the handout on pages of its own, with page numbers.
const printHandout = async (handout, title, language) => {
  const frame = make("iframe", { "class": "paper", "title": title });
  frame.style.cssText = "position:fixed;inset-inline-start:-200vw;inline-size:180mm;block-size:250mm;border:0";
  document.body.append(frame);
  try {
    const page = frame.contentDocument;
    page.documentElement.lang = language;
    page.title = title;
    const sheet = new frame.contentWindow.CSSStyleSheet();
    sheet.replaceSync(PAPER_CSS);
    page.adoptedStyleSheets = [sheet];
    page.body.append(page.adoptNode(handout));
    const over = new Promise((done) => {
      frame.contentWindow.addEventListener("afterprint", done);
      setTimeout(done, 60000);
    });
    frame.contentWindow.focus();
    frame.contentWindow.print();
    await over;
  } finally {
    frame.remove();
  }
};

const transcriptOf = (sheets) => sheets.map((sheet) => {
  const item = make("li");
  for (const text of [sheet.question, sheet.said, sheet.description, sheet.note]) {
    if (text) item.append(make("p", {}, text));
  }
  return item;
});
