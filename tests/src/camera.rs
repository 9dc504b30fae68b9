//! A talk as a camera takes it: what must lie inside the safe area, and how large its letters are.

/// For a page that knows a talk as `talk` and its shadow root as `root`: the faults of the present step in a
/// frame, how many texts of the figure were measured, the smallest letters, and the size of the picture.
///
/// The safe area is nine tenths of the picture. Letters are measured as they are on screen.
pub const MEASURE: &str = "
    const area = root.querySelector('.area');
    const whole = area.getBoundingClientRect();
    const inset = [0.05 * whole.width, 0.05 * whole.height];
    const safe = { left: whole.left + inset[0], right: whole.right - inset[0], top: whole.top + inset[1], bottom: whole.bottom - inset[1] };
    const faults = [];
    let smallest = Infinity;
    const inside = (name, box, of = safe, by = 1) => {
      const over = { left: of.left - box.left, right: box.right - of.right, top: of.top - box.top, bottom: box.bottom - of.bottom };
      for (const [side, by_px] of Object.entries(over)) if (by_px > by) faults.push(`${name}: ${by_px.toFixed(1)} px over the ${side}`);
    };
    const letters = (name, px) => {
      smallest = Math.min(smallest, px);
      if (px < 11) faults.push(`${name}: letters of ${px.toFixed(1)} px`);
    };
    // The size of letters in a box that may be zoomed: 10em laid into it says it without asking how.
    const letter = (place) => {
      const probe = document.createElement('span');
      probe.style.cssText = 'display:block;position:absolute;inline-size:10em;block-size:0;visibility:hidden';
      place.append(probe);
      const { width } = probe.getBoundingClientRect();
      probe.remove();
      return width / 10;
    };
    const element = [...root.querySelector('.stage').children].find((one) => one.localName.startsWith('axle-') && !one.hidden);
    const inner = element.shadowRoot;
    const seen = (place) => place && place.getBoundingClientRect().height > 0;
    for (const selector of ['.said', '.question']) {
      const place = root.querySelector(selector);
      if (!seen(place)) continue;
      inside(selector, place.getBoundingClientRect());
      letters(selector, letter(place));
    }
    const caution = inner.querySelector('.caution');
    if (seen(caution)) {
      inside('caution', caution.getBoundingClientRect());
      letters('caution', letter(caution));
    } else if (caution) faults.push('the caution is not seen');
    let texts = 0;
    const figure = inner.querySelector('.figure svg');
    const chart = inner.querySelector('.chart canvas');
    const picture = seen(figure) ? figure : chart;
    if (!seen(picture)) faults.push('there is no picture');
    else {
      const box = picture.getBoundingClientRect();
      inside('picture', box);
      const laid = picture === figure ? figure.viewBox.baseVal.width : Math.min(1000, Math.max(340, inner.querySelector('[part~=base]').clientWidth));
      const scale = box.width / laid;
      if (picture === chart) letters('chart', 13 * scale);
      for (const text of picture === figure ? figure.querySelectorAll('text') : []) {
        if (!text.textContent.trim()) continue;
        texts += 1;
        letters(`\"${text.textContent}\"`, Number(text.getAttribute('font-size')) * scale);
        inside(`\"${text.textContent}\"`, text.getBoundingClientRect(), box, 2);
      }
    }
    if (area.scrollHeight > area.clientHeight + 1 || area.scrollWidth > area.clientWidth + 1) {
      faults.push(`${area.scrollWidth} by ${area.scrollHeight} in ${area.clientWidth} by ${area.clientHeight}`);
    }
    const share = picture ? picture.getBoundingClientRect().width / (safe.right - safe.left) : 0;
    return { faults, texts, smallest, share, size: [whole.width, whole.height] };";

/// Waits until a step is at rest: its picture neither moves nor grows any more.
pub const REST: &str = "
    for (let still = 0, last = ''; still < 4;) {
      await new Promise((done) => setTimeout(done, 60));
      const boxes = [...root.querySelectorAll('.stage > *, .said')].map((one) => Object.values(one.getBoundingClientRect().toJSON()));
      const now = JSON.stringify(boxes);
      still = now === last ? still + 1 : 0;
      last = now;
    }";
