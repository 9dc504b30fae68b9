// Looks up the words of the address or of the field in the index that the builder made.
(() => {
  const field = document.getElementById("q");
  const results = document.getElementById("results");
  // As the builder cuts texts into words.
  const tokenize = (text) => text.toLowerCase().match(/[\p{Alphabetic}\p{N}]+/gu) ?? [];
  const settings = {
    fields: ["title", "text"],
    storeFields: ["address", "page", "heading", "excerpt"],
    tokenize,
    processTerm: (term) => term,
  };
  // The file that holds all pages has no index; it lists what it found in them.
  const listed = globalThis.SEARCH_ENTRIES;
  const search = listed ? new MiniSearch(settings) : MiniSearch.loadJSON(SEARCH_INDEX, settings);
  if (listed) search.addAll(listed);
  const element = (name, text, more = {}) => Object.assign(document.createElement(name), { textContent: text }, more);
  const show = () => {
    const words = field.value.trim();
    results.replaceChildren();
    if (!words) return;
    const found = search.search(words, { prefix: (term) => term.length > 2, fuzzy: (term) => (term.length > 4 ? 0.2 : 0), boost: { title: 3 }, combineWith: "AND" });
    if (!found.length) {
      results.append(element("p", NOTHING_FOUND));
      return;
    }
    const list = element("ol", "", { className: "found" });
    for (const { address, page, heading, excerpt } of found.slice(0, 30)) {
      const item = element("li", "");
      const title = heading === page ? page : `${page}: ${heading}`;
      item.append(element("a", title, { href: address }), element("p", excerpt));
      list.append(item);
    }
    results.append(list);
  };
  field.value = new URLSearchParams(location.search).get("q") ?? "";
  field.addEventListener("input", show);
  show();
})();
