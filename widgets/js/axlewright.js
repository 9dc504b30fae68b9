// The custom elements: one class for each row of TABLE.elements, which Rust owns.

let begin; // starts one element; set by the class, which keeps the method private
let recover; // puts back every element of an instance that died
let respeak; // brings an element into the language of its place

const waiting = new Set(); // elements that are not yet near the view
const observer = globalThis.IntersectionObserver && new IntersectionObserver((entries) => {
  for (const entry of entries) if (entry.isIntersecting) begin(entry.target);
}, { rootMargin: "100%" });
addEventListener("beforeprint", () => waiting.forEach((element) => begin(element)));
new MutationObserver(() => running?.elements.forEach((element) => respeak(element)))
  .observe(document.documentElement, { attributeFilter: ["lang"], subtree: true });

const camel = (name) => name.replace(/-(.)/g, (_, letter) => letter.toUpperCase());

// Rust reads what the page gives as JSON, in which a number that is not finite would become nothing.
const asText = (value) => (typeof value === "string" ? value : JSON.stringify(value, (_, part) => (
  typeof part === "number" && !Number.isFinite(part) ? String(part) : part)));

const sheets = new WeakMap(); // one for each document, shared by its shadow roots
const sheetOf = (page) => {
  if (!sheets.has(page)) {
    const sheet = new (page.defaultView ?? window).CSSStyleSheet();
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
  #given; // the scenario that the page gave, as JSON
  #turn = 0; // counts scenarios given, so that a slow file cannot overwrite a newer one
  #unread = false; // the scenario attribute is to be read at the start
  #broken = false; // its own mount trapped: it is not tried again before something changes
  #focus; // where the focus was before a trap
  #hands; // lays the handles over figure and chart, after each drawing
  #spoken; // the language that the Rust side was last told
  #slot;
  #base;
  #notice;
  #timer;

  static {
    begin = (element) => element.#begin();
    respeak = (element) => element.#speak();
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
    this.shadowRoot.adoptedStyleSheets = [sheetOf(this.ownerDocument)];
    this.#await();
    this.#speak(); // after a move
  }

  disconnectedCallback() {
    // A move in the document is a removal and an insertion: only what stays away is unmounted.
    queueMicrotask(() => { if (!this.isConnected) this.#stop(); });
  }

  attributeChangedCallback(name, _, value) {
    if (name === "scenario") this.#unread = value !== null;
    if (this.#live && name === "scenario") this.#read(value);
    else if (name === "lang") this.#speak();
    else if (name !== "scenario") this.#set(name, value);
    else if (value === null) this.#give(null);
    this.#retry();
  }

  get scenario() {
    const now = this.#handle && ask(this.#instance, () => this.#handle.scenario());
    return now ?? this.#last ?? (this.#given ? JSON.parse(this.#given) : null);
  }
  set scenario(value) {
    this.#unread = false;
    if (typeof value === "string") this.#read(value);
    else if (value === null || value === undefined) this.#give(null);
    else {
      try {
        const text = asText(value);
        JSON.parse(text);
        this.#give(text);
      } catch (error) { // a circle, a big integer, a function
        this.#refuse(String(value), error);
      }
    }
    this.#retry();
  }
  get answer() {
    return (this.#handle && ask(this.#instance, () => this.#handle.answer())) ?? null;
  }
  async figure(kind = "svg", { scale = 2 } = {}) {
    if (kind === "png") return pngOf(await this.figure(), scale);
    return this.#request((handle) => handle.figure(kind));
  }
  undo() { return this.#request((handle) => handle.undo()); }
  redo() { return this.#request((handle) => handle.redo()); }
  reset() { return this.#request((handle) => handle.reset()); }
  pin() { return this.#request((handle) => handle.pin(true)); }
  unpin() { return this.#request((handle) => handle.pin(false)); }
  table(kind = "csv") {
    return this.#request((handle) => handle.table(kind));
  }
  // Starts the element if need be; true once it shows its present state, false if it cannot.
  get updateComplete() {
    return this.#begin().then(() => new Promise((done) => setTimeout(() => done(this.#live))));
  }

  get #live() {
    return this.#handle !== undefined && !this.#instance.dead;
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

  #begin() {
    waiting.delete(this);
    observer?.unobserve(this);
    this.#beginning ??= this.#run().catch((error) => {
      if (running) warn(`<${this.localName}> cannot start. ${error}`); // else `start` has said it, once
      this.#say(halted ? "stopped" : "unavailable");
    }).finally(() => { this.#beginning = undefined; });
    return this.#beginning;
  }

  async #run() {
    if (this.#live || !this.isConnected) return;
    const tag = tagOf(this.#language);
    if (tag) wordsOf(tag); // they come while the wasm comes
    if (this.#unread) await this.#read(this.getAttribute("scenario"));
    let instance;
    while (!((instance = running) && knows(instance, this.#language))) {
      await (instance ? teach(instance, this.#language) : start());
    }
    if (!this.#handle && !this.#broken && this.isConnected) this.#mount(instance);
  }

  #mount(instance) {
    const base = document.createElement("div");
    base.setAttribute("part", "base");
    const old = this.#base ?? this.#slot;
    old.hidden = true; // shown again below if this fails, before anything is painted
    this.shadowRoot.insertBefore(base, this.#notice);
    this.#spoken = this.#language;
    const settings = { lang: this.#spoken };
    for (const name of this.constructor.mirrored) {
      if (name !== "lang" && this.hasAttribute(name)) settings[name] = this.getAttribute(name);
    }
    if (this.#given != null) settings.scenario = this.#given;
    const emit = (type, detail) => queueMicrotask(() => {
      if (this.#instance === instance && !instance.dead) this.#emit(type, detail);
    });
    this.#instance = instance;
    instance.elements.add(this);
    this.#handle = ask(instance, (rust) => rust.mount(base, this.constructor.topic, settings, emit));
    if (this.#last) {
      ask(instance, () => this.#handle.set("scenario", asText(this.#last)));
      for (const name of this.#late) ask(instance, () => this.#handle.set(name, this.getAttribute(name)));
    }
    if (instance.dead) { // it died of this element
      this.#broken = true;
      base.remove();
      old.hidden = false;
      return;
    }
    if (old !== this.#slot) old.remove();
    this.#base = base;
    this.#hands = handsOn(base, (question) => this.#handle && ask(instance, () => question(this.#handle)));
    this.#hands();
    if (this.#focus) focusAt(base, this.#focus);
    this.#hush("unavailable", "stopped");
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

  // Another language may need its words first.
  async #speak() {
    if (!this.#live) return; // the start will ask for it
    const instance = this.#instance;
    while (!knows(instance, this.#language)) await teach(instance, this.#language);
    if (this.#instance !== instance || this.#spoken === this.#language) return;
    this.#spoken = this.#language;
    this.#set("lang", this.#spoken);
  }

  #set(name, value) {
    if (!this.#live) {
      this.#late.add(name);
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
    this.#turn += 1;
    this.#given = value;
    this.#last = undefined;
    this.#hush("scenario");
    if (this.#live) this.#set("scenario", value);
  }

  // A scenario as text: JSON, or the address of a file that holds it.
  async #read(text) {
    this.#unread = false;
    if (text === null) return this.#give(null);
    const turn = (this.#turn += 1);
    try {
      const json = /^\s*\{/.test(text) ? text : await textFrom(new URL(text, this.baseURI));
      if (json.length > SCENARIO_LIMIT) throw new Error("too long");
      JSON.parse(json);
      if (turn === this.#turn) this.#give(json);
    } catch (error) {
      if (turn !== this.#turn) return undefined;
      this.#refuse(text, error);
    }
    return undefined;
  }

  #refuse(text, error) {
    const allowed = this.#say("scenario");
    this.#emit("axle-problem", { field: "scenario", value: text.slice(0, 200), allowed, reason: String(error) });
  }

  async #request(question) {
    await this.#begin();
    const instance = this.#instance;
    if (!this.#live) throw new Error(sentence(this.#language, halted ? "stopped" : "unavailable"));
    const result = ask(instance, () => question(this.#handle));
    return Promise.race([result, instance.gone].slice(instance.dead ? 1 : 0));
  }

  #emit(type, detail) {
    if (type === "redraw") return this.#hands?.(); // between Rust and this script alone
    if (type === "axle-change") {
      this.#last = detail;
      this.#hush("restarted");
    }
    return this.dispatchEvent(new CustomEvent(type, { detail, bubbles: true, composed: true }));
  }

  // What a button of the toolbar asks for; `more` is a scale or the path of a result.
  async #act(act, more) {
    let done;
    try {
      if (act === "screen") {
        await (document.fullscreenElement === this ? document.exitFullscreen() : this.requestFullscreen());
      } else if (act === "print") {
        await printOnly(this.#base, this.#language);
      } else if (act === "latex" || act === "text") {
        await copy(await this.#request((handle) => handle.working(more, act)));
        done = "copied";
      } else {
        const { name, type, content } = await this.#request((handle) => handle.file(act === "png" ? "svg" : act));
        const text = typeof content === "string" ? content : JSON.stringify(content, null, 2);
        if (type === "copy") await copy(text);
        else if (act === "png") save(name.replace(/svg$/, `${more}x.png`), await pngOf(text, Number(more)));
        else save(name, new Blob([text], { type }));
        done = type === "copy" ? "copied" : ["saved", act === "png" ? name.replace(/svg$/, `${more}x.png`) : name];
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
const other = TABLE.elements.map(define).find((present) => present);
if (other) warn(`the elements of version ${other.version ?? "unknown"} came first on this page and stay.`);

// A second copy of this script (a second address, or the classic one) shares the first one's instance.
const api = (globalThis[Symbol.for(`axlewright ${VERSION}`)] ??= {
  version: VERSION,
  init: async () => { await start(); },
  solve: (topic, scenario) => now((rust) => rust.solve(topic, asText(scenario))),
  topics: () => now((rust) => rust.topics()),
  schema: (topic) => now((rust) => rust.schema(topic)),
  provokeTrap: () => query((rust) => rust.provoke_trap()),
});
