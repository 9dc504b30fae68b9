// A line drawn by hand over empty axes. Rust writes the axes with nine sliders; here they are laid on the
// axes, joined by a line, and moved by pen, mouse or finger. Arrow keys move a slider by themselves.

const NEAR = 0.03; // of the width: so far a pointer may leave a handle that it holds
const bounded = (share) => Math.min(1, Math.max(0, share));

const layPad = (pad) => {
  const handles = [...pad.children];
  const [left, top, width, height] = pad.dataset.plot.split(" ").map((share) => percent(Number(share)));
  Object.assign(pad.style, { left, top, width, height });
  const ink = document.createElementNS("http://www.w3.org/2000/svg", "svg");
  ink.setAttribute("viewBox", "0 0 1 1");
  ink.setAttribute("preserveAspectRatio", "none");
  ink.setAttribute("aria-hidden", "true");
  const line = ink.appendChild(document.createElementNS(ink.namespaceURI, "polyline"));
  pad.prepend(ink);
  const along = (at) => at / (handles.length - 1);
  const up = (handle) => handle.value / handle.max;
  const draw = () => {
    line.setAttribute("points", handles.map((handle, at) => `${along(at)},${1 - up(handle)}`).join(" "));
    handles.forEach((handle, at) => {
      handle.style.left = percent(along(at));
      handle.style.top = percent(1 - up(handle));
    });
    pad.classList.toggle("fresh", handles.every(({ value }) => value === pad.dataset.first));
  };
  const set = (handle, share) => {
    const before = handle.value;
    handle.value = share * handle.max;
    if (handle.value !== before) handle.dispatchEvent(new Event("input", { bubbles: true }));
  };
  pad.addEventListener("input", draw);
  pad.addEventListener("pointerdown", (down) => {
    if (down.button || !down.isPrimary) return;
    down.preventDefault();
    const box = pad.getBoundingClientRect();
    const place = ({ clientX, clientY }) =>
      [bounded((clientX - box.left) / box.width), bounded(1 - (clientY - box.top) / box.height)];
    // How near this stroke has come to each handle: the nearest point of it is what counts.
    const nearest = handles.map(() => 0.5 * along(1));
    let last = place(down);
    const move = (event) => {
      const [x, y] = place(event);
      handles.forEach((handle, at) => {
        const here = along(at);
        if ((last[0] - here) * (x - here) < 0) { // passed between two points of the stroke
          nearest[at] = 0;
          set(handle, last[1] + ((y - last[1]) * (here - last[0])) / (x - last[0]));
        } else if (Math.abs(x - here) <= Math.max(nearest[at], NEAR)) {
          nearest[at] = Math.min(nearest[at], Math.abs(x - here));
          set(handle, y);
        }
      });
      last = [x, y];
    };
    const stroke = (event) => (event.getCoalescedEvents?.() ?? []).concat(event).forEach(move);
    handles[Math.round(last[0] / along(1))].focus({ preventScroll: true });
    move(down);
    pad.setPointerCapture(down.pointerId);
    pad.addEventListener("pointermove", stroke);
    pad.addEventListener("lostpointercapture", () => pad.removeEventListener("pointermove", stroke), { once: true });
  });
  draw();
};

// Lays the pad of a question whenever Rust has written one.
const sketchIn = (form) => {
  const lay = () => form.querySelectorAll(".pad").forEach(layPad);
  new MutationObserver(lay).observe(form, { childList: true });
  lay();
};
