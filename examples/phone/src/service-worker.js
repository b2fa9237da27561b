// Keeps the app on the phone. vite.config.ts writes `files` and `version` above this text.
const own = `phone-${version}`;

addEventListener("install", (event) => {
  event.waitUntil(caches.open(own).then((cache) => cache.addAll(files)));
});

// A new version waits until the last page of the old one is closed: pages and files always belong together.
addEventListener("activate", (event) => {
  const clean = async () => {
    for (const name of await caches.keys()) if (name !== own) await caches.delete(name);
    await clients.claim();
  };
  event.waitUntil(clean());
});

addEventListener("fetch", (event) => {
  const { mode, method } = event.request;
  if (method !== "GET") return;
  const answer = async () => {
    const cache = await caches.open(own);
    const kept = await cache.match(mode === "navigate" ? "./" : event.request, {
      ignoreVary: true,
    });
    return kept ?? fetch(event.request);
  };
  event.respondWith(answer());
});
