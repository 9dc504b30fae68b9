// Puts the parameters of the page's address onto an element, as attributes. The element reads them with
// the code that reads any attribute; nothing of the address is written into the page as markup. A
// scenario or a cycle may only stand in the address itself: a link must not make the page ask another
// server.
const applyQuery = async (element) => {
  const parameters = new URLSearchParams(location.search);
  await customElements.whenDefined(element.localName);
  const known = element.constructor.observedAttributes ?? [];
  const whole = { scenario: /^\s*\{/, trace: /\n/ };
  const isWhole = (name, value) => !whole[name] || whole[name].test(value);
  const strange = [];
  for (const [name, value] of parameters) {
    if (known.includes(name) && isWhole(name, value)) element.setAttribute(name, value);
    else strange.push(name.slice(0, 40));
  }
  if (strange.length) console.warn(`axlewright: parameters of the address that mean nothing here: ${strange.join(", ")}`);
};
