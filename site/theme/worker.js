// Keeps every file of this version of the site, so that all of it works without a network. A file is
// kept under its path and the hash of its content: what did not change between two versions is not
// fetched again, and a page that is open while a newer version comes still finds its own files.
const FILES = FILES_OF_THIS_VERSION;
const scope = self.registration.scope;
const open = () => caches.open(`axlewright ${scope}`);
const placeOf = (path, hash) => `${scope}${path}?${hash}`;
const LIST = `${scope}?files`;

const hashOf = async (bytes) => {
  const digest = new Uint8Array(await crypto.subtle.digest("SHA-256", bytes));
  return Array.from(digest, (byte) => byte.toString(16).padStart(2, "0")).join("").slice(0, 12);
};

const keep = async (cache, path, hash) => {
  const place = placeOf(path, hash);
  if (await cache.match(place)) return;
  const response = await fetch(`${scope}${path}`, { cache: "no-cache" });
  const bytes = await response.arrayBuffer();
  // A server in the middle of an update sends files of two versions: then the next visit tries again.
  if (!response.ok || (await hashOf(bytes)) !== hash) throw new Error(`${path} is not of this version`);
  const { headers } = response;
  await cache.put(place, new Response(bytes, { headers }));
};

self.addEventListener("install", (event) => {
  event.waitUntil((async () => {
    const cache = await open();
    const wanted = Object.entries(FILES);
    const work = async () => {
      for (let next = wanted.pop(); next; next = wanted.pop()) await keep(cache, ...next);
    };
    await Promise.all([work(), work(), work(), work()]);
  })());
});

self.addEventListener("activate", (event) => {
  event.waitUntil((async () => {
    const cache = await open();
    const old = await (await cache.match(LIST))?.json() ?? {};
    const stay = new Set([LIST]);
    for (const list of [old, FILES]) {
      for (const [path, hash] of Object.entries(list)) stay.add(placeOf(path, hash));
    }
    for (const { url } of await cache.keys()) if (!stay.has(url)) await cache.delete(url);
    await cache.put(LIST, Response.json(FILES));
    await self.clients.claim();
  })());
});

self.addEventListener("message", ({ data }) => {
  if (data === "take over") self.skipWaiting();
});

self.addEventListener("fetch", (event) => {
  const { method, url } = event.request;
  if (method !== "GET" || !url.startsWith(scope)) return;
  const [path, query = ""] = url.slice(scope.length).split("#")[0].split("?");
  const name = decodeURIComponent(path) || "index.html";
  const hash = /^[0-9a-f]{12}$/.test(query) ? query : FILES[name];
  if (!hash) return; // not of this site's files
  event.respondWith(open()
    .then((cache) => cache.match(placeOf(name, hash)))
    .then((found) => found ?? fetch(event.request)));
});
