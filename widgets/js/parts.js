// The parts of the wasm that a page fetches when something needs them: one for each topic, and some for
// what a reader must ask for. PARTS names the files of each; several parts may need the same file.

const modules = {}; // promise of the WebAssembly.Module of each file, kept so that a restart fetches nothing

// A file that could not be had is asked for again when something needs it again.
const moduleOf = (file) => (modules[file] ??= loadModule(file).catch((error) => {
  delete modules[file];
  throw error;
}));

const modulesOf = (part) => Promise.all(PARTS[part].map(moduleOf)).catch((cause) => {
  throw new Error(`the part ${part} is missing`, { cause });
});

// Puts a part beside an instance. Its files lie in the memory and the function table of the main one, each
// only once: a second time would reset what it keeps there.
const bring = async (instance, part) => {
  await modulesOf(part);
  await Promise.all(PARTS[part].map(async (file) => {
    instance.files[file] ??= WebAssembly.instantiate(await moduleOf(file), { __wasm_split: instance.shared });
    await instance.files[file];
  }));
  if (instance.parts.has(part)) return;
  instance.parts.add(part);
  ask(instance, (rust) => rust.add_part(part));
};

// Once an element works, the browser fetches in an idle moment what its reader is likely to ask for, so
// that it is there at once, and still there without a network.
const LIKELY = ["take", "working"];
let ahead = () => {
  ahead = () => {};
  const idle = globalThis.requestIdleCallback ?? ((act) => setTimeout(act, 2000));
  if (!navigator.connection?.saveData) idle(() => LIKELY.forEach((part) => modulesOf(part).catch(() => {})));
};
