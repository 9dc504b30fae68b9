// Many elements at once must not hold up the reader: to start or to be drawn at another width, each
// waits for its turn, and between turns the browser may answer a key or paint.

const SLICE = 30; // milliseconds of work in one go

let line = Promise.resolve();
let since = -SLICE;

const turn = () => (line = line.then(async () => {
  if (performance.now() - since < SLICE) return;
  await new Promise((done) => setTimeout(done));
  since = performance.now();
}));

// A figure is drawn as wide as its place. Each window watches its own documents: from another one the
// browser reports an endless loop.
const watchers = new WeakMap();
const watcherOf = (view) => {
  if (!watchers.has(view)) {
    // In the next frame: a new drawing has another height, and the watcher must not see its own doing.
    watchers.set(view, new view.ResizeObserver((entries) => view.requestAnimationFrame(() => {
      for (const { target, contentRect } of entries) turn().then(() => fit(target, contentRect.width));
    })));
  }
  return watchers.get(view);
};
