// The custom elements: one class for each row of TABLE.elements, which Rust owns.

let begin; // starts one element; set by the class, which keeps the method private
let fit; // tells the element of a base how wide it is
let recover; // puts back every element of an instance that died
let respeak; // brings an element into the language of its place
let repaint; // paints an element in the colours of its place

const waiting = new Set(); // elements that are not mounted yet: not near the view, or not their turn
const observer = globalThis.IntersectionObserver && new IntersectionObserver((entries) => {
  for (const entry of entries) if (entry.isIntersecting) begin(entry.target);
}, { rootMargin: "100%" });
addEventListener("beforeprint", () => waiting.forEach((element) => begin(element, true)));
new MutationObserver(() => running?.elements.forEach((element) => respeak(element)))
  .observe(document.documentElement, { attributeFilter: ["lang"], subtree: true });

const stir = () => running?.elements.forEach((element) => repaint(element));
addEventListener("resize", stir); // a device-pixel ratio comes with it
for (const query of ["(prefers-color-scheme: dark)", "(forced-colors: active)", "print"]) {
  matchMedia(query).addEventListener("change", stir);
}

const QUESTION = ["question", "working"]; // parts for question mode; its verdict shows a working

const lacks = function (part) { return !this.parts.has(part); }; // for an instance

const camel = (name) => name.replace(/-(.)/g, (_, letter) => letter.toUpperCase());

const sheets = new WeakMap(); // one for each document, shared by its shadow roots
const sheetOf = (page) => {
  if (!sheets.has(page)) {
    const sheet = new page.defaultView.CSSStyleSheet();
    sheet.replaceSync(CSS);
    sheets.set(page, sheet);
  }
  return sheets.get(page);
};

class AxleElement extends HTMLElement {
  static version = VERSION;

  #instance; // the wasm instance that serves this element, and
  #handle; // the Rust side of it; neither is set before the start or after a trap
  #beginning; // promise of a start under way
  #last; // the scenario as it last was, for a new start
  #late = new Set(); // attributes changed since then
  #lines; // of the attribute `trace`, once they are here
  #given; // the scenario that the page gave, as JSON text
  #fetching; // ends the reading of a file when a newer scenario is given
  #unread = false; // the scenario attribute is to be read at the start
  #broken = false; // its own mount trapped: it is not tried again before something changes
  #score; // how far off the reader's last prediction was
  #focus; // where the focus was before a trap
  #own; // view, units and language as the page first gave them
  #hands; // lays the handles over figure and chart, after each drawing
  #spoken; // the language that the Rust side was last told
  #watcher; // watches the width of the base
  #slot;
  #base;
  #notice;
  #timer;

  static {
    begin = (element, urgent) => element.#begin(urgent);
    fit = (base, width) => base.getRootNode().host?.#fit(base, width);
    respeak = (element) => element.#speak();
    repaint = (element) => element.#hands?.(true);
    recover = (instance) => instance.elements.forEach((element) => element.#freeze());
  }

  constructor() {
    super();
    if (!this.shadowRoot) this.attachShadow({ mode: "open" });
  }

  connectedCallback() {
    for (const name of ["scenario", ...this.constructor.mirrored.map(camel)]) {
      if (Object.hasOwn(this, name)) { // set by the page before this class was known
        const value = this[name];
        delete this[name];
        this[name] = value;
      }
    }
    this.#furnish();
    if (!this.#placed) return; // in a document that nobody sees
    this.shadowRoot.adoptedStyleSheets = [sheetOf(this.ownerDocument)];
    if (this.#base) this.#watch();
    this.#await();
    this.#speak(); // after a move
  }

  disconnectedCallback() {
    if (this.#base) this.#watcher.unobserve(this.#base); // perhaps it goes to another window
    // A move in the document is a removal and an insertion: only what stays away is unmounted.
    queueMicrotask(() => { if (!this.isConnected) this.#stop(); });
  }

  attributeChangedCallback(name, _, value) {
    if (name === "scenario") this.#unread = value !== null;
    if (this.#live && name === "scenario") this.#read(value);
    else if (name === "lang") this.#speak();
    else if (name === "trace") this.#cycle(value);
    else if (name !== "scenario") this.#set(name, value);
    else if (value === null) this.#give(null);
    this.#retry();
  }

  get scenario() {
    const now = this.#handle && ask(this.#instance, () => this.#handle.scenario());
    return now ?? this.#last ?? JSON.parse(this.#given ?? null);
  }
  set scenario(value) {
    this.#unread = false;
    if (typeof value === "string") this.#read(value);
    else {
      try {
        this.#give(value == null ? null : textOf(value));
      } catch (error) { // a circle, a big integer
        this.#refuse(typeof value, error);
      }
    }
    this.#retry();
  }
  get answer() {
    return (this.#handle && ask(this.#instance, () => this.#handle.answer())) ?? null;
  }
  get score() {
    return this.#score ?? null;
  }
  async figure(kind = "svg", { scale = 2 } = {}) {
    if (kind === "png") {
      const svg = await this.figure();
      return svg && pngOf(svg, scale); // none while a question is open
    }
    return this.#take((handle) => handle.figure(kind));
  }
  undo() { return this.#request((handle) => handle.undo()); }
  redo() { return this.#request((handle) => handle.redo()); }
  reset() { return this.#request((handle) => handle.reset()); }
  pin() { return this.#request((handle) => handle.pin(true)); }
  unpin() { return this.#request((handle) => handle.pin(false)); }
  table(kind = "csv") {
    return this.#take((handle) => handle.table(kind));
  }
  async embed(kind = "module") {
    const hash = kind === "module" ? await hashOf("axlewright.js") : "";
    return this.#take((handle) => handle.embed(kind, home.replace(/\/[^/]*$/, ""), hash));
  }
  // Starts the element if need be; true once it shows its present state, false if it cannot.
  get updateComplete() {
    return this.#begin().then(() => new Promise((done) => setTimeout(() => done(this.#live))));
  }

  get #live() {
    return this.#handle !== undefined && !this.#instance.dead;
  }
  get #parts() { // of the wasm, without which it cannot be shown
    return [this.constructor.topic, ...(this.hasAttribute("question") ? QUESTION : [])];
  }
  get #placed() {
    return this.isConnected && this.ownerDocument.defaultView !== null;
  }
  get #language() {
    return this.closest("[lang]")?.lang || document.documentElement.lang || navigator.language || "en";
  }

  #furnish() {
    if (this.#slot) return;
    this.#slot = document.createElement("slot");
    this.#notice = document.createElement("p");
    this.#notice.setAttribute("part", "notice");
    this.#notice.setAttribute("role", "status");
    this.shadowRoot.replaceChildren(this.#slot, this.#notice);
    this.shadowRoot.addEventListener("click", ({ target }) => {
      const act = target.closest("[data-do]")?.dataset.do;
      if (act) this.#act(...act.split(" "));
    });
    this.shadowRoot.addEventListener("change", ({ target }) => {
      if (target.files?.length) this.#load(target);
    });
  }

  #await() {
    if (this.#handle || this.#beginning) return;
    waiting.add(this);
    if (observer) observer.observe(this);
    else this.#begin();
  }

  #retry() {
    if (this.#broken && this.isConnected) {
      this.#broken = false;
      this.#await();
      this.#begin();
    }
  }

  // An urgent start does without a turn; where an instance is running, it is over when this returns.
  #begin(urgent) {
    observer?.unobserve(this);
    if (urgent || !this.#beginning) {
      this.#beginning = this.#run(urgent).catch((error) => {
        if (running) warnOnce(`an element lacks what it needs. ${error}`, error.cause); // else `start` has said it, once
        this.#say(halted ? "stopped" : "unavailable");
      }).finally(() => { this.#beginning = undefined; });
    }
    return this.#beginning;
  }

  async #run(urgent) {
    if (this.#live || !this.#placed) return;
    const tag = tagOf(this.#language);
    if (tag) wordsOf(tag); // they come while the wasm comes
    this.#parts.forEach((part) => modulesOf(part).catch(() => {})); // they too; a failure is heard below
    if (this.#unread) await this.#read(this.getAttribute("scenario"));
    if (!urgent) {
      await start();
      await turn();
    }
    let instance;
    let part;
    while (!((instance = running) && !(part = this.#parts.find(lacks, instance)) && knows(instance, this.#language))) {
      await (!instance ? start() : part ? bring(instance, part) : teach(instance, this.#language));
    }
    if (!this.#handle && !this.#broken && this.#placed) this.#mount(instance);
  }

  #mount(instance) {
    waiting.delete(this);
    const base = document.createElement("div");
    base.setAttribute("part", "base");
    const old = this.#base ?? this.#slot;
    // Shown again below if this fails, before anything is painted. The fallback goes with the first answer.
    if (this.#base) old.hidden = true;
    this.shadowRoot.insertBefore(base, this.#notice);
    this.#spoken = this.#language;
    const settings = { lang: this.#spoken, width: base.clientWidth };
    for (const name of this.constructor.mirrored) {
      if (name !== "lang" && this.hasAttribute(name)) settings[name] = this.getAttribute(name);
    }
    if ("trace" in settings) settings.trace = this.#lines;
    if (this.#given != null) settings.scenario = this.#given;
    const emit = (type, detail) => {
      if (type === "axle-answer" && !this.#slot.hidden) this.#slot.hidden = true;
      queueMicrotask(() => {
        if (this.#instance === instance && !instance.dead) this.#emit(type, detail);
      });
    };
    this.#instance = instance;
    instance.elements.add(this);
    this.#handle = ask(instance, (rust) => rust.mount(base, this.constructor.topic, settings, emit));
    // A question draws its numbers from what the page set, so it is asked anew.
    if (this.#last && !this.hasAttribute("question")) {
      ask(instance, () => this.#handle.set("scenario", textOf(this.#last)));
      for (const name of this.#late) {
        ask(instance, () => this.#handle.set(name, name === "trace" ? this.#lines : this.getAttribute(name)));
      }
    }
    if (instance.dead) { // it died of this element
      this.#broken = true;
      base.remove();
      old.hidden = false;
      return;
    }
    this.#base = base;
    this.#own ??= { view: settings.view ?? "", units: settings.units ?? "", lang: this.#spoken };
    if (this.hasAttribute("question")) this.#slot.hidden = true; // it may be the same question in print
    this.#hands = handsOn(
      base,
      (question) => this.#handle && ask(instance, () => question(this.#handle)),
      (go) => this.#need(["take"], go),
    );
    this.#hands();
    this.#watch();
    if (old !== this.#slot) {
      const open = [...old.querySelectorAll("details")].map((details) => details.open);
      base.querySelectorAll("details").forEach((details, index) => { details.open = open[index]; });
      old.remove();
    }
    if (this.#focus) focusAt(base, this.#focus);
    this.#hush("unavailable", "stopped");
    ahead();
    this.#focus = undefined;
    this.#remember();
    if (this.#unread) this.#read(this.getAttribute("scenario")); // it changed during the start
  }

  #stop() {
    waiting.delete(this);
    observer?.unobserve(this);
    if (!this.#handle) return;
    const [instance, handle] = [this.#instance, this.#handle];
    instance.elements.delete(this);
    this.#instance = this.#handle = undefined;
    ask(instance, () => handle.unmount());
    this.#base.remove();
    this.#base = undefined;
    this.#slot.hidden = false;
  }

  #freeze() {
    this.#instance = this.#handle = undefined;
    if (this.#base) {
      this.#focus = this.shadowRoot.activeElement && pathTo(this.#base, this.shadowRoot.activeElement);
      const still = picture(this.#base);
      this.#base.replaceWith(still);
      this.#base = still;
    }
    this.#say(halted || this.#broken ? "stopped" : "restarted", 10);
    if (!halted && !this.#broken) this.#begin();
  }

  // A cycle is its lines, or the address of a file that holds them: an address has no line break.
  async #cycle(value) {
    this.#lines = value;
    if (value && !value.includes("\n")) {
      const from = value;
      this.#lines = undefined;
      const text = await textFrom(new URL(from, this.baseURI)).catch(() => from); // refused by name then
      if (this.getAttribute("trace") !== from) return;
      this.#lines = text;
    }
    this.#set("trace", this.#lines);
  }

  // A file that the reader chose. What is too long is cut after a byte too many: then it is refused.
  async #load({ files: [file], dataset: { path } }) {
    const text = await file.slice(0, 600_001).text();
    if (!this.#live) return;
    const instance = this.#instance;
    ask(instance, () => this.#handle.change(path, text));
    // What was refused is told; another change would take the sentence away.
    if (ask(instance, () => this.#handle.scenario())?.idle_drag?.trace !== text.trim()) return;
    ask(instance, () => this.#handle.change("idle_drag.cycle", "own"));
  }

  // Another language may need its words first.
  async #speak() {
    if (!this.#live) return; // the start will ask for it
    const instance = this.#instance;
    while (!knows(instance, this.#language)) await teach(instance, this.#language);
    if (this.#instance !== instance || this.#spoken === this.#language) return;
    this.#spoken = this.#language;
    this.#set("lang", this.#spoken);
  }

  #watch() {
    this.#watcher = watcherOf(this.ownerDocument.defaultView);
    this.#watcher.observe(this.#base);
  }

  #fit(base, width) {
    if (this.#live && base === this.#base) ask(this.#instance, () => this.#handle.fit(width));
  }

  #set(name, value) {
    if (!this.#live) {
      this.#late.add(name);
      return;
    }
    if (name === "question" && value !== null && QUESTION.some(lacks, this.#instance)) {
      this.#need(QUESTION, () => this.#set(name, this.getAttribute(name)));
      return;
    }
    ask(this.#instance, () => this.#handle.set(name, value));
    this.#remember();
  }

  #remember() {
    const scenario = ask(this.#instance, () => this.#handle.scenario());
    if (scenario) {
      this.#last = scenario;
      this.#late.clear();
    }
  }

  #give(value) {
    this.#fetching?.abort();
    this.#given = value;
    this.#last = undefined;
    this.#hush("scenario");
    if (this.#live) this.#set("scenario", value);
  }

  // A scenario as text: JSON, or the address of a file that holds it.
  async #read(text) {
    this.#unread = false;
    if (text === null) return this.#give(null);
    this.#fetching?.abort();
    this.#fetching = new AbortController();
    const { signal } = this.#fetching;
    try {
      const json = checked(/^\s*\{/.test(text) ? text : await textFrom(new URL(text, this.baseURI), signal));
      if (!signal.aborted) this.#give(json);
    } catch (error) {
      if (!signal.aborted) this.#refuse(text.slice(0, 200), error);
    }
    return undefined;
  }

  #take(question) { return this.#request(question, "take"); }

  #refuse(value, error) {
    const allowed = this.#say("scenario");
    this.#emit("axle-problem", { field: "scenario", value, allowed, reason: String(error) });
  }

  async #request(question, part) {
    await this.#begin();
    const instance = this.#instance;
    if (part && this.#live) await bring(instance, part);
    if (this.#instance !== instance) return this.#request(question, part); // it was put back meanwhile
    if (!this.#live) throw new Error(sentence(this.#language, halted ? "stopped" : "unavailable"));
    const result = ask(instance, () => question(this.#handle));
    return instance.dead ? instance.gone : result;
  }

  #emit(type, detail) {
    if (type === "redraw") return this.#hands?.(); // between Rust and this script alone, as is the next
    if (type === "part") return this.#need([detail], () => ask(this.#instance, () => this.#handle.show_part()));
    if (type === "axle-score") this.#score = detail;
    if (type === "axle-change") {
      this.#last = detail;
      this.#hush("restarted");
    }
    return this.dispatchEvent(new CustomEvent(type, { detail, bubbles: true, composed: true }));
  }

  // Brings parts of the wasm to the running element, and goes on if it is still that one.
  async #need(parts, go) {
    const instance = this.#instance;
    try {
      for (const part of parts) await bring(instance, part);
      this.#hush("unavailable");
      if (this.#instance === instance && !instance.dead) go();
    } catch (error) {
      warnOnce(`an element lacks what it needs. ${error}`, error.cause);
      this.#say("unavailable");
    }
  }

  // What a button of the toolbar asks for; `more` is a scale or the path of a result.
  async #act(act, more) {
    let done;
    try {
      if (act === "screen") {
        await (document.fullscreenElement === this ? document.exitFullscreen() : this.requestFullscreen());
      } else if (act === "print") {
        await printOnly(this.#base, this.#language);
      } else if (act === "link") {
        await copy(linkTo(this, await this.#take((handle) => handle.link(...notIn(location, this.#own)))));
        done = "copied";
      } else if (act === "embed") {
        await copy(await this.embed(more));
        done = "copied";
      } else if (act === "latex" || act === "text") {
        await copy(await this.#take((handle) => handle.working(more, act)));
        done = "copied";
      } else {
        const { name, type, content } = await this.#take((handle) => handle.file(act === "png" ? "svg" : act));
        const text = typeof content === "string" ? content : JSON.stringify(content, null, 2);
        const full = act === "png" ? name.replace(/svg$/, `${more}x.png`) : name;
        save(full, act === "png" ? await pngOf(text, Number(more)) : new Blob([text], { type }));
        done = ["saved", full];
      }
    } catch {
      done = "refused";
    }
    const place = this.#base?.querySelector(".done");
    if (!place || !done) return;
    const [key, part = ""] = [done].flat();
    place.textContent = sentence(this.#language, key).replace("{0}", part);
    setTimeout(() => { place.textContent = ""; }, 6000);
  }

  #say(key, seconds) {
    clearTimeout(this.#timer);
    const text = sentence(this.#language, key);
    this.#furnish();
    this.#notice.dataset.key = key;
    this.#notice.textContent = text;
    if (seconds) this.#timer = setTimeout(() => this.#hush("restarted"), 1000 * seconds);
    return text;
  }
  #hush(...keys) {
    if (keys.includes(this.#notice?.dataset.key)) {
      delete this.#notice.dataset.key;
      this.#notice.textContent = "";
    }
  }
}

const define = ({ tag, topic, attributes }) => {
  const present = customElements.get(tag);
  if (present) return present.version === VERSION ? undefined : present;
  const mirrored = attributes.filter((name) => name !== "scenario");
  const element = class extends AxleElement {
    static topic = topic;
    static mirrored = mirrored;
    static observedAttributes = attributes;
  };
  for (const name of mirrored) {
    const property = camel(name);
    if (property in HTMLElement.prototype) continue; // `lang` mirrors its attribute already
    Object.defineProperty(element.prototype, property, {
      configurable: true,
      enumerable: true,
      get() { return this.getAttribute(name); },
      set(value) {
        if (value === null || value === undefined || value === false) this.removeAttribute(name);
        else this.setAttribute(name, value === true ? "" : String(value));
      },
    });
  }
  customElements.define(tag, element);
  return undefined;
};
const TOPICS = TABLE.elements.map(({ topic }) => topic);
const other = TABLE.elements.map(define).find((present) => present);
if (other) warn(`the elements of version ${other.version ?? "unknown"} came first on this page and stay.`);

// Fetches parts and puts them beside this instance and every later one.
const want = async (parts) => {
  await Promise.all(parts.map(modulesOf));
  const instance = await start();
  for (const part of parts) {
    wanted.add(part);
    await bring(instance, part);
  }
};

// A second copy of this script (a second address, or the classic one) shares the first one's instance.
const api = (globalThis[Symbol.for(`axlewright ${VERSION}`)] ??= {
  version: VERSION,
  init: async ({ topics = TOPICS } = {}) => {
    const parts = topics.map((topic) => topic.replaceAll("-", "_"));
    const unknown = parts.find((part) => !TOPICS.includes(part));
    if (unknown) throw new Error(`axlewright: there is no topic "${unknown}"`);
    await want([...parts, "schema"]);
  },
  solve: (topic, scenario) => now((rust) => rust.solve(topic, textOf(scenario))),
  topics: () => now(() => TOPICS),
  schema: (topic) => now((rust) => rust.schema(topic)),
  talk: {
    // A talk that names a topic which is not known is told all that there are. A handout has workings.
    init: (topics) => {
      const parts = topics.map((topic) => String(topic).trim().toLowerCase().replaceAll("-", "_"));
      return want(["talk", "working", ...(parts.every((part) => TOPICS.includes(part)) ? new Set(parts) : TOPICS)]);
    },
    read: (json) => now((rust) => rust.talk(json)),
    step: (json, at, changed, units, theme, width = 0) =>
      now((rust) => rust.talk_step(json, at, changed, units, theme, width)),
    between: (json, from, to, share) => now((rust) => rust.talk_between(json, from, to, share)),
    text: textFrom,
    checked,
  },
  provokeTrap: () => query((rust) => rust.provoke_trap()),
});
