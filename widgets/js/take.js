// What a reader takes along: a file, a text in the clipboard, a print.

const save = (name, blob) => {
  const link = document.createElement("a");
  link.href = URL.createObjectURL(blob);
  link.download = name;
  link.click();
  setTimeout(() => URL.revokeObjectURL(link.href), 60000); // the browser may still be asking where to
};

// A page that is not served safely, and many a frame, has no clipboard of the new kind.
const copy = async (text) => {
  try {
    await navigator.clipboard.writeText(text);
  } catch {
    const focused = document.activeElement;
    const field = document.createElement("textarea");
    field.value = text;
    field.style.cssText = "position:fixed;opacity:0";
    document.body.append(field);
    field.select();
    const copied = document.execCommand("copy");
    field.remove();
    focused?.focus();
    if (!copied) throw new Error("no clipboard");
  }
};

// Prints one element and not the page around it.
const printOnly = async (base, language) => {
  const frame = document.createElement("iframe");
  frame.style.cssText = "position:fixed;inset-inline-start:-200vw;inline-size:180mm;block-size:250mm;border:0";
  document.body.append(frame);
  try {
    const page = frame.contentDocument;
    page.documentElement.lang = language;
    page.title = base.querySelector("svg title")?.textContent ?? "";
    const sheet = new frame.contentWindow.CSSStyleSheet();
    sheet.replaceSync(CSS.replaceAll(":host(", ":root:is(").replaceAll(":host", ":root"));
    page.adoptedStyleSheets = [sheet];
    page.body.style.font = getComputedStyle(base.querySelector(".axle")).font;
    page.body.append(page.adoptNode(picture(base)));
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

// The address of this page with the state of an element in it. Only the first element of a page is
// found without its name.
const linkTo = (element, query) => {
  const url = new URL(location);
  for (const [name, value] of new URLSearchParams(query)) url.searchParams.set(name, value);
  if (element.id && document.querySelector(element.localName) !== element) url.hash = element.id;
  return url.href;
};

// Settings that a page gave, but for those that an address names: a link must name them again, or take
// the place of what the address says.
const notIn = (address, settings) => {
  const { searchParams } = new URL(address);
  return Object.entries(settings).map(([name, value]) => (searchParams.has(name) ? undefined : value));
};

// The hash of a script as the file beside it tells; none for pages from the file system.
const hashOf = async (script) => {
  if (location.protocol === "file:") return "";
  try {
    const response = await fetch(new URL("integrity.json", home));
    return (await response.json())[script] ?? "";
  } catch {
    return "";
  }
};
