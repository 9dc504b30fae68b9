// What the search looks through: each heading of the pages and the text under it, read from the pages of
// this file as the builder reads them for the hosted site's index. An index would be a tenth of this file.
globalThis.SEARCH_ENTRIES = ((found) => {
  const silent = "math, svg, script, style";
  const inline = "a, abbr, code, dfn, em, i, b, span, strong, sub, sup";
  const cut = (text) => {
    const letters = [...text];
    if (letters.length <= LONGEST) return text;
    const start = letters.slice(0, LONGEST).join("");
    const end = start.lastIndexOf(" ");
    return `${end < 0 ? start : start.slice(0, end)} …`;
  };
  const entries = [];
  for (const [slug, page] of Object.entries(found)) {
    let last;
    const read = (node, inHeading) => {
      if (node.nodeType === Node.TEXT_NODE) {
        if (last) last[inHeading ? "heading" : "text"] += node.data.replaceAll("\n", " ");
        return;
      }
      if (node.nodeType !== Node.ELEMENT_NODE || node.matches(silent)) return;
      const heads = node.matches("h1, h2, h3, dt[id]");
      if (heads) {
        const anchor = node.id.slice(`${slug}--`.length);
        last = { id: entries.length, page, heading: "", text: "", top: node.localName === "h1", anchor };
        entries.push(last);
      }
      const ends = !node.matches(inline);
      if (ends && last) last.text += " ";
      for (const child of node.childNodes) read(child, inHeading || heads);
      if (ends && last) last.text += " ";
    };
    read(document.getElementById(slug), false);
    for (const entry of entries) entry.address ??= `${slug}.html${entry.top ? "" : `#${entry.anchor}`}`;
  }
  const kept = entries.filter(({ top, anchor }) => top || anchor);
  for (const entry of kept) {
    entry.text = entry.text.trim().replace(/\s+/g, " ");
    entry.title = `${entry.heading} ${entry.page}`;
    entry.excerpt = cut(entry.text);
  }
  return kept;
})(FOUND);
