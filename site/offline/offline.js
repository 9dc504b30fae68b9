// Shows one page of the file at a time, by the part of the address after #, and unpacks what is packed.
(async () => {
  const main = document.getElementById("content");
  const letters = document.getElementById("rest").textContent;
  const packed = new Uint8Array(Math.floor(letters.length * 4 / 5));
  // Five letters are a number of base 85, whose digits begin at "#", and hold four bytes; "x" stands for "<".
  for (let at = 0, to = 0; at < letters.length; at += 5) {
    let number = 0;
    for (let place = at; place < at + 5; place += 1) {
      const code = place < letters.length ? letters.charCodeAt(place) : 119;
      number = number * 85 + (code === 120 ? 60 : code) - 35;
    }
    for (let shift = 24; shift >= 0; shift -= 8) packed[to++] = number >>> shift; // beyond the end nothing is kept
  }
  const stream = new Blob([packed]).stream().pipeThrough(new DecompressionStream("gzip"));
  const rest = JSON.parse(await new Response(stream).text());
  document.getElementById("rest").remove();
  const run = (text) => {
    const script = document.createElement("script");
    script.textContent = text;
    document.head.append(script);
  };
  const reader = document.createElement("template");
  for (const slug of rest.order) {
    const there = document.getElementById(slug);
    if (there) main.append(there); // in the order of all
    else {
      reader.innerHTML = rest.pages[slug]; // this file's own
      main.append(reader.content);
    }
  }
  const pages = [...main.children];
  const menu = document.querySelector(".top details");
  const show = () => {
    const id = decodeURIComponent(location.hash.slice(1));
    const target = document.getElementById(id);
    const page = target?.closest("article") ?? pages[0];
    for (const other of pages) other.hidden = other !== page;
    const title = rest.titles[page.id];
    document.title = page === pages[0] ? title : `${title} – Axlewright`;
    for (const link of menu.querySelectorAll("a")) {
      if (link.hash === `#${page.id}`) link.setAttribute("aria-current", "page");
      else link.removeAttribute("aria-current");
    }
    menu.open = false;
    if (rest.onFirst[page.id]) {
      run(rest.onFirst[page.id]);
      delete rest.onFirst[page.id];
    }
    if (target && target !== page) target.scrollIntoView();
    else scrollTo(0, 0);
  };
  addEventListener("hashchange", show);
  // The search finds pages by their names as files.
  main.addEventListener("click", (event) => {
    const [, slug, anchor] = /^([\w-]+)\.html(?:#(.*))?$/.exec(event.target.closest("a")?.getAttribute("href") ?? "") ?? [];
    if (!slug || !rest.titles[slug]) return;
    event.preventDefault();
    location.hash = anchor ? `${slug}--${anchor}` : slug;
  });
  document.addEventListener("submit", (event) => {
    event.preventDefault();
    location.hash = "search";
    show();
    const field = document.getElementById("q");
    if (event.target.closest(".top")) field.value = document.getElementById("search-all").value;
    field.dispatchEvent(new Event("input"));
    field.focus();
  });
  show();
  run(rest.elements);
  run(rest.follow);
})();
