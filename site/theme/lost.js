// The page that a server sends for an address that leads nowhere is read at that address, so its links
// would lead from there. This script stands in it under several addresses, of which one is right however
// deep the lost one was, and knows from its own where the site begins. The style stands in it likewise, so
// that it is there without script too.
(() => {
  const root = document.documentElement;
  if (root.dataset.found !== undefined) return; // another of them was first
  root.dataset.found = "";
  const home = new URL(".", document.currentScript.src);
  if (home.href === new URL(".", location.href).href) return;
  for (const [name, attribute] of [["link[rel=icon]", "href"], ["a", "href"], ["form", "action"]]) {
    for (const element of document.querySelectorAll(`${name}[${attribute}]`)) {
      const address = element.getAttribute(attribute);
      if (!/^(?:[a-z]+:|#)/i.test(address)) element.setAttribute(attribute, new URL(address, home));
    }
  }
})();
