// Hands on figure and chart. Rust says where the grips of a figure are and what they move, and what a
// chart says at a place; pointer, focus and keys are here.

const ARROWS = { ArrowLeft: [-1, 0], ArrowRight: [1, 0], ArrowUp: [0, -1], ArrowDown: [0, 1] };
const STEPS = { ArrowLeft: -1, ArrowDown: -1, ArrowRight: 1, ArrowUp: 1, PageDown: -10, PageUp: 10 };
const modified = (event) => event.altKey || event.ctrlKey || event.metaKey;

const part = (name, kind) => {
  const element = document.createElement(name);
  element.className = kind;
  return element;
};
const percent = (share) => `${100 * share}%`;

// How far each value goes when a grip is pulled by x and y.
const pulled = ([a, b], x, y) => {
  if (!b) return [(x * a.dx + y * a.dy) / (a.dx ** 2 + a.dy ** 2)];
  const cross = a.dx * b.dy - a.dy * b.dx;
  return [(x * b.dy - y * b.dx) / cross, (a.dx * y - a.dy * x) / cross];
};

// The value of an axis some way from where it was: on a step and inside the usual range.
const stepped = ({ min, max, step = 1 }, from, by) => {
  if (Math.abs(by) < step / 2) return from;
  return Math.min(max, Math.max(min, Math.round((from + by) / step) * step));
};
const written = ({ words, min, unit, decimals }, value) =>
  words ? words[value - min] : `${value.toFixed(decimals)} ${unit}`;

// The axis that an arrow key moves, and which way: what lies along the arrow follows the picture, other
// values grow to the right and upwards.
const moved = (axes, own, key) => {
  const [x, y] = ARROWS[key];
  const along = axes.map(({ dx = 0, dy = 0 }) => (dx * x + dy * y) / Math.hypot(dx, dy));
  const at = along.findIndex((share) => Math.abs(share) > 0.6);
  return at < 0 ? [own, STEPS[key]] : [at, Math.sign(along[at])];
};

// A motor is carried: to the middle of its axle or out to a wheel of it, to the other axle, or off the car.
// The counts of both axles after that; none where it was only pressed.
const carried = (grip, group, down, up) => {
  if (Math.hypot(up.clientX - down.clientX, up.clientY - down.clientY) < 8) return null;
  const axles = [...group.children].filter(({ hold }) => hold.kind === "turn");
  const counts = axles.map(({ hold }) => hold.axes[0].now);
  const from = axles.indexOf(grip);
  const shares = axles.map((axle) => {
    const box = axle.getBoundingClientRect();
    return [(up.clientX - box.left) / box.width, (up.clientY - box.top) / box.height, box.width < box.height];
  });
  const at = shares.findIndex(([x, y]) => x >= 0 && x <= 1 && y >= 0 && y <= 1);
  if (at === from) {
    const [x, y, upright] = shares[at];
    counts[at] = Math.abs((upright ? y : x) - 0.5) > 0.25 ? 2 : 1;
  } else if (counts[from]) {
    counts[from] -= 1;
    if (at >= 0) counts[at] = Math.min(2, counts[at] + 1);
  }
  return counts;
};
const layoutOf = ([front, rear]) => (front ? `F${front}` : "") + (rear ? `R${rear}` : "");

const makeGrip = (hold, change, group) => {
  const choose = hold.kind === "choose";
  const grip = part(choose ? "input" : "div", `grip ${hold.kind}`);
  grip.hold = hold;
  if (choose) {
    grip.type = "radio";
    grip.name = hold.axes[0].path;
    grip.addEventListener("change", () => change(grip.hold.axes[0], grip.hold.axes[0].word));
    grip.addEventListener("keydown", (event) => { if (event.key === "Enter") grip.click(); });
    return grip;
  }
  for (const _ of hold.axes) {
    const slider = part("div", "hold");
    slider.tabIndex = 0;
    slider.setAttribute("role", "slider");
    grip.append(slider);
  }
  const set = (axis, value) => change(axis, written(axis, value));
  const next = ({ now, min, max }) => (now < max ? now + 1 : min);
  grip.addEventListener("keydown", (event) => {
    const { axes, kind } = grip.hold;
    const own = [...grip.children].indexOf(event.target);
    const axis = axes[own];
    const { key } = event;
    if (!axis || modified(event)) return;
    if (ARROWS[key]) {
      const [at, way] = moved(axes, own, key);
      set(axes[at], stepped(axes[at], axes[at].now, way * (axes[at].step ?? 1)));
      grip.children[at].focus({ preventScroll: true });
    } else if (STEPS[key]) set(axis, stepped(axis, axis.now, STEPS[key] * (axis.step ?? 1)));
    else if (key === "Home") set(axis, axis.min);
    else if (key === "End") set(axis, axis.max);
    else if (kind === "turn" && (key === "Enter" || key === " ")) set(axis, next(axis));
    else return;
    event.preventDefault();
  });
  grip.addEventListener("pointerdown", (down) => {
    if (down.button || !down.isPrimary) return;
    down.preventDefault(); // no text is selected, and the focus goes where it should
    grip.firstChild.focus({ preventScroll: true });
    if (hold.kind === "turn") {
      grip.setPointerCapture(down.pointerId);
      grip.addEventListener("pointerup", (up) => {
        const counts = carried(grip, group, down, up);
        grip.carried = counts !== null; // the click that follows is none
        const word = counts && layoutOf(counts);
        if (word) change(grip.hold.axes[0], word);
      }, { once: true });
      return;
    }
    const { axes } = grip.hold; // as they were: the picture may change its scale under the hand
    const scale = group.page.width / group.getBoundingClientRect().width;
    let last = axes.map(({ now }) => now);
    const move = (event) => {
      const by = pulled(axes, scale * (event.clientX - down.clientX), scale * (event.clientY - down.clientY));
      const values = axes.map((axis, at) => stepped(axis, axis.now, by[at]));
      values.forEach((value, at) => { if (value !== last[at]) set(axes[at], value); });
      last = values;
    };
    const end = () => grip.removeEventListener("pointermove", move);
    grip.setPointerCapture(down.pointerId);
    grip.addEventListener("pointermove", move);
    grip.addEventListener("lostpointercapture", end, { once: true });
  });
  if (hold.kind === "turn") {
    grip.addEventListener("click", () => {
      if (!grip.carried) set(grip.hold.axes[0], next(grip.hold.axes[0]));
      grip.carried = false;
    });
  }
  return grip;
};

// Writes an attribute that may be what it was.
const put = (element, name, value) => {
  if (element.getAttribute(name) !== String(value)) element.setAttribute(name, value);
};

// Brings a grip up to what Rust says of it.
const dress = (grip, hold, { width, height }) => {
  grip.hold = hold;
  const place = [hold.x / width, hold.y / height, hold.w / width, hold.h / height].map(percent);
  if (grip.place !== place.join()) {
    grip.place = place.join();
    [grip.style.left, grip.style.top, grip.style.width, grip.style.height] = place;
  }
  hold.axes.forEach((axis, at) => {
    const named = grip.children[at] ?? grip;
    put(named, "aria-label", axis.label);
    if (hold.kind === "choose") {
      grip.checked = axis.chosen;
      return;
    }
    put(named, "aria-valuetext", axis.text);
    put(named, "aria-valuenow", axis.now);
    put(named, "aria-valuemin", axis.min);
    put(named, "aria-valuemax", axis.max);
    put(named, "aria-orientation", Math.abs(axis.dy) > Math.abs(axis.dx) ? "vertical" : "horizontal");
  });
};

// Keeps the handles in a group those that Rust names. A grip that stays keeps its element and so the
// focus.
const keepGrips = (group, change) => {
  let made = new Map();
  return (page) => {
    group.page = page;
    const held = group.getRootNode().activeElement;
    const old = [...group.children];
    const kept = new Map();
    for (const hold of page.grips) {
      const key = hold.kind + hold.axes.map(({ path, label, word }) => path + (word ?? label)).join();
      const grip = made.get(key) ?? makeGrip(hold, change, group);
      dress(grip, hold, page);
      kept.set(key, grip);
    }
    made = kept;
    const now = [...kept.values()];
    if (now.length === old.length && now.every((grip, at) => grip === old[at])) return;
    group.replaceChildren(...now);
    if (group.contains(held)) held.focus({ preventScroll: true });
  };
};

// Reads a chart out under the pointer and along its x axis by keyboard.
const readChart = (chart, ask, change) => {
  const cursor = chart.querySelector(".cursor");
  const told = chart.querySelector(".read");
  let reading;
  const state = ({ now, min, max, text }) => {
    put(cursor, "aria-valuenow", now);
    put(cursor, "aria-valuemin", min);
    put(cursor, "aria-valuemax", max);
    put(cursor, "aria-valuetext", text);
  };
  const show = (next) => {
    reading = next;
    if (!reading) {
      cursor.replaceChildren();
      told.replaceChildren();
      return;
    }
    const hair = part("div", "hair");
    hair.style.left = percent(reading.left);
    hair.style.top = percent(reading.top);
    hair.style.height = percent(reading.bottom - reading.top);
    const words = [];
    const dots = reading.values.map(({ label, text, colour, top }, at) => {
      const value = part("span", "value");
      const number = part("b", "");
      number.textContent = text;
      number.style.color = colour;
      value.append(`${label} `, number);
      words.push(at ? ", " : ": ", value);
      const dot = part("div", "dot");
      dot.style.left = percent(reading.left);
      dot.style.top = percent(top);
      dot.style.borderColor = colour;
      return dot;
    });
    cursor.replaceChildren(hair, ...dots.filter((_, at) => {
      const { top } = reading.values[at];
      return top >= reading.top - 0.001 && top <= reading.bottom + 0.001;
    }));
    told.replaceChildren(`${reading.head} ${reading.text}`, ...words);
    state(reading);
  };
  const at = (event) => {
    const box = cursor.getBoundingClientRect();
    show(ask((rust) => rust.read_at((event.clientX - box.left) / box.width)));
    return (event.clientY - box.top) / box.height;
  };
  const set = () => { if (reading?.given) change(reading, reading.given); };
  const focused = () => chart.getRootNode().activeElement === cursor;
  cursor.addEventListener("pointerdown", (event) => {
    at(event);
    cursor.focus({ preventScroll: true }); // what a finger read stays to be read when it is lifted
  });
  cursor.addEventListener("pointermove", at);
  cursor.addEventListener("pointerleave", () => { if (!focused()) show(); });
  cursor.addEventListener("focus", () => show(reading ?? ask((rust) => rust.read_from(NaN, 0))));
  cursor.addEventListener("blur", () => show());
  cursor.addEventListener("click", (event) => {
    const height = at(event);
    if (reading && height >= reading.top && height <= reading.bottom) set();
  });
  cursor.addEventListener("keydown", (event) => {
    const steps = { ...STEPS, Home: -Infinity, End: Infinity }[event.key];
    if (modified(event)) return;
    if (steps) show(ask((rust) => rust.read_from(reading?.now ?? NaN, steps)));
    else if (event.key === "Enter") set();
    else if (event.key === "Escape") cursor.blur();
    else return;
    event.preventDefault();
  });
  return (now) => {
    if (reading) show(ask((rust) => rust.read_from(reading.now, 0)));
    else if (now) state(now);
  };
};

// Puts hands on an element's content. What it gives back is called whenever that was drawn anew, and with
// `stirred` when it is to be painted in other colours or finer.
const handsOn = (base, ask, afterTake) => {
  const change = ({ path }, text) => ask((rust) => rust.change(path, text));
  const draw = writerOf(base.querySelector(".drawing"));
  const grips = keepGrips(base.querySelector(".grips"), change);
  const chartBox = base.querySelector(".chart");
  const canvas = chartBox.querySelector("canvas");
  const chart = readChart(chartBox, ask, change);
  const data = base.querySelector(".data");
  const sheet = data.querySelector(".sheet");
  sketchIn(base.querySelector(".question"));
  let filled = false;
  const fill = () => {
    filled = data.open;
    sheet.innerHTML = filled ? ask((rust) => rust.data()) ?? "" : "";
  };
  data.addEventListener("toggle", () => (data.open ? afterTake(fill) : fill()));
  return (stirred = false) => {
    const drawing = ask((rust) => rust.drawing());
    const hands = ask((rust) => rust.hands());
    if (!hands) return;
    draw(drawing);
    grips(hands);
    chart(hands.chart);
    if (filled) fill();
    // Last, because text on a canvas makes the browser lay out what is written.
    const shown = ask((rust) => rust.paint(canvas, stirred));
    if (chartBox.hidden === shown) chartBox.hidden = !shown;
  };
};
