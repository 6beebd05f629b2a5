// Keeps one whole build of the app. `BUILD` ({id, sums, whole, base, bundle, unpacker, headers, types, language}), `texts` of
// js/engine/bundle.js, `unpacked` of unpack.js beside it and `sentencesOf` of js/page/sentences.js are put in front of this
// file by the server; sums: the SHA-256 by its path of each file that is fetched; whole: type and SHA-256 of what one that
// comes packed is kept as. Half a file, or another in its place, is none of this build.
const t = sentencesOf(() => BUILD.language);
const PREFIX = "covemix-";
const CACHE = PREFIX + BUILD.id;
const SUM = "Covemix-Sum"; // a page, or a script of later, is made here, of the bundle: what it was is kept with it
const FOR_PROGRAMS = /^(api\/|openapi\.json$|health$)/; // never answered with a page
// A newer build that waits is offered where the page itself cannot offer it.
const NEWER = `<p hidden>${t("lost-newer")}
<button style="font:inherit;min-height:48px;padding:0 1em">${t("update-now")}</button></p>
<script>
const workers = navigator.serviceWorker;
workers.addEventListener("controllerchange", () => location.reload());
workers.getRegistration().then((kept) => setInterval(() => {
document.querySelector("[hidden]")?.toggleAttribute("hidden", !kept.waiting);
document.querySelector("button").onclick = () => kept.waiting.postMessage("update");
}, 500));
</script>`;
const lost = (why, pots) => `<!doctype html><meta charset="utf-8"><meta name="viewport" content="width=device-width">
<title>Covemix</title><p>${why}
${t("lost-back")}</p>${pots.length ? `
<p><strong>${t("lost-pots", { count: pots.length })}</strong></p>
<ul>${pots.map((pot) => `<li>${plain(told(pot))}</li>`).join("")}</ul>` : ""}`;

// What is kept of a running pot, as it stands there: without the copy there is no engine that could say more of it.
const told = ({ started, typed }) => {
  const pairs = (Array.isArray(typed) ? typed : []).filter(Array.isArray);
  const text = (name) => pairs.find(([key]) => key === name)?.[1];
  const lasts = text("duration");
  const [one = t("lost-pot"), more] = [text("batch"), text("place")].filter(Boolean);
  const called = more ? t("page-list", { one, more }) : one;
  if (!Number.isFinite(started)) return t("lost-pot.unread", { called });
  const own = (self.navigator?.languages ?? []).filter((each) => each.startsWith(BUILD.language)); // as this phone writes it
  const mixed = new Date(started).toLocaleTimeString([...own, BUILD.language], { hour: "2-digit", minute: "2-digit" });
  const changed = pairs.some(([key]) => String(key).startsWith("changes.")); // by another air: it is not the whole time
  return lasts && !changed ? t("lost-pot.lasts", { called, mixed, lasts: /^[\d.,]+$/.test(lasts) ? `${lasts} min` : lasts })
    : t("lost-pot.mixed", { called, mixed });
};

const plain = (text) => text.replace(/[&<>"]/g, (sign) => `&#${sign.charCodeAt(0)};`);

// unread: what it is where they cannot be read; a database that is not there is not made.
const pots = (unread = []) => new Promise((resolve) => {
  let none = false;
  setTimeout(() => resolve(unread), 2000); // a page may hold it
  const asked = indexedDB.open("covemix");
  asked.addEventListener("upgradeneeded", () => { none = true; asked.transaction.abort(); });
  asked.addEventListener("error", () => resolve(none ? [] : unread));
  asked.addEventListener("success", () => {
    const db = asked.result;
    try {
      const got = db.transaction("pots").objectStore("pots").getAll();
      got.addEventListener("success", () => resolve(got.result));
      got.addEventListener("error", () => resolve(unread));
    } catch {
      resolve(unread);
    }
    db.close(); // when what was asked is answered
  });
});

const GONE = t("lost-gone");
const DAMAGED = t("lost-damaged");
const lostPage = async (why) => (
  new Response(lost(why, await pots().catch(() => [])) + (why === DAMAGED ? NEWER : ""), { headers: { "Content-Type": "text/html; charset=utf-8" } }));

const scope = new URL("./", self.location);
const at = (path) => new URL(path, scope);

const sum = async (response) => {
  const digest = await crypto.subtle.digest("SHA-256", await response.clone().arrayBuffer());
  return btoa(String.fromCharCode(...new Uint8Array(digest)));
};
const asSent = async (path, response) => (await sum(response)) === BUILD.sums[path];
const asKept = async (path, response) => (await sum(response)) === (BUILD.whole[path]?.[1] ?? BUILD.sums[path]);

// No file of a build is a page: the sign-in page of a network comes in the place of any, and says that all is well.
const isFile = ({ ok, redirected, headers }) => ok && !redirected && !/html/.test(headers.get("Content-Type"));
const isWhole = async (path, response) => isFile(response) && asSent(path, response);

// The path of a file holds the hash of its content: what the page has just fetched need not cross the wire again.
const fetched = async (cache, path) => {
  let response = await fetch(at(path));
  if (!(await isWhole(path, response))) response = await fetch(at(path), { cache: "reload" }); // not kept of half an upload
  if (!(await isWhole(path, response))) throw new Error(`${path}: ${response.status}, not whole`);
  return path in BUILD.whole ? unpackedFile(cache, path, response) : response;
};

// What comes packed is kept unpacked: no start has to wait for that.
const unpackedFile = async (cache, path, response) => {
  const unpacker = await good(cache, BUILD.unpacker);
  const bytes = await unpacked(new Uint8Array(await response.arrayBuffer()), await unpacker.arrayBuffer());
  const kept = new Response(bytes, { headers: { "Content-Type": BUILD.whole[path][0] } });
  if (!(await asKept(path, kept))) throw new Error(`${path}: not whole`);
  return kept;
};

const part = async (cache, bundle) => {
  const bytes = new Uint8Array(await bundle.arrayBuffer());
  const parts = Object.entries(BUILD.types).flatMap(([room, type]) => texts(bytes, room).map((one) => [...one, type]));
  await Promise.all(parts.map(async ([path, text, type]) => {
    const headers = { "Content-Type": type, ...BUILD.headers, [SUM]: await sum(new Response(text)) };
    await cache.put(at(path), new Response(text, { headers }));
  }));
};

// What no first visit waits for: the face of the figures, kept when the app is, and what is asked for by a key.
const isMore = (path) => /face.css|decoder.js/.test(path);

// Whole or not at all: one file that is missing or not whole, and the build that was there stays.
const install = async () => {
  const cache = await caches.open(CACHE);
  const bring = async (path) => await whole(cache, path) || cache.put(at(path), await fetched(cache, path));
  try {
    await bring(BUILD.unpacker); // others need it
    await Promise.all(Object.keys(BUILD.sums).filter((path) => path !== BUILD.unpacker && !isMore(path)).map(bring));
    await part(cache, await cache.match(at(BUILD.bundle)));
    if (self.registration.active) await faced(cache); // a newer build has it from the first
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
  if (await cache.match(scope) && await cache.match(at(BUILD.bundle))) return;
  bringing ??= install().catch(() => {}).finally(() => { bringing = null; });
  await bringing;
};

// A kept file is what it was, or it is fetched again; the first page has put here what it unpacked itself.
const whole = async (cache, path) => {
  const kept = await cache.match(at(path), { ignoreVary: true });
  return kept && await asKept(path, kept) ? kept : null;
};
const good = async (cache, path) => {
  const kept = await whole(cache, path);
  if (kept) return kept;
  const response = await fetched(cache, path);
  await cache.put(at(path), response.clone()).catch(() => {}); // the phone is full: it is used all the same
  return response;
};

// The face of the figures: a page has it from the first, or not at all, so nothing moves when it comes.
const FACE = `${BUILD.base}face.css`;
const faced = (cache) => good(cache, FACE).catch(() => {});
const dressed = async (cache, style) => {
  const face = await whole(cache, FACE);
  if (!face) return style;
  return new Response(await style.text() + await face.text(), { headers: { "Content-Type": "text/css" } });
};

// What was made of the bundle is what it was, or it is made again.
const made = async (cache, path) => {
  const kept = await cache.match(at(path), { ignoreSearch: true });
  if (kept && (await sum(kept)) === kept.headers.get(SUM)) return kept;
  const bundle = await whole(cache, BUILD.bundle);
  if (!bundle) return undefined;
  try {
    await part(cache, bundle);
  } catch { // the phone is full: it is fetched
    return undefined;
  }
  return cache.match(at(path), { ignoreSearch: true });
};

const isScript = (path) => /\.m?js$/.test(path);
const isOurs = (path) => path.startsWith(BUILD.base) && !(path in BUILD.sums);
const isLater = (path) => isOurs(path) && /\/\w+\.m?js$/.test(path); // one with a point in its name is late

// A script of later; where the bundle is damaged as well, that is fetched first.
const goodScript = async (cache, path) => {
  const kept = await made(cache, path);
  if (kept) return kept;
  await good(cache, BUILD.bundle);
  return await made(cache, path) ?? fetch(at(path));
};
const goodFile = (cache, path) => (isLater(path) ? goodScript(cache, path) : good(cache, path));

// A newer build that the host has, once all of it is on this phone.
const newer = async () => {
  const { registration } = self;
  if (!registration.waiting) await registration.update().catch(() => {});
  const found = registration.waiting ?? registration.installing;
  if (found?.state === "installing") await new Promise((next) => { found.addEventListener("statechange", next, { once: true }); });
  return found?.state === "installed" ? found : null;
};

// What cannot be mended is said by the page; without one of its scripts it is none, and the worker says it. A newer build is
// whole and takes its place unasked, but never while a pot runs, or may: then it is offered.
let broken = "";
const hurt = async (path) => {
  const pages = await self.clients.matchAll({ type: "window" });
  const say = (more) => { for (const client of pages) client.postMessage({ damaged: path, ...more }); };
  say({});
  if (isScript(path)) {
    broken = path;
    for (const client of pages) client.navigate(client.url).catch(() => {});
  }
  const found = await newer();
  if (!found) return;
  const run = await pots(null);
  if (run && !run.length) found.postMessage("update");
  else say({ waits: true });
};
const mended = async (cache) => {
  if (broken) await goodFile(cache, broken).then(() => { broken = ""; }, () => {});
  return !broken;
};

const page = async (event) => {
  const { request } = event;
  const cache = await caches.open(CACHE);
  if (!(await mended(cache))) return lostPage(DAMAGED);
  const url = new URL(request.url);
  const path = url.pathname.replace(/index\.html$/, "").replace(/([^/])$/, "$1/").slice(scope.pathname.length);
  const wanted = url.searchParams.get("as"); // "text": never a page; "page": the server's, where the engine is missing
  const kept = wanted === "text" ? undefined : await made(cache, path);
  event.waitUntil((kept ? faced : bringBack)(cache));
  // without its slash it stands at another depth, and what it names is not found from there
  if (kept && !/\/(index\.html)?$/.test(url.pathname)) return Response.redirect(new URL(path + url.search, scope));
  if (kept && wanted === "page") return fetch(request).then((response) => (response.ok ? response : kept), () => kept);
  return kept ?? fetch(request).catch(async () => (
    (await cache.match(scope)) ? Response.redirect(scope) : lostPage(GONE)));
};

// What no first visit fetches is kept once it has come.
const late = async (cache, request, path) => {
  const response = await fetch(request);
  if (isOurs(path) && isFile(response)) await cache.put(request, response.clone()).catch(() => {}); // the phone is full
  return response;
};

const file = async (event, path) => {
  const cache = await caches.open(CACHE);
  const ignoreSearch = !/[?&]as=/.test(event.request.url); // a page is filled in by the page that asks for it
  if (!(path in BUILD.sums) && !isLater(path)) return (await cache.match(event.request, { ignoreVary: true, ignoreSearch })) ?? late(cache, event.request, path);
  try {
    const found = await goodFile(cache, path);
    return path.endsWith("app.css") ? await dressed(cache, found) : found;
  } catch {
    if (!isMore(path)) event.waitUntil(hurt(path));
    return new Response("", { status: 503 });
  }
};

self.addEventListener("install", (event) => event.waitUntil(install()));
self.addEventListener("activate", (event) => event.waitUntil(tidy()));
self.addEventListener("message", (event) => {
  if (event.data === "update") self.skipWaiting();
  else event.waitUntil(caches.open(CACHE).then(faced));
});
self.addEventListener("fetch", (event) => {
  const { request } = event;
  const url = new URL(request.url);
  if (request.method !== "GET" || url.origin !== self.location.origin) return;
  const path = url.pathname.slice(scope.pathname.length);
  if (FOR_PROGRAMS.test(path)) return;
  if (request.mode === "navigate") event.respondWith(page(event));
  else event.respondWith(file(event, path));
});
