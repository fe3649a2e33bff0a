// Keeps the whole page on this machine after the first load. The build puts the version and the files in.
const version = "THE VERSION";
const files = ["THE FILES"];
const store = `feedpath ${version}`;

/** All or nothing: a half kept page would fail later, without a server to ask. */
async function keep() {
  const cache = await caches.open(store);
  await cache.addAll(files.map((file) => new Request(file, { cache: "reload" })));
  await self.skipWaiting();
}

async function forgetOlder() {
  const names = await caches.keys();
  await Promise.all(
    names.filter((name) => name.startsWith("feedpath ") && name !== store).map((name) => caches.delete(name)),
  );
  await self.clients.claim();
}

async function answer(request) {
  const cache = await caches.open(store);
  const wanted = request.mode === "navigate" ? "./" : request;
  return (await cache.match(wanted, { ignoreVary: true, ignoreSearch: true })) ?? fetch(request);
}

self.addEventListener("install", (event) => event.waitUntil(keep()));
self.addEventListener("activate", (event) => event.waitUntil(forgetOlder()));
self.addEventListener("fetch", (event) => {
  const sameOrigin = new URL(event.request.url).origin === self.location.origin;
  if (event.request.method === "GET" && sameOrigin) event.respondWith(answer(event.request));
});
