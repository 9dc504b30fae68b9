// Where a page says so, the first element is set by its reader, and the others take what they share
// with it: vehicle, surface and layouts.
for (const place of document.querySelectorAll("[data-follow]")) {
  const [first, ...others] = place.querySelectorAll(ELEMENTS);
  const special = { "vehicle.base": "vehicle", "surface.kind": "surface" };
  const textOf = (value) => (Array.isArray(value) ? value.join(" ") : String(value));
  const attributesOf = (scenario) => {
    const found = new Map();
    for (const [section, value] of Object.entries(scenario)) {
      if (typeof value !== "object" || Array.isArray(value)) found.set(section, textOf(value));
      else {
        for (const [name, inner] of Object.entries(value)) {
          found.set(special[`${section}.${name}`] ?? name.replaceAll("_", "-"), textOf(inner));
        }
      }
    }
    return found;
  };
  const common = new Set(["scenario", "units", "lang", "controls", "show", "view", "reveal", "question", "theme"]);
  first?.addEventListener("axle-change", ({ detail }) => {
    const given = attributesOf(detail);
    const known = new Set(first.constructor.observedAttributes);
    for (const other of others) {
      for (const name of other.constructor.observedAttributes) {
        if (common.has(name) || !known.has(name)) continue;
        if (given.has(name)) other.setAttribute(name, given.get(name));
        else other.removeAttribute(name);
      }
    }
  });
}
