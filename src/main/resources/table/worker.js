
// Keeps the files of the show table for flight mode. A new release is fetched whole, then takes over when
// the table is opened next; the book's own answers are never kept here.
const CACHE = 'table-' + RELEASE;

self.addEventListener('install', (event) => {
  const fresh = (file) => new Request(file, { cache: 'reload' });
  event.waitUntil(
    caches.open(CACHE).then((cache) =>
      cache.addAll([...FILES, '/table/words/en.json', '/table/words/fr.json'].map(fresh))));
});

self.addEventListener('activate', (event) => {
  event.waitUntil(
    caches.keys()
      .then((names) => Promise.all(names.filter((name) => name !== CACHE).map((name) => caches.delete(name))))
      .then(() => self.clients.claim()));
});

self.addEventListener('fetch', (event) => {
  const url = new URL(event.request.url);
  if (event.request.method !== 'GET' || url.origin !== self.location.origin || url.pathname.startsWith('/api/')) {
    return;
  }
  const wanted = event.request.mode === 'navigate' ? '/table/' : url.pathname;
  event.respondWith(
    caches.open(CACHE).then((cache) => cache.match(wanted)).then((kept) => kept ?? fetch(event.request)));
});
