// Measures what the elements of a page cost, in milliseconds of the clock.
globalThis.measure = (() => {
  // After every promise that is waiting, and before the next frame.
  const settled = () => new Promise((done) => {
    const { port1, port2 } = new MessageChannel();
    port1.onmessage = () => { port1.close(); done(); };
    port2.postMessage(0);
  });
  const frame = () => new Promise((done) => requestAnimationFrame(() => setTimeout(done)));
  const quantile = (times, share) => {
    const sorted = [...times].sort((a, b) => a - b);
    return sorted[Math.min(sorted.length - 1, Math.floor(share * sorted.length))];
  };
  const summary = (times) => ({ median: quantile(times, 0.5), p99: quantile(times, 0.99), most: Math.max(...times) });

  // A slider is pulled to and fro. `script` ends when all that follows the slider is written, `all`
  // when it is laid out as well.
  const slide = async (element, name, steps) => {
    const slider = element.shadowRoot.querySelector(`#${name}-slider`);
    const [min, max, step] = [slider.min, slider.max, slider.step].map(Number);
    const from = Number(slider.value);
    const way = from + 60 * step > max ? -1 : 1;
    const script = [];
    const all = [];
    let answers = 0;
    const count = () => { answers += 1; };
    element.addEventListener("axle-answer", count);
    for (let at = 0; at < steps; at += 1) {
      await frame();
      // Never the value of a moment ago: what is kept of a run must not answer.
      const off = 1 + at % 59;
      const value = Math.min(max, Math.max(min, from + way * step * off));
      const began = performance.now();
      const before = answers;
      slider.value = String(value);
      slider.dispatchEvent(new Event("input", { bubbles: true }));
      await settled();
      // What is worked on over several frames is written when its answer is there.
      while (answers === before && performance.now() - began < 5000) await settled();
      const written = performance.now();
      element.getBoundingClientRect();
      const placed = performance.now();
      script.push(written - began);
      all.push(placed - began);
    }
    element.removeEventListener("axle-answer", count);
    return { script: summary(script), all: summary(all), answers, steps };
  };
  // Whatever a reader can press, pull, choose or type, in an order that a seed decides.
  const fumble = async (element, seconds, seed) => {
    let state = seed;
    const random = (below) => {
      state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
      return Math.floor((state / 2 ** 32) * below);
    };
    const root = element.shadowRoot;
    const fire = (target, ...types) => types.forEach((type) => target.dispatchEvent(new Event(type, { bubbles: true })));
    const acts = {
      "input[type=range]": (slider) => {
        const [min, max, step] = [slider.min, slider.max, slider.step].map(Number);
        slider.value = String(min + step * random(1 + (max - min) / step));
        fire(slider, "input", "change");
      },
      "input.number": (field) => {
        field.value = ["1850", "heavy", "", "0.5", "1e9", "-3", "2 t"][random(7)];
        fire(field, "change");
      },
      select: (list) => { list.selectedIndex = random(list.options.length); fire(list, "change"); },
      "button:not([data-do]), summary, input[type=checkbox]:enabled": (button) => button.click(),
      ".hold, .cursor": (hold) => {
        const key = ["ArrowUp", "ArrowLeft", "PageUp", "Home", "End"][random(5)];
        hold.dispatchEvent(new KeyboardEvent("keydown", { key, bubbles: true, composed: true }));
      },
    };
    const kinds = Object.keys(acts);
    const end = performance.now() + 1000 * seconds;
    let count = 0;
    while (performance.now() < end) {
      const kind = kinds[random(kinds.length)];
      const targets = root.querySelectorAll(kind);
      if (targets.length) acts[kind](targets[random(targets.length)]);
      count += 1;
      await (count % 8 ? settled() : frame());
    }
    return count;
  };
  return { settled, frame, quantile, summary, slide, fumble };
})();
