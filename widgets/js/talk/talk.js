// <axle-talk>: plays a talk. Rust reads it, solves each step and says its sentence; the figures are those
// of the topics' own elements; this script turns the pages. The builder puts VERSION, TALK_WORDS, TALK_CSS,
// PAPER_CSS, PRESENTER_CSS and INK_COLOURS above this text, and `elements` and `home`, the script of the
// elements and its address.

const CHANGE_MS = 700; // from one step's scenario to the next
const PART_MS = 170; // between two parts that appear
const SWIPE = 60; // CSS pixels
const MOST = 1_000_000; // letters of a talk
const SWIPE_MS = 700; // who takes longer reads or draws
const HELD = "input, select, button, summary, .grip"; // what a finger moves by itself

const make = (name, attributes = {}, text) => {
  const made = document.createElement(name);
  for (const [key, value] of Object.entries(attributes)) made.setAttribute(key, value);
  if (text !== undefined) made.textContent = text;
  return made;
};
const fill = (text, ...parts) => parts.reduce((filled, part, at) => filled.replace(`{${at}}`, part), text);
// The width for which an element lays out its picture in a place so wide.
const laidOut = (width) => Math.min(1000, Math.max(340, width));
const frameOf = () => new Promise((done) => requestAnimationFrame(done));
const pause = (time) => new Promise((done) => setTimeout(done, time));
const still = () => matchMedia("(prefers-reduced-motion: reduce)").matches;
const FRAMES = { "16:9": 1000, "9:16": 400 }; // CSS pixels for which a picture is laid out in a frame of that shape, at first
const BETTER = 1.03; // so much larger letters are worth another layout
// A number and its unit, which a thin space parts, stay on one line.
const write = (place, text) => place.replaceChildren(...text.split(/( )/).map((word) =>
  word.includes("\u2009") ? make("span", { "class": "whole" }, word) : word));
const LOOKS = ["size", "clean", "background"]; // attributes that change nothing but the looks
const SHOWN = { chart: "chart", table: "readouts" }; // what an element shows for a view; else its figure

class AxleTalk extends HTMLElement {
  static version = VERSION;
  static observedAttributes = ["src", "lang", "units", "theme", "frame", "size", "clean", "background"];

  #json; // the talk as JSON text
  #names = []; // of the topics that it shows
  #outline; // what Rust read in it
  #sentences; // promise of what every step says, once it is asked for
  #at = 0; // the step that is shown, or asked
  #asking = false;
  #asked = new Set(); // steps whose question is over
  #predictions = new Map(); // what the audience said, for each step
  #changed = ""; // what the speaker has changed, as JSON
  #turn = 0; // counts page turns, so that one under way knows that it was overtaken
  #begun; // when the speaker first went on
  #topics = new Map(); // the element of each topic
  #shown; // the one on the stage
  #shownAt = 0; // and the step that it shows
  #parts = {}; // places in the shadow root
  #pinned; // the width that the ink on the stage keeps the picture at
  #sizes = []; // widths that the present picture may be laid out for, each with its height
  #choices = 0; // how often a width was chosen among them
  #framed; // the width that the frame last had it laid out for
  #ink = new Ink(() => {
    this.#toolsFollow();
    if (this.#ink.width !== this.#pinned) this.#layBoard();
  });
  #presenter = new Presenter(this);
  #reading; // ends a reading when a newer source is given
  #swipe;
  #watcher;

  constructor() {
    super();
    this.attachShadow({ mode: "open" });
  }

  connectedCallback() {
    if (!this.#parts.slot) this.#furnish();
    document.addEventListener("keydown", this.#onPageKey);
    this.#read();
  }

  disconnectedCallback() {
    queueMicrotask(() => {
      if (this.isConnected) return; // only moved
      document.removeEventListener("keydown", this.#onPageKey);
      this.#reading?.abort();
      this.#turn += 1;
      this.#presenter.close();
    });
  }

  attributeChangedCallback(name, before, now) {
    if (!this.#parts.slot || before === now) return;
    if (name === "src") this.#read();
    else if (name === "frame") this.#attempt(() => this.#frame());
    else if (LOOKS.includes(name)) this.#layBoard();
    else if (this.#outline) {
      this.#sentences = undefined; // in other units
      this.#relabel();
    }
  }

  get step() { return this.#at + 1; }
  set step(number) { this.goTo(Number(number) - 1); }
  get steps() { return this.#outline?.steps.length ?? 0; }
  get elapsed() { return this.#begun === undefined ? 0 : performance.now() - this.#begun; }
  // What is said now.
  get said() { return this.#parts.said?.textContent ?? ""; }

  forward() {
    this.#begun ??= performance.now();
    return this.#asking ? this.#answer() : this.goTo(this.#at + 1);
  }
  back() { return this.goTo(this.#asking || !this.#changed ? this.#at - 1 : this.#at); }

  // Turns to a step, from 0. Its question comes first, unless it was asked before.
  async goTo(at) {
    if (!this.#outline || !(at >= 0 && at < this.steps)) return;
    const from = this.#asking ? this.#at - 1 : this.#at;
    const before = [this.#at, this.#asking, this.#changed];
    this.#at = at;
    this.#asking = Boolean(this.#outline.steps[at].question) && !this.#asked.has(at);
    this.#changed = "";
    this.#what(false);
    await this.#attempt(
      () => (this.#asking ? this.#ask(at) : this.#show(at, from)),
      () => { [this.#at, this.#asking, this.#changed] = before; },
    );
  }

  // What goes wrong while the talk is given is told in a sentence: the elements were stopped, a file did not
  // come. The last picture stays, and `back` goes to where it belongs.
  async #attempt(act, back) {
    const acting = act();
    const turn = this.#turn;
    try {
      await acting;
    } catch (error) {
      if (turn !== this.#turn) return; // another page is on its way
      back?.();
      this.#parts.list.value = String(this.#at);
      this.#toolsFollow();
      this.#parts.notice.textContent = this.#words.stopped;
      console.warn(`axlewright ${VERSION}: <axle-talk> ${error?.message ?? error}`);
    }
  }

  // The speaker's changes are taken back.
  async restore() {
    if (this.#asking || !this.#outline) return;
    this.#changed = "";
    await this.#attempt(() => this.#show(this.#at, this.#at));
  }

  // The figure of the present step with the ink on it, as SVG text.
  async figure() {
    const sheet = await this.#sheet(this.#at, "light", this.#changed, this.#ink.width);
    if (!sheet.svg) return null;
    return new XMLSerializer().serializeToString(figureOf(sheet.svg, this.#inkOf(this.#at)));
  }

  get #words() {
    const tag = (this.closest("[lang]")?.lang || navigator.language || "en").toLowerCase().split(/[-_]/)[0];
    return TALK_WORDS[Object.hasOwn(TALK_WORDS, tag) ? tag : "en"];
  }
  get #units() { return this.getAttribute("units") === "us" ? "us" : "si"; }

  // ---- reading

  async #read() {
    this.#reading?.abort();
    this.#reading = new AbortController();
    const { signal } = this.#reading;
    try {
      const json = await this.#source(signal);
      if (json === null || signal.aborted) return;
      this.#names = (JSON.parse(json).steps ?? []).map?.((step) => step?.topic).filter((name) => name !== undefined) ?? [];
      await elements.talk.init(this.#names);
      const outline = elements.talk.read(json);
      if (signal.aborted) return;
      this.#json = json;
      this.#outline = outline;
      this.#sentences = undefined;
      this.#asked.clear();
      this.#predictions.clear();
      this.#ink.forget();
      this.#at = 0;
      this.#begun = undefined;
      this.#relabel();
      this.#parts.slot.hidden = true;
      this.#parts.talk.hidden = false;
      this.#parts.notice.textContent = "";
      this.#asking = Boolean(outline.steps[0].question);
      await (this.#asking ? this.#ask(0) : this.#show(0, -1));
    } catch (error) {
      if (signal.aborted) return;
      const faults = error?.faults?.map(({ message }) => message) ?? [String(error?.message ?? error)];
      this.#parts.notice.textContent = fill(this.#words.refused, faults[0]);
      console.warn(`axlewright ${VERSION}: <axle-talk> ${faults.join(" ")}`);
      this.dispatchEvent(new CustomEvent("axle-problem", {
        detail: { faults: error?.faults ?? [], message: faults[0] }, bubbles: true, composed: true,
      }));
    }
  }

  // The talk as JSON text, from a file or from data inside the element. No more of a file is read than a
  // talk may hold.
  async #source(signal) {
    const src = this.getAttribute("src");
    const inside = this.querySelector("script[type='application/json'], script[type='application/toml']");
    if (!src && !inside) return null;
    try {
      const text = src ? await elements.talk.text(new URL(src, this.baseURI), signal) : inside.textContent;
      if (text.length > MOST) throw new Error("too long");
      return elements.talk.checked(/^\s*\{/.test(text) ? text : JSON.stringify(parseToml(text)));
    } catch (error) {
      const [reason] = String(error?.message ?? error).split("\n");
      throw new Error(fill(this.#words.source, `${(src ?? "").slice(0, 200)} (${reason})`.trim()));
    }
  }

  async #sheet(at, whole = "", changed = at === this.#at ? this.#changed : "", width = 0) {
    await elements.talk.init(this.#names); // after a trap there is another instance
    const sheet = elements.talk.step(this.#json, at, changed, this.#units, whole, width);
    sheet.question = this.#outline.steps[at].question?.text;
    return sheet;
  }

  // ---- showing

  async #show(at, from) {
    const turn = ++this.#turn;
    const overtaken = () => turn !== this.#turn;
    const step = this.#outline.steps[at];
    const sheet = await this.#sheet(at);
    if (overtaken()) return;
    this.#parts.question.hidden = true;
    this.#ink.turnTo(at);
    await this.#measure(at);
    if (overtaken()) return;
    const before = this.#outline.steps[from];
    const element = this.#onStage(step);
    const continues = before?.topic === step.topic && from !== at && this.#shown === element;
    this.#shown = element;
    this.#shownAt = at;
    const parts = step.reveal.split(" ").filter((part) => part && part !== "working");
    const drawn = continues ? before.reveal.split(" ").filter((part) => parts.includes(part)) : [];
    const added = at === from ? [] : parts.filter((part) => !drawn.includes(part));
    const slowly = !still() && !document.hidden;
    this.#name(sheet, at);
    element.setAttribute("reveal", (slowly && at > from ? drawn : parts).join(" "));
    if (continues && slowly) await this.#travel(element, from, at, overtaken);
    if (overtaken()) return;
    element.scenario = sheet.scenario;
    if (slowly && at > from) await this.#drawParts(element, drawn, added, overtaken);
    if (overtaken()) return;
    element.setAttribute("reveal", parts.join(" "));
    await element.updateComplete;
    if (overtaken()) return;
    this.#speak(sheet);
    this.#layBoard();
    await this.#working(at);
    this.dispatchEvent(new CustomEvent("axle-step", {
      detail: { step: at + 1, said: sheet.said }, bubbles: true, composed: true,
    }));
  }

  // Between two steps every picture is solved for the scenario on the way.
  async #travel(element, from, to, overtaken) {
    const start = performance.now();
    for (;;) {
      const share = (await frameOf() - start) / CHANGE_MS;
      if (overtaken() || share >= 1) return;
      try {
        // Slow at both ends, as a hand moves.
        const eased = share < 0 ? 0 : share * share * (3 - 2 * share);
        element.scenario = elements.talk.between(this.#json, from, to, eased);
      } catch {
        return; // it stopped; the step itself comes next
      }
    }
  }

  // Parts appear in the order in which a hand would draw them.
  async #drawParts(element, drawn, added, overtaken) {
    const shown = [...drawn];
    for (const part of added) {
      shown.push(part);
      element.setAttribute("reveal", shown.join(" "));
      await pause(PART_MS);
      if (overtaken()) return;
    }
  }

  #onStage(step) {
    let element = this.#topics.get(step.topic);
    if (!element) {
      element = make(step.tag, { controls: "", show: "figure" });
      element.addEventListener("axle-change", (event) => this.#whatIf(event));
      // What happens inside belongs to the talk.
      for (const type of ["axle-answer", "axle-problem", "axle-score"]) {
        element.addEventListener(type, (event) => event.stopPropagation());
      }
      this.#topics.set(step.topic, element);
      this.#parts.stage.prepend(element);
      this.#watcher.observe(element);
    }
    for (const other of this.#topics.values()) other.hidden = other !== element;
    element.setAttribute("show", SHOWN[step.view] ?? "figure");
    element.setAttribute("lang", this.#outline.lang);
    for (const name of ["units", "theme"]) {
      const value = name === "theme" ? this.#theme : this.getAttribute(name);
      if (value) element.setAttribute(name, value);
      else element.removeAttribute(name);
    }
    if (["side", "plan", "bars"].includes(step.view)) element.setAttribute("view", step.view);
    else element.removeAttribute("view");
    return element;
  }

  get #theme() {
    return this.getAttribute("background") === "dark" ? "dark" : this.getAttribute("theme");
  }

  #name(sheet, at) {
    const { count, list } = this.#parts;
    count.textContent = fill(this.#words.step, at + 1, this.steps);
    list.value = String(at);
    this.#parts.note.textContent = sheet.note || this.#words.no_note;
    this.#parts.notice.textContent = "";
    this.#toolsFollow();
  }

  #speak(sheet) {
    write(this.#parts.said, sheet.said);
    this.#attempt(() => this.#tellPresenter(sheet));
  }

  async #tellPresenter(sheet) {
    if (!this.#presenter.isOpen) return;
    const at = this.#at;
    const next = at + 1 < this.steps ? await this.#sheet(at + 1) : undefined;
    this.#sentences ??= this.#everySentence().catch((error) => {
      this.#sentences = undefined; // asked again at the next page
      throw error;
    });
    const steps = await this.#sentences;
    if (at !== this.#at) return;
    this.#presenter.show({
      at, count: this.steps, said: sheet.said, note: sheet.note, steps, words: this.#words,
      next: next && (next.question ?? next.said),
    });
  }

  // What every step says when nothing is changed.
  async #everySentence() {
    const said = [];
    for (let at = 0; at < this.steps; at += 1) said.push((await this.#sheet(at, "", "")).said);
    return said;
  }

  async #working(at) {
    const place = this.#parts.working;
    const wanted = this.#outline.steps[at].reveal.split(" ").includes("working");
    place.hidden = !wanted;
    if (wanted) place.innerHTML = (await this.#sheet(at, "print")).working; // Rust wrote it, escaped
  }

  // ---- the audience

  async #ask(at) {
    const turn = ++this.#turn;
    const { question } = this.#outline.steps[at];
    const sheet = await this.#sheet(at);
    if (turn !== this.#turn) return;
    if (!this.#shown) { // a talk may begin with a question
      const element = this.#onStage(this.#outline.steps[at]);
      element.setAttribute("reveal", "");
      this.#shown = element;
      this.#shownAt = at;
      await this.#measure(at);
    }
    this.#ink.turnTo(at);
    this.#name(sheet, at);
    write(this.#parts.said, question.text);
    this.#parts.working.hidden = true;
    this.#attempt(() => this.#tellPresenter({ ...sheet, said: question.text }));
    const form = this.#parts.question;
    form.hidden = false;
    if (!this.#predictions.has(at)) this.#predictions.set(at, question.choices ? question.choices.map(() => 0) : []);
    const told = this.#predictions.get(at);
    const answer = make("button", { type: "button", "class": "main" }, this.#words.show_answer);
    answer.addEventListener("click", () => this.#answer());
    const fields = question.choices ? this.#hands(question.choices, told) : this.#guesses(told);
    form.replaceChildren(...fields, answer);
    this.#layBoard();
    this.dispatchEvent(new CustomEvent("axle-step", {
      detail: { step: at + 1, said: question.text, question: true }, bubbles: true, composed: true,
    }));
  }

  // Hands are counted for each choice.
  #hands(choices, told) {
    return choices.map((choice, at) => {
      const label = make("label", {}, `${choice} `);
      const count = make("input", { type: "number", min: "0", max: "9999", value: String(told[at]) });
      count.addEventListener("input", () => { told[at] = Math.max(0, Math.floor(Number(count.value) || 0)); });
      const more = make("button", { type: "button", "aria-label": fill(this.#words.one_more, choice) }, "+1");
      more.addEventListener("click", () => {
        told[at] += 1;
        count.value = String(told[at]);
      });
      label.append(count);
      const row = make("p", { "class": "hand" });
      row.append(label, more);
      return row;
    });
  }

  // Numbers are typed as they are called out.
  #guesses(told) {
    const label = make("label", {}, `${this.#words.prediction} `);
    const field = make("input", { type: "text", maxlength: "40", autocomplete: "off" });
    const add = make("button", { type: "button" }, this.#words.add);
    const list = make("p", { "class": "told", "role": "status" }, told.join("; "));
    const take = () => {
      const text = field.value.trim();
      if (!text) return;
      told.push(text);
      list.textContent = told.join("; ");
      field.value = "";
      field.focus();
    };
    add.addEventListener("click", take);
    field.addEventListener("keydown", (event) => {
      if (event.key !== "Enter") return;
      event.preventDefault();
      take();
    });
    label.append(field);
    const row = make("p", { "class": "hand" });
    row.append(label, add);
    return [row, list];
  }

  #answer() {
    const at = this.#at;
    this.#asking = false;
    this.#asked.add(at);
    return this.#attempt(() => this.#verdict(at), () => {
      this.#asking = true;
      this.#asked.delete(at);
    });
  }

  async #verdict(at) {
    await this.#show(at, at - 1);
    if (at !== this.#at) return;
    const sheet = await this.#sheet(at);
    const told = this.#predictions.get(at) ?? [];
    const { choices } = this.#outline.steps[at].question;
    const said = choices
      ? choices.map((choice, index) => `${choice} ${told[index]}`).join("; ")
      : told.join("; ");
    const heard = choices ? told.some((count) => count > 0) : told.length > 0;
    const verdict = [fill(this.#words.answer, sheet.answer)];
    if (heard) verdict.push(fill(this.#words.predicted, said));
    this.#parts.question.replaceChildren(make("p", { "class": "verdict" }, verdict.join(" ")));
    this.#parts.question.hidden = false;
    this.#layBoard();
  }

  // ---- what if

  #what(open) {
    const button = this.#parts.what;
    button.setAttribute("aria-pressed", String(open));
    this.#parts.area.classList.toggle("open", open);
    if (!this.#shown) return;
    if (open) this.#shown.removeAttribute("controls");
    else this.#shown.setAttribute("controls", "");
  }

  async #whatIf(event) {
    event.stopPropagation();
    if (event.target !== this.#shown || this.#asking) return;
    this.#changed = JSON.stringify(event.detail);
    const at = this.#at;
    await this.#attempt(async () => {
      const sheet = await this.#sheet(at);
      if (at !== this.#at || !this.#changed) return;
      this.#name(sheet, at);
      this.#speak(sheet);
      this.#layBoard();
      await this.#working(at);
    });
  }

  // ---- ink

  // The picture that can be drawn on.
  get #picture() {
    return this.#shown?.shadowRoot?.querySelector(
      this.#shown.getAttribute("show") === "chart" ? ".chart canvas" : ".figure svg");
  }

  // The part of the present element that says how wide its picture is laid out.
  get #base() { return this.#shown?.shadowRoot?.querySelector("[part~='base']"); }

  // Another shape of the picture.
  async #frame() {
    this.#framed = undefined;
    if (!this.#outline) return;
    await this.#measure(this.#shownAt);
    this.#layBoard();
  }

  // In a frame, the sizes that the picture of a step may have.
  async #measure(at) {
    this.#sizes = [];
    this.#choices = 0;
    if (this.getAttribute("frame") in FRAMES) this.#sizes = (await this.#sheet(at, "sizes")).sizes;
  }

  // The width for which letters are largest in a frame with so much room for the picture.
  #widthFor(first, wide, high) {
    const letters = (size) => Math.min(wide / size[0], high / size[1]);
    const now = this.#sizes.find(([width]) => width === (this.#framed ?? first)) ?? this.#sizes[0];
    if (!now) return first;
    const best = this.#sizes.reduce((one, other) => (letters(other) > letters(one) ? other : one));
    // Each layout leaves a little other room: after a second thought it stays.
    if (letters(best) < BETTER * letters(now) || this.#choices > 1) return now[0];
    this.#choices += 1;
    return best[0];
  }

  // The width for which the picture is laid out: that of its ink, or that of a frame.
  #lay(room) {
    const { stage } = this.#parts;
    const first = FRAMES[this.getAttribute("frame")];
    const framed = first && this.#widthFor(first, stage.clientWidth, room);
    this.#framed = framed;
    this.#pinned = this.#ink.width;
    const isOwn = !framed && Math.abs(laidOut(stage.clientWidth) - this.#pinned) < 1;
    const laid = isOwn ? undefined : this.#pinned ?? framed;
    const set = (name, value) => {
      if (laid) stage.style.setProperty(name, value);
      else stage.style.removeProperty(name);
    };
    const zoom = stage.clientWidth / laid;
    set("--laid", `${laid}px`);
    set("--zoom", String(framed ? zoom : Math.min(1, zoom)));
    this.#close();
    return laid;
  }

  // A picture that is shown smaller or larger takes no more and no less room than is seen.
  #close() {
    const { style } = this.#parts.stage;
    const zoom = Number(style.getPropertyValue("--zoom") || 1);
    const seen = this.#shown?.getBoundingClientRect().height ?? 0;
    style.setProperty("--slack", `${seen - seen / zoom}px`);
  }

  // Where the height is given, by the picture that a camera takes or by the whole screen, the figure is as
  // large as that lets it be, so that nothing is cut off and the caution stays in sight.
  #fit() {
    const { area, talk, stage } = this.#parts;
    const framed = this.getAttribute("frame") in FRAMES;
    const box = framed ? area : talk;
    this.#close();
    const picture = this.#picture?.getBoundingClientRect();
    const { paddingTop, paddingBottom } = getComputedStyle(box);
    const shown = [...box.children].map((child) => child.getBoundingClientRect()).filter(({ height }) => height > 0);
    const taken = Math.max(...shown.map(({ bottom }) => bottom)) - Math.min(...shown.map(({ top }) => top));
    // What the sentence, the caution and whatever else is there leave for the picture.
    const room = (framed ? area : this).clientHeight - parseFloat(paddingTop) - parseFloat(paddingBottom)
      - taken + (picture?.height ?? 0);
    const laid = this.#lay(room);
    if (!(framed || document.fullscreenElement === this) || area.classList.contains("open") || !picture?.width) {
      stage.style.removeProperty("--fit");
      return;
    }
    // The picture may not be drawn for its new width yet; its height for that width is known.
    const [, high] = this.#sizes.find(([width]) => width === laid) ?? [];
    const whole = this.#base?.getBoundingClientRect().width ?? stage.clientWidth;
    const share = high ? room / (high * stage.clientWidth / laid) : picture.width / whole * room / picture.height;
    const fit = Math.min(100, 100 * Math.max(0.3, share));
    // A hair's breadth is no reason to draw anew: the next one would be another.
    if (!(Math.abs(fit - parseFloat(stage.style.getPropertyValue("--fit"))) < 0.25)) {
      stage.style.setProperty("--fit", `${fit}%`);
    }
  }

  #layBoard() {
    this.#fit();
    const { board } = this.#ink;
    const picture = this.#picture;
    board.toggleAttribute("hidden", !picture);
    board.style.display = picture ? "" : "none";
    if (!picture) return;
    const [box, stage] = [picture.getBoundingClientRect(), this.#parts.stage.getBoundingClientRect()];
    Object.assign(board.style, {
      left: `${box.left - stage.left}px`, top: `${box.top - stage.top}px`,
      width: `${box.width}px`, height: `${box.height}px`,
    });
    const width = this.#pinned ?? picture.viewBox?.baseVal.width ?? laidOut((this.#base ?? this.#parts.stage).clientWidth);
    if (box.width > 0) this.#ink.lay(width, width * box.height / box.width);
  }

  // The ink of a step, for a figure that was laid out for its width.
  #inkOf(at) {
    const strokes = this.#ink.of(at, 3);
    if (!strokes.length) return [];
    const group = svgTag("g");
    for (const stroke of strokes) {
      const colour = stroke.getAttribute("class").slice(4);
      stroke.removeAttribute("class");
      stroke.setAttribute("stroke", INK_COLOURS[colour]);
      group.append(stroke);
    }
    return [group];
  }

  // ---- furniture

  #furnish() {
    const parts = this.#parts;
    parts.slot = make("slot");
    parts.notice = make("p", { "class": "notice", "part": "notice", "role": "status" });
    parts.talk = make("div", { "class": "talk", "part": "talk" });
    parts.talk.hidden = true;
    parts.title = make("h2", { "part": "title" });
    parts.count = make("p", { "class": "count" });
    parts.stage = make("div", { "class": "stage", "part": "stage" });
    parts.stage.append(this.#ink.board);
    parts.question = make("form", { "class": "question", "part": "question" });
    parts.question.addEventListener("submit", (event) => event.preventDefault());
    parts.question.hidden = true;
    parts.said = make("p", { "class": "said", "part": "said", "aria-live": "polite" });
    parts.working = make("div", { "class": "workings", "part": "working" });
    parts.working.hidden = true;
    parts.bar = make("div", { "class": "bar", "role": "toolbar" });
    parts.tools = make("div", { "class": "tools", "role": "toolbar" });
    parts.note = make("p", { "class": "note", "part": "note" });
    parts.notes = make("section", { "class": "notes" });
    parts.notes.hidden = true;
    parts.transcript = make("details", { "class": "transcript", "part": "transcript" });
    parts.transcript.addEventListener("toggle", () => this.#attempt(() => this.#transcribe()));
    parts.keys = make("details", { "class": "keys" });
    const head = make("header");
    head.append(parts.title, parts.count);
    parts.area = make("div", { "class": "area" });
    parts.area.append(parts.said, parts.question, parts.stage);
    parts.talk.append(head, parts.area, parts.working, parts.bar, parts.tools, parts.notes, parts.transcript, parts.keys);
    this.shadowRoot.replaceChildren(parts.slot, parts.notice, parts.talk);
    const sheet = new CSSStyleSheet();
    sheet.replaceSync(TALK_CSS);
    this.shadowRoot.adoptedStyleSheets = [sheet];
    this.shadowRoot.addEventListener("keydown", (event) => this.#onKey(event));
    this.addEventListener("fullscreenchange", () => this.#layBoard());
    this.#watcher = new ResizeObserver(() => requestAnimationFrame(() => this.#layBoard()));
    this.#watcher.observe(parts.stage);
    parts.stage.addEventListener("pointerdown", (event) => {
      const { clientX: x, clientY: y, pointerType, timeStamp: time } = event;
      const held = event.composedPath().some((place) => place.matches?.(HELD));
      this.#swipe = pointerType === "touch" && this.#ink.tool === "off" && !held ? { x, y, time } : undefined;
    });
    parts.stage.addEventListener("pointerup", ({ clientX: x, clientY: y, timeStamp: time }) => {
      const start = this.#swipe;
      this.#swipe = undefined;
      if (!start || time - start.time > SWIPE_MS) return;
      if (Math.abs(x - start.x) < Math.max(SWIPE, 2 * Math.abs(y - start.y))) return;
      if (x < start.x) this.forward();
      else this.back();
    });
    parts.stage.addEventListener("pointercancel", () => { this.#swipe = undefined; });
  }

  // Writes every word of the furniture, at the start and in another language.
  #relabel() {
    const [parts, words] = [this.#parts, this.#words];
    const button = (name, act, toggles) => {
      const made = make("button", { "type": "button", "data-name": name }, words[name]);
      if (toggles) made.setAttribute("aria-pressed", "false");
      made.addEventListener("click", () => this.#attempt(async () => act()));
      return (parts[name] = made);
    };
    const group = (name, ...buttons) => {
      const made = make("div", { "class": "group", "role": "group", "aria-label": words[name] });
      made.append(...buttons);
      return made;
    };
    parts.title.textContent = this.#outline.title;
    parts.list = make("select", { "aria-label": words.steps });
    for (let at = 0; at < this.steps; at += 1) {
      parts.list.append(make("option", { value: String(at) }, fill(words.step, at + 1, this.steps)));
    }
    parts.list.addEventListener("change", () => this.goTo(Number(parts.list.value)));
    parts.bar.setAttribute("aria-label", words.steps);
    parts.bar.replaceChildren(
      button("back", () => this.back()), button("forward", () => this.forward()), parts.list,
      button("what", () => this.#what(parts.what.getAttribute("aria-pressed") !== "true"), true),
      button("restore", () => this.restore()),
    );
    parts.colour = make("select", { "aria-label": words.colour });
    for (const ink of INKS) parts.colour.append(make("option", { value: ink }, words[`ink_${ink}`]));
    parts.colour.addEventListener("change", () => { this.#ink.colour = parts.colour.value; });
    const tool = (name) => () => {
      this.#ink.tool = this.#ink.tool === name ? "off" : name;
      this.#toolsFollow();
    };
    const toggle = (name, value = "") => () => {
      const on = this.getAttribute(name) === value;
      if (on) this.removeAttribute(name);
      else this.setAttribute(name, value);
      if (name === "background" && this.#shown) this.#onStage(this.#outline.steps[this.#at]);
      this.#toolsFollow();
    };
    parts.tools.setAttribute("aria-label", words.tools);
    parts.tools.replaceChildren(
      group("ink", button("pen", tool("pen"), true), parts.colour, button("rubber", tool("rubber"), true),
        button("undo", () => this.#ink.undo()), button("clear", () => this.#ink.clear())),
      group("speaker", button("notes_open", () => this.#notes(), true), button("presenter", () => this.#present()),
        button("screen", () => this.#fullScreen())),
      group("camera", button("large", toggle("size", "large"), true), button("wide", toggle("frame", "16:9"), true),
        button("tall", toggle("frame", "9:16"), true), button("dark", toggle("background", "dark"), true),
        button("clear_paper", toggle("background", "transparent"), true), button("clean", toggle("clean"), true)),
      group("take", button("save", () => this.#save()), button("print", () => this.print())),
    );
    parts.notes.replaceChildren(make("h3", {}, words.note), parts.note);
    const list = make("ol", { "class": "text" });
    parts.transcript.replaceChildren(make("summary", {}, words.transcript), list);
    const keys = make("dl");
    for (const row of words.keys_list.split("; ")) {
      const [key, meaning] = row.split(": ");
      keys.append(make("dt", {}, key), make("dd", {}, meaning));
    }
    parts.keys.replaceChildren(make("summary", {}, words.keys), keys);
    if (parts.transcript.open) this.#attempt(() => this.#transcribe());
    for (const element of this.#topics.values()) element.setAttribute("lang", this.#outline.lang);
    this.#toolsFollow();
  }

  #toolsFollow() {
    const parts = this.#parts;
    if (!parts.pen) return;
    const press = (name, on) => parts[name].setAttribute("aria-pressed", String(Boolean(on)));
    press("pen", this.#ink.tool === "pen");
    press("rubber", this.#ink.tool === "rubber");
    press("large", this.getAttribute("size") === "large");
    press("wide", this.getAttribute("frame") === "16:9");
    press("tall", this.getAttribute("frame") === "9:16");
    press("dark", this.getAttribute("background") === "dark");
    press("clear_paper", this.getAttribute("background") === "transparent");
    press("clean", this.hasAttribute("clean"));
    // A button that is disabled loses the focus, and with it the keys of the talk.
    const rest = (name, idle) => parts[name].setAttribute("aria-disabled", String(Boolean(idle)));
    rest("undo", !this.#ink.canUndo);
    rest("clear", !this.#ink.strokes.length);
    rest("back", this.#at === 0);
    rest("forward", !this.#asking && this.#at === this.steps - 1);
    rest("restore", !this.#changed);
  }

  #notes() {
    this.#parts.notes.hidden = !this.#parts.notes.hidden;
    this.#parts.notes_open.setAttribute("aria-pressed", String(!this.#parts.notes.hidden));
    this.#layBoard();
  }

  async #present() {
    const open = this.#presenter.open(this.#outline.title, this.#words, (event) => this.#onKey(event, true));
    if (!open) { // one screen, or a browser that opens nothing: the notes stand below
      if (this.#parts.notes.hidden) this.#notes();
      return;
    }
    const sheet = await this.#sheet(this.#at);
    await this.#tellPresenter({ ...sheet, said: this.said });
  }

  async #fullScreen() {
    try {
      await (document.fullscreenElement === this ? document.exitFullscreen() : this.requestFullscreen());
    } catch {
      // A frame without leave stays as large as it is.
    }
  }

  async #save() {
    const svg = await this.figure();
    if (svg === null) return;
    const link = make("a", { download: `talk-step-${this.#at + 1}.svg` });
    link.href = URL.createObjectURL(new Blob([svg], { type: "image/svg+xml" }));
    link.click();
    setTimeout(() => URL.revokeObjectURL(link.href), 60000);
  }

  async #sheets() {
    const sheets = [];
    for (let at = 0; at < this.steps; at += 1) {
      sheets.push(await this.#sheet(at, "print", "", this.#ink.widthOf(at)));
    }
    return sheets;
  }

  // The handout of the whole talk, to be printed.
  async handout() {
    const sheets = await this.#sheets();
    return handoutOf(this.#outline.title, sheets, (at) => this.#inkOf(at), this.#words);
  }

  async print() {
    await printHandout(await this.handout(), this.#outline.title, this.#outline.lang);
  }

  async #transcribe() {
    if (!this.#parts.transcript.open) return;
    this.#parts.transcript.querySelector("ol").replaceChildren(...transcriptOf(await this.#sheets()));
  }

  // ---- keys

  // A presenter remote types into whatever has the focus: mostly the page.
  #onPageKey = (event) => {
    if (event.target === document.body && document.querySelectorAll("axle-talk").length === 1) {
      this.#onKey(event);
    }
  };

  #onKey(event, anywhere) {
    if (event.defaultPrevented || event.altKey || event.ctrlKey || event.metaKey || !this.#outline) return;
    const target = event.composedPath()[0];
    const typing = target.matches?.("input, select, textarea, [role='slider'], summary");
    const remote = event.key === "PageDown" || event.key === "PageUp";
    if (typing && !(remote && !target.matches("input, select, [role='slider']"))) return;
    // Space and Enter press the button that has the focus.
    if (target.matches?.("button, a") && (event.key === " " || event.key === "Enter")) return;
    const acts = {
      "ArrowRight": () => this.forward(), "PageDown": () => this.forward(), " ": () => this.forward(),
      "ArrowLeft": () => this.back(), "PageUp": () => this.back(),
      "Home": () => this.goTo(0), "End": () => this.goTo(this.steps - 1),
      "w": () => this.#parts.what.click(), "r": () => this.restore(),
      "p": () => this.#parts.pen.click(), "e": () => this.#parts.rubber.click(),
      "u": () => this.#ink.undo(), "n": () => this.#notes(), "f": () => this.#fullScreen(),
      "c": () => this.#parts.clean.click(),
    };
    if (event.key === "Escape" && this.hasAttribute("clean")) {
      this.#parts.clean.click();
      return;
    }
    const act = acts[event.key.length === 1 ? event.key.toLowerCase() : event.key];
    if (!act || (anywhere && !acts[event.key])) return;
    event.preventDefault();
    this.#attempt(async () => act());
  }
}

if (!customElements.get("axle-talk")) customElements.define("axle-talk", AxleTalk);
