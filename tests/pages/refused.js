// Tells the page around this frame how the element fares where storage is refused.
document.querySelector("axle-traction").updateComplete.then((live) => {
  let refused = false;
  try {
    localStorage.getItem("");
  } catch {
    refused = true;
  }
  parent.postMessage({ live, refused, errors: seen.errors, warnings: seen.warnings }, "*");
});
