// The speaker's own window: note, next step, time, list of steps. It holds nothing of its own: the talk
// writes into it, and its buttons and keys go back to the talk.

class Presenter {
  #talk;
  #window;
  #parts;
  #ticking;

  constructor(talk) {
    this.#talk = talk;
  }

  get isOpen() {
    return Boolean(this.#window && !this.#window.closed);
  }

  // Opens the window; false where the browser lets none open.
  open(title, words, keys) {
    if (this.isOpen) {
      this.#window.focus();
      return true;
    }
    this.#window = window.open("", "", "popup,width=860,height=640");
    if (!this.#window) return false;
    const page = this.#window.document;
    page.title = `${words.presenter}: ${title}`;
    page.documentElement.lang = this.#talk.lang || document.documentElement.lang;
    const sheet = new this.#window.CSSStyleSheet();
    sheet.replaceSync(PRESENTER_CSS);
    page.adoptedStyleSheets = [sheet];
    const part = (name, attributes = {}) => page.importNode(make(name, attributes), true);
    this.#parts = {
      time: part("output", { "class": "time", "aria-label": words.time }),
      count: part("p", { "class": "count" }),
      said: part("p", { "class": "said" }),
      note: part("p", { "class": "note" }),
      next: part("p", { "class": "next" }),
      steps: part("ol", { "class": "steps" }),
    };
    const button = (text, act) => {
      const made = part("button", { "type": "button" });
      made.textContent = text;
      made.addEventListener("click", act);
      return made;
    };
    const heading = (text, rank = "h2") => {
      const made = part(rank);
      made.textContent = text;
      return made;
    };
    const { time, count, said, note, next, steps } = this.#parts;
    const bar = part("nav", { "aria-label": words.steps });
    bar.append(button(words.back, () => this.#talk.back()), button(words.forward, () => this.#talk.forward()), count, time);
    const main = part("main");
    main.append(bar, heading(title, "h1"), said, heading(words.note), note, heading(words.next), next, heading(words.steps), steps);
    page.body.replaceChildren(main);
    page.addEventListener("keydown", keys);
    clearInterval(this.#ticking);
    this.#ticking = setInterval(() => {
      if (this.isOpen) this.tick();
      else clearInterval(this.#ticking);
    }, 1000);
    return true;
  }

  close() {
    clearInterval(this.#ticking);
    this.#window?.close();
    this.#window = undefined;
  }

  tick() {
    if (!this.isOpen) return;
    const seconds = Math.floor(this.#talk.elapsed / 1000);
    const two = (number) => String(number).padStart(2, "0");
    this.#parts.time.textContent = `${Math.floor(seconds / 60)}:${two(seconds % 60)}`;
  }

  show({ at, count, said, note, next, steps, words }) {
    if (!this.isOpen) return;
    const parts = this.#parts;
    parts.count.textContent = fill(words.step, at + 1, count);
    parts.said.textContent = said;
    parts.note.textContent = note || words.no_note;
    parts.next.textContent = next || words.last;
    // The buttons stay while the words do: one of them may have the focus.
    const buttons = () => [...parts.steps.querySelectorAll("button")];
    const same = buttons().map((button) => button.textContent).join("\n") === steps.join("\n");
    if (!same) parts.steps.replaceChildren(...steps.map((text, step) => this.#stepOf(text, step)));
    buttons().forEach((button, step) => {
      if (step === at) button.setAttribute("aria-current", "step");
      else button.removeAttribute("aria-current");
    });
    this.tick();
  }

  #stepOf(text, step) {
    const item = this.#parts.steps.ownerDocument.createElement("li");
    const button = this.#parts.steps.ownerDocument.createElement("button");
    button.type = "button";
    button.textContent = text;
    button.addEventListener("click", () => this.#talk.goTo(step));
    item.append(button);
    return item;
  }
}
