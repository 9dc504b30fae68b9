// Ink on a figure: strokes of pen, finger or mouse, kept per step, in the figure's own colours.
// Places are kept in the units of the figure as it was laid out for the width at which it was drawn on:
// another width is another layout, in which the ink would lie beside what it marks.

const INKS = ["ink", "front", "rear", "tractive", "inertia"]; // names of the figure's colours
const HOLD_MS = 500; // holding still makes a line of a stroke, and holding on an arrow
const STILL = 4; // units that a hand may tremble while it holds still
const RUBBER = 10; // units from its line within which a stroke is rubbed out

const svgTag = (name, attributes = {}) => {
  const made = document.createElementNS("http://www.w3.org/2000/svg", name);
  for (const [key, value] of Object.entries(attributes)) made.setAttribute(key, value);
  return made;
};
const round = (number) => Math.round(number * 10) / 10;
const distance = (a, b) => Math.hypot(a.x - b.x, a.y - b.y);

// How far a place is from a line between two others.
const offLine = (place, a, b) => {
  const length = distance(a, b) ** 2;
  const share = length ? ((place.x - a.x) * (b.x - a.x) + (place.y - a.y) * (b.y - a.y)) / length : 0;
  const within = Math.min(1, Math.max(0, share));
  return distance(place, { x: a.x + within * (b.x - a.x), y: a.y + within * (b.y - a.y) });
};
const offStroke = (place, { points }) => Math.min(...points.map((point, at) =>
  offLine(place, point, points[Math.min(at + 1, points.length - 1)])));

// The head of an arrow that ends at the last point.
const headOf = (points, size) => {
  const [from, tip] = [points[0], points.at(-1)];
  const angle = Math.atan2(tip.y - from.y, tip.x - from.x);
  const side = (turn) => `${round(tip.x - size * Math.cos(angle + turn))} ${round(tip.y - size * Math.sin(angle + turn))}`;
  return `M${side(0.45)}L${round(tip.x)} ${round(tip.y)}L${side(-0.45)}`;
};

// One stroke as SVG. A pen that tells its pressure draws as wide as it is pressed.
const strokeTag = ({ colour, kind, points }, width) => {
  const group = svgTag("g", {
    "class": `ink-${colour}`, "fill": "none", "stroke-linecap": "round", "stroke-linejoin": "round", "stroke-width": width,
  });
  const place = ({ x, y }) => `${round(x)} ${round(y)}`;
  if (points.some(({ pressure }) => pressure !== 0.5) && kind === "free") {
    points.slice(1).forEach((point, at) => group.append(svgTag("path", {
      "d": `M${place(points[at])}L${place(point)}`, "stroke-width": round(width * (0.4 + 1.2 * point.pressure)),
    })));
  } else {
    const more = kind === "arrow" ? headOf(points, 4 * width) : "";
    // A dot is a line without length: the round end makes it seen.
    const shown = points.length > 1 ? points : [points[0], points[0]];
    group.append(svgTag("path", { "d": `M${shown.map(place).join("L")}${more}` }));
  }
  return group;
};

class Ink {
  strokes = []; // of the present step
  #done = new Map(); // strokes of each step
  #undone = []; // how to undo, last first
  #drawing; // the stroke under the pen
  #timer;
  #colour = INKS[0];
  #tool = "off"; // off, pen or rubber
  #changed;
  board; // the SVG over the figure

  constructor(changed) {
    this.#changed = changed;
    this.board = svgTag("svg", { "class": "board", "aria-hidden": "true" });
    this.board.addEventListener("pointerdown", (event) => this.#down(event));
    this.board.addEventListener("pointermove", (event) => this.#move(event));
    for (const end of ["pointerup", "pointercancel"]) {
      this.board.addEventListener(end, () => this.#up());
    }
  }

  get tool() { return this.#tool; }
  set tool(tool) {
    this.#tool = tool;
    this.board.dataset.tool = tool;
  }
  get colour() { return this.#colour; }
  set colour(colour) { this.#colour = colour; }
  get canUndo() { return this.#undone.length > 0; }
  // The width of the figure on which the present step was drawn; none without ink. Strokes go in the order
  // in which they came, and so do those that are brought back: all of a step have one width.
  get width() { return (this.strokes[0] ?? this.#drawing)?.width; }
  widthOf(step) { return this.#done.get(step)?.[0]?.width; }

  // Lays the board over a figure of this size.
  lay(width, height) {
    this.board.setAttribute("viewBox", `0 0 ${width} ${height}`);
  }

  turnTo(step) {
    this.#up();
    if (!this.#done.has(step)) this.#done.set(step, []);
    this.strokes = this.#done.get(step);
    this.#undone = [];
    this.#draw();
  }

  // Another talk begins.
  forget() {
    this.#done.clear();
    this.strokes = [];
    this.#undone = [];
    this.#draw();
  }

  undo() {
    this.#undone.pop()?.();
    this.#draw();
  }

  clear() {
    const gone = this.strokes.splice(0);
    if (gone.length) this.#undone.push(() => this.strokes.unshift(...gone));
    this.#draw();
  }

  // The ink of a step as SVG, for a figure of this size.
  of(step, width) {
    return (this.#done.get(step) ?? []).map((stroke) => strokeTag(stroke, width));
  }

  #place(event) {
    const box = this.board.getBoundingClientRect();
    const { width, height } = this.board.viewBox.baseVal;
    return {
      x: (event.clientX - box.left) / box.width * width,
      y: (event.clientY - box.top) / box.height * height,
      pressure: event.pointerType === "pen" && event.pressure > 0 ? event.pressure : 0.5,
    };
  }

  #down(event) {
    if (this.#tool === "off" || event.button > 0 || !event.isPrimary) return;
    event.preventDefault();
    this.board.setPointerCapture(event.pointerId);
    const place = this.#place(event);
    if (this.#tool === "rubber") {
      this.#drawing = { rubbing: place };
      this.#rub(place, place);
      return;
    }
    const { width } = this.board.viewBox.baseVal;
    this.#drawing = { colour: this.#colour, kind: "free", points: [place], width };
    this.#wait(place);
    this.#draw();
  }

  #move(event) {
    if (!this.#drawing) return;
    const events = event.getCoalescedEvents?.() ?? [];
    for (const one of events.length ? events : [event]) {
      const place = this.#place(one);
      if (this.#drawing.rubbing) {
        this.#rub(this.#drawing.rubbing, place);
        this.#drawing.rubbing = place;
      } else if (this.#drawing.kind === "free") this.#drawing.points.push(place);
      else this.#drawing.points = [this.#drawing.points[0], place];
      if (!this.#drawing.rubbing && distance(place, this.#drawing.still) > STILL) this.#wait(place);
    }
    this.#draw();
  }

  #up() {
    clearTimeout(this.#timer);
    const stroke = this.#drawing;
    this.#drawing = undefined;
    if (!stroke || stroke.rubbing) return;
    delete stroke.still;
    this.strokes.push(stroke);
    this.#undone.push(() => this.strokes.splice(this.strokes.indexOf(stroke), 1));
    this.#draw();
  }

  // A stroke that is held still becomes a line, then an arrow.
  #wait(place) {
    this.#drawing.still = place;
    clearTimeout(this.#timer);
    this.#timer = setTimeout(() => {
      const stroke = this.#drawing;
      if (!stroke || distance(stroke.points[0], stroke.points.at(-1)) < 4 * STILL) return;
      stroke.kind = stroke.kind === "free" ? "line" : "arrow";
      stroke.points = [stroke.points[0], stroke.points.at(-1)];
      if (stroke.kind === "line") this.#wait(place);
      this.#draw();
    }, HOLD_MS);
  }

  // A quick hand leaves gaps between the places that are told; what lies in them is rubbed out too.
  #rub(from, to) {
    const count = Math.ceil(distance(from, to) / RUBBER) + 1;
    const way = Array.from({ length: count + 1 }, (_, at) => ({
      x: from.x + at / count * (to.x - from.x), y: from.y + at / count * (to.y - from.y),
    }));
    const gone = this.strokes.filter((stroke) => way.some((place) => offStroke(place, stroke) < RUBBER));
    for (const stroke of gone) {
      const at = this.strokes.indexOf(stroke);
      this.strokes.splice(at, 1);
      this.#undone.push(() => this.strokes.splice(at, 0, stroke));
    }
    if (gone.length) this.#draw();
  }

  #draw() {
    const shown = this.#drawing?.points ? [...this.strokes, this.#drawing] : this.strokes;
    this.board.replaceChildren(...shown.map((stroke) => strokeTag(stroke, 3)));
    this.#changed();
  }
}
