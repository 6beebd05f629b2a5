// Keeps one whole build of the app. `BUILD` ({id, files, bundle, headers}) is put in front of this file by the server.
const PREFIX = "covemix-";
const CACHE = PREFIX + BUILD.id;
const FOR_PROGRAMS = /^(api\/|openapi\.json$)/; // never answered with a page
const lost = (pots) => `<!doctype html><meta charset="utf-8"><meta name="viewport" content="width=device-width">
<title>Covemix</title><p>This phone has let go of its copy of Covemix, and there is no signal.
Open it once with a connection and it is back. Your kit and log are kept apart from that copy.</p>${pots.length ? `
<p><strong>${pots.length === 1 ? "A pot runs" : `${pots.length} pots run`}, and nothing rings here. Set another alarm, and watch the pot itself.</strong></p>
<ul>${pots.map((pot) => `<li>${plain(told(pot))}</li>`).join("")}</ul>` : ""}`;

// What is kept of a running pot, as it stands there: without the copy there is no engine that could say more of it.
const told = ({ started, typed }) => {
  const pairs = (Array.isArray(typed) ? typed : []).filter(Array.isArray);
  const text = (name) => pairs.find(([key]) => key === name)?.[1];
  const lasts = text("duration");
  const called = [text("batch"), text("place")].filter(Boolean).join(", ") || "A pot";
  if (!Number.isFinite(started)) return `${called}: its clock cannot be read.`;
  const mixed = `${called}: mixed at ${new Date(started).toLocaleTimeString([], { hour: "2-digit", minute: "2-digit" })}`;
  const changed = pairs.some(([key]) => String(key).startsWith("changes.")); // by another air: it is not the whole time
  return `${mixed}${lasts && !changed ? `, usable for ${/^[\d.,]+$/.test(lasts) ? `${lasts} min` : lasts} from then` : ""}.`;
};

const plain = (text) => text.replace(/[&<>"]/g, (sign) => `&#${sign.charCodeAt(0)};`);

// [] also where they cannot be read; a database that is not there is not made.
const pots = () => new Promise((resolve) => {
  setTimeout(() => resolve([]), 2000); // a page may hold it
  const asked = indexedDB.open("covemix");
  asked.addEventListener("upgradeneeded", () => asked.transaction.abort());
  asked.addEventListener("error", () => resolve([]));
  asked.addEventListener("success", () => {
    const db = asked.result;
    try {
      const got = db.transaction("pots").objectStore("pots").getAll();
      got.addEventListener("success", () => resolve(got.result));
      got.addEventListener("error", () => resolve([]));
    } catch {
      resolve([]);
    }
    db.close(); // when what was asked is answered
  });
});

const scope = new URL("./", self.location);

// The path of a file holds the hash of its content: what the page has just fetched need not cross the wire again.
const fetched = async (path) => {
  const url = new URL(path, scope);
  let response = await fetch(url);
  if (!isFile(response)) response = await fetch(url, { cache: "reload" }); // not an answer somebody kept of half an upload
  if (!isFile(response)) throw new Error(`${path}: ${response.status}`);
  return response;
};

// No file of a build is a page: the sign-in page of a network comes in the place of any, and says that all is well.
const isFile = ({ ok, redirected, headers }) => ok && !redirected && !/html/.test(headers.get("Content-Type"));

// Whole or not at all: one missing file, and the build that was there stays.
const install = async () => {
  const cache = await caches.open(CACHE);
  try {
    await Promise.all([...BUILD.files, BUILD.bundle].map(async (path) => (
      cache.put(new URL(path, scope), await fetched(path)))));
    const { pages } = await (await cache.match(new URL(BUILD.bundle, scope))).json();
    await Promise.all(Object.entries(pages).map(([path, text]) => (
      cache.put(new URL(path, scope), new Response(text, { headers: BUILD.headers })))));
  } catch (error) {
    await caches.delete(CACHE);
    throw error;
  }
};

const tidy = async () => {
  const names = await caches.keys();
  await Promise.all(names.filter((name) => name.startsWith(PREFIX) && name !== CACHE).map((name) => caches.delete(name)));
  await self.clients.claim();
};

// A browser short of space lets go of the whole copy without a word: the next page that comes over the wire brings it back.
let bringing = null;
const bringBack = async (cache) => {
  if (await cache.match(scope)) return;
  bringing ??= install().catch(() => {}).finally(() => { bringing = null; });
  await bringing;
};

const page = async (event) => {
  const { request } = event;
  const cache = await caches.open(CACHE);
  const url = new URL(request.url);
  const path = url.pathname.replace(/index\.html$/, "").replace(/([^/])$/, "$1/");
  const kept = url.searchParams.get("as") === "text" ? undefined : await cache.match(new URL(path, scope), { ignoreSearch: true });
  if (!kept) event.waitUntil(bringBack(cache));
  return kept ?? fetch(request).catch(async () => {
    if (await cache.match(scope)) return Response.redirect(scope);
    return new Response(lost(await pots().catch(() => [])), { headers: { "Content-Type": "text/html; charset=utf-8" } });
  });
};

const file = async (request) => {
  const cache = await caches.open(CACHE);
  return (await cache.match(request, { ignoreVary: true })) ?? fetch(request);
};

self.addEventListener("install", (event) => event.waitUntil(install()));
self.addEventListener("activate", (event) => event.waitUntil(tidy()));
self.addEventListener("message", (event) => { if (event.data === "update") self.skipWaiting(); });
self.addEventListener("fetch", (event) => {
  const { request } = event;
  const url = new URL(request.url);
  if (request.method !== "GET" || url.origin !== self.location.origin) return;
  if (FOR_PROGRAMS.test(url.pathname.slice(scope.pathname.length))) return;
  if (request.mode === "navigate") event.respondWith(page(event));
  else event.respondWith(file(request));
});
