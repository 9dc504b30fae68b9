// A scenario as JSON text: of what the page gave, or of a file.

const SCENARIO_LIMIT = 1_000_000; // bytes
const DEPTH_LIMIT = 8;

const deeper = (value, room) => Object(value) === value
  && (room === 0 || Object.values(value).some((part) => deeper(part, room - 1)));

// JSON text that is safe to hand on. Rust reads what is nested by calling itself: a text of brackets
// alone would end the instance.
const checked = (text) => {
  if (text.length > SCENARIO_LIMIT) throw new Error("too long");
  if (deeper(JSON.parse(text), DEPTH_LIMIT)) throw new Error("nested too deep");
  return text;
};

// In JSON a number that is not finite would become nothing; as a text it is refused by name.
const finite = (_, part) => (typeof part === "number" && !Number.isFinite(part) ? String(part) : part);

// A copy, so that nothing that the page does to its object later reaches in, nor a framework's proxy.
const textOf = (value) => checked(typeof value === "string" ? value : JSON.stringify(value, finite) ?? "null");

const textFrom = async (url, signal) => {
  const response = await fetch(url, { signal });
  if (!response.ok) throw new Error(`${response.status}`);
  const reader = response.body.getReader();
  const parts = [];
  let size = 0;
  for (;;) {
    const { done, value } = await reader.read();
    if (done) return new Blob(parts).text();
    parts.push(value);
    size += value.length;
    if (size > SCENARIO_LIMIT) {
      reader.cancel();
      throw new Error("too long");
    }
  }
};
