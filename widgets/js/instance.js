// The one wasm instance of the page. It starts on first need and is replaced when it traps.
// The builder puts VERSION, TABLE, CSS, PARTS and `glue` above this text, and `loadModule` below it.

const RESTARTS_PER_MINUTE = 3;

let starting; // promise of the running instance
let running; // the instance itself, so that an element can start without waiting when it must
let halted = false; // it trapped too often and is not started again
const deaths = [];
const wanted = new Set(); // parts that the page asked for: every instance has them

const warn = (text) => console.warn(`axlewright ${VERSION}: ${text}`);

// However many elements miss the same part, the console hears of it once.
const warned = new Set();
const warnOnce = (text, cause) => {
  if (!warned.has(text)) warn(cause ? `${text}: ${cause}` : text);
  warned.add(text);
};

const die = (instance, reason) => {
  if (instance.dead) return;
  instance.dead = true;
  const now = performance.now();
  deaths.push(now);
  halted = deaths.filter((time) => now - time < 60000).length > RESTARTS_PER_MINUTE;
  running = undefined;
  starting = undefined;
  warn(`the elements stopped${halted ? "" : " and start again"}. ${reason}`);
  instance.end(new Error(String(reason)));
  // The Rust calls below us on the stack must return before anything is cleared away.
  queueMicrotask(() => recover(instance));
};

// Every way into Rust leads through this door. Whatever comes out of it as an exception has skipped
// Rust's clean-up, so the instance cannot be trusted again. Errors that Rust returns on purpose are
// thrown by the glue, outside the door. A dead instance is not entered: its timers and listeners find
// nothing to do.
const guard = (instance, exports) => {
  const guarded = {};
  let depth = 0;
  for (const [name, value] of Object.entries(exports)) {
    guarded[name] = typeof value !== "function" ? value : (...args) => {
      if (instance.dead) return 0;
      depth += 1;
      try {
        return value(...args);
      } catch (error) {
        die(instance, error);
        if (depth === 1 && instance.asking) throw error; // our own question: `ask` is waiting for it
        return 0; // a listener, a timer, a promise: the page must not see an error that is not its own
      } finally {
        depth -= 1;
      }
    };
  }
  return guarded;
};

// The glue sees this in place of the global WebAssembly.
const guardedWebAssembly = (instance) => Object.create(WebAssembly, {
  instantiate: {
    value: async (module, imports) => {
      // How Rust would fetch a part; it asks for none that is not there. A talk's file may hold fewer parts
      // than the module names.
      const asked = WebAssembly.Module.imports(module).filter((one) => one.module === "parts");
      const parts = Object.fromEntries(asked.map(({ name }) => {
        const has = () => instance.parts.has(name.slice("__wasm_split_load_".length));
        return [name, (told, data) => exports.__indirect_function_table.get(told)(data, has())];
      }));
      const { exports } = await WebAssembly.instantiate(module, { ...imports, parts });
      instance.shared = exports;
      return { instance: { exports: guard(instance, exports) }, module };
    },
  },
});

const startInstance = async () => {
  if (halted) throw new Error("stopped too often");
  const instance = { dead: false, asking: 1, elements: new Set(), words: new Set(), parts: new Set(), files: {} };
  instance.gone = new Promise((_, reject) => { instance.end = reject; });
  instance.gone.catch(() => {}); // most instances end with nobody waiting
  const module = await moduleOf("axlewright_bg.wasm");
  instance.rust = glue(guardedWebAssembly(instance));
  await instance.rust({ module_or_path: module });
  instance.rust.set_panic_callback((message) => die(instance, message));
  for (const part of wanted) await bring(instance, part);
  instance.asking = 0;
  running = instance;
  return instance;
};

const start = () => {
  if (!starting) {
    starting = startInstance();
    starting.catch((error) => { if (!halted) warn(`the elements cannot start. ${error}`); });
  }
  return starting;
};

// One question to Rust on this script's own account: `undefined` when the instance dies of it.
const ask = (instance, question) => {
  if (instance.dead) return undefined;
  instance.asking += 1;
  try {
    return question(instance.rust);
  } catch (error) {
    if (instance.dead) return undefined;
    throw error;
  } finally {
    instance.asking -= 1;
  }
};

// A question of the page that is answered at once; `init` comes before the first one.
const now = (question) => {
  const answer = running && ask(running, question);
  if (answer === undefined) throw new Error("axlewright: await init() first");
  return answer;
};

const query = async (question) => {
  const instance = await start();
  const answer = ask(instance, question);
  return instance.dead ? instance.gone : answer;
};
