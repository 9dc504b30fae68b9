// What a page sees of trouble, from before any other script runs, and what the elements take of it.
globalThis.seen = { errors: [], warnings: [], memories: [], long: [] };
addEventListener("error", (event) => seen.errors.push(event.message));
addEventListener("unhandledrejection", (event) => seen.errors.push(String(event.reason)));
for (const level of ["warn", "error"]) {
  const write = console[level];
  console[level] = (...words) => {
    seen.warnings.push(words.join(" "));
    write.apply(console, words);
  };
}
const instantiate = WebAssembly.instantiate;
WebAssembly.instantiate = async (...given) => {
  const result = await instantiate.apply(WebAssembly, given);
  const memory = (result.exports ?? result.instance.exports).memory;
  if (memory) seen.memories.push(memory);
  return result;
};
new PerformanceObserver((list) => {
  for (const { startTime, duration } of list.getEntries()) seen.long.push([startTime, duration]);
}).observe({ type: "longtask", buffered: true });
