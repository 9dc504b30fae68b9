// Writes a drawing anew where it has changed. While a slider moves, most of a drawing stays, and what is
// not written costs no parsing, no style and no layout.

const ENTITIES = { lt: "<", gt: ">", quot: '"', amp: "&" };
const plainText = (text) => text.replace(/&(lt|gt|quot|amp);/g, (_, name) => ENTITIES[name]);

// A piece of the text, from one "<" to the next: its tag with what has no value, its attributes, and the
// text behind it.
const readPiece = (piece) => {
  const end = piece.indexOf(">"); // in a value or a text it would be written &gt;
  const attributes = new Map();
  const tag = piece.slice(0, end).replace(/\s+([\w:-]+)="([^"]*)"/g, (_, name, value) => {
    attributes.set(name, value);
    return "";
  });
  return { tag, attributes, text: piece.slice(end + 1) };
};

// Brings an element from one piece to the next; false where only the parser can.
const amend = (element, before, after) => {
  const [old, now] = [readPiece(before), readPiece(after)];
  if (old.tag !== now.tag) return false;
  if (old.text !== now.text) {
    const text = element?.firstChild;
    if (text?.nodeType !== Node.TEXT_NODE || !now.text) return false;
    text.data = plainText(now.text);
  }
  for (const [name, value] of now.attributes) {
    if (old.attributes.get(name) === value) continue;
    if (name.includes(":") || name === "xmlns") return false;
    element.setAttribute(name, plainText(value));
  }
  for (const name of old.attributes.keys()) if (!now.attributes.has(name)) element.removeAttribute(name);
  return true;
};

// What it gives back writes a drawing, as text of our own, into a place that nobody else writes to.
const writerOf = (place) => {
  let before = [];
  let elements = []; // for each piece that opens one
  const amended = (after) => after.length === before.length
    && after.every((piece, at) => piece === before[at] || amend(elements[at], before[at], piece));
  return (html) => {
    const after = html.split("<");
    if (!amended(after)) {
      place.innerHTML = html;
      const made = place.querySelectorAll("*");
      let next = 0;
      elements = after.map((piece) => (/^\w/.test(piece) ? made[next++] : undefined));
      if (next !== made.length) elements = []; // not one for each: the next one is parsed as well
    }
    before = elements.length ? after : [];
  };
};

// What Rust writes itself into places of its own: HTML that is amended as drawings are, and text.
const writers = new WeakMap();
const rewrite = (place, html) => {
  if (!writers.has(place)) writers.set(place, writerOf(place));
  writers.get(place)(html);
};
const say = (place, text) => {
  const said = place.firstChild; // a place that was empty may hold a mark of Leptos, which shows nothing
  if (text && said?.nodeType === Node.TEXT_NODE) said.data = text;
  else place.textContent = text;
};
