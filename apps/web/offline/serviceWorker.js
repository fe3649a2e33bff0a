// Keeps the whole page on this machine after the first load. The build puts the version and the files in.
const version = "THE VERSION";
const files = ["THE FILES"];
const store = `feedpath ${version}`;

/** All or nothing: a half kept page would fail later, without a server to ask. */
async function keep() {
  const cache = await caches.open(store);
  await cache.addAll(files.map((file) => new Request(file, { cache: "reload" })));
}

async function forgetOlder() {
  const names = await caches.keys();
  await Promise.all(
    names.filter((name) => name.startsWith("feedpath ") && name !== store).map((name) => caches.delete(name)),
  );
  await self.clients.claim();
}

/** The page itself from the server while there is one, so that a newer one is seen; its files as they were kept. */
async function answer(request) {
  const kept = async (wanted) => (await caches.open(store)).match(wanted, { ignoreVary: true, ignoreSearch: true });
  if (request.mode !== "navigate") return (await kept(request)) ?? fetch(request);
  return fetch(request).catch(async (noServer) => {
    const page = await kept("./");
    if (page) return page;
    throw noServer;
  });
}

self.addEventListener("install", (event) => event.waitUntil(keep()));
self.addEventListener("activate", (event) => event.waitUntil(forgetOlder()));
self.addEventListener("fetch", (event) => {
  const sameOrigin = new URL(event.request.url).origin === self.location.origin;
  if (event.request.method === "GET" && sameOrigin) event.respondWith(answer(event.request));
});
