// The service worker in Node, without a browser: made-up files, a cache and a network that do what a case asks of them.
// `node tests/node/worker.mjs FOLDER PACKED` prints a line for each case: its name, a tab, "ok" or what was wrong. FOLDER is
// that of webui/; PACKED is JSON: by the path of each file that comes packed [its bytes in base 64, the text in it, its type].
import assert from "node:assert/strict";
import { webcrypto } from "node:crypto";
import { readFileSync } from "node:fs";
import { join } from "node:path";

const read = (path) => readFileSync(join(process.argv[2], path), "utf8");
const AHEAD = ["js/engine/bundle.js", "js/engine/unpack.js", "js/page/sentences.js"].map((path) => read(path).replaceAll("export const", "const")).join("\n");
// a sentence with values shows them: the build puts the real one in the place of its key
const VALUES = { "page-list": "{one}, {more}", "lost-pot.lasts": "{called}; {mixed}; {lasts}", "lost-pot.mixed": "{called}; {mixed}", "lost-pot.unread": "{called}", "lost-pots": "{count}" };
const WORKER = Object.entries(VALUES).reduce((text, [key, values]) => text.replaceAll(`t("${key}"`, `t("${key}: ${values}."`), read("sw.js"));
const ROOT = "https://boat.test/app/";

const bytesOf = (body) => (typeof body === "string" ? new TextEncoder().encode(body) : body);
const hash = async (body) => btoa(String.fromCharCode(...new Uint8Array(await webcrypto.subtle.digest("SHA-256", bytesOf(body)))));
const packed = Object.entries(JSON.parse(process.argv[3]));
const UNPACKER = "v/1/unpack.wasm";
const BUNDLE = "v/1/app.bin";
// as they are sent
const FILES = { "v/1/app.css": "css", "v/1/js/main.js": "main", "v/1/names.json": "[]",
  [UNPACKER]: readFileSync(join(process.argv[2], "vendor/ppmd/unpack.wasm")),
  ...Object.fromEntries(packed.map(([path, [sent]]) => [path, Buffer.from(sent, "base64")])) };
// what no first visit fetches
const [FACE, DECODER] = ["v/1/face.css", "v/1/js/share/decoder.js"];
const ASKED = { [FACE]: "face", [DECODER]: "decoder" };
const KEPT = { ...FILES, ...Object.fromEntries(packed.map(([path, [, text]]) => [path, text])) };
const KINDS = { css: "text/css", js: "text/javascript", json: "application/json", wasm: "application/wasm", bin: "application/octet-stream" };
const sums = Object.fromEntries(await Promise.all(Object.entries({ ...FILES, ...ASKED }).map(async ([path, body]) => [path, await hash(body)])));
const whole = Object.fromEntries(await Promise.all(packed.map(async ([path, [, text, kind]]) => [path, [kind, await hash(text)]])));
const BUILD = { id: "one", sums, whole, base: "v/1/", bundle: BUNDLE, unpacker: UNPACKER, headers: { "X-Frame-Options": "DENY" },
  types: { pages: "text/html", scripts: "text/javascript" }, language: "de" };

// what varies by the headers of a request is found by an address, but by another request only where it may vary
class Kept {
  rows = new Map();
  full = false;
  url(asked, bare) {
    const url = new URL(asked.url ?? asked);
    if (bare) url.search = "";
    return url.href;
  }
  async match(asked, { ignoreSearch = false, ignoreVary = false } = {}) {
    const wanted = this.url(asked, ignoreSearch);
    for (const [url, response] of this.rows) {
      if (this.url(url, ignoreSearch) === wanted && (ignoreVary || !asked.url || !response.headers.get("Vary"))) return response.clone();
    }
    return undefined;
  }
  async put(asked, response) {
    if (this.full) throw new Error("full");
    this.rows.set(this.url(asked), response);
  }
}

const answer = (path, text, more = {}) => {
  const response = new Response(text, { status: more.status ?? 200, headers: { ...(path in FILES ? { Vary: "Accept-Encoding" } : {}), "Content-Type": more.kind ?? KINDS[path.split(".").at(-1)] ?? "text/html" } });
  Object.defineProperty(response, "redirected", { value: Boolean(more.redirected) });
  return response;
};

// A worker of its own: `wire(path, how)` answers what is fetched, `pots` are those that run (null: they cannot be read; "none": there is no database).
const started = (wire = (path) => (path in FILES ? answer(path, FILES[path]) : null), pots = [], build = BUILD) => {
  const stores = new Map();
  const caches = {
    async open(name) { if (!stores.has(name)) stores.set(name, new Kept()); return stores.get(name); },
    async keys() { return [...stores.keys()]; },
    async delete(name) { return stores.delete(name); },
  };
  const heard = {};
  const page = { url: `${ROOT}joint/`, told: [], went: [], postMessage(what) { this.told.push(what); }, async navigate(url) { this.went.push(url); } };
  const did = { claimed: 0, skipped: 0, fetched: [], faces: 0, reloaded: [], opened: [] };
  const registration = { waiting: null, installing: null, updated: 0, async update() { this.updated += 1; } };
  const self = { location: new URL(`${ROOT}sw.js`), registration, addEventListener: (name, then) => { heard[name] = then; },
    skipWaiting() { did.skipped += 1; }, clients: { async matchAll() { return [page]; }, async claim() { did.claimed += 1; } } };
  const fetch = async (asked, how = {}) => {
    const path = String(asked.url ?? asked).slice(ROOT.length);
    if (path === FACE) did.faces += 1; // each page asks for it where it is missing: told apart
    else did.fetched.push(path);
    if (how.cache === "reload" && path !== FACE) did.reloaded.push(path);
    const found = await wire(path, how);
    if (!found) throw new TypeError("no signal");
    return found;
  };
  const event = () => {
    const hears = {};
    return { hears, addEventListener: (name, then) => { hears[name] = then; } };
  };
  const indexedDB = { open(name) {
    did.opened.push(name);
    const asked = { ...event(), transaction: { abort() { setTimeout(() => asked.hears.error?.()); } } };
    setTimeout(() => {
      if (pots === "none") { asked.hears.upgradeneeded?.(); return; }
      if (pots === null) { asked.hears.error?.(); return; }
      asked.result = { close() {}, transaction: (of) => ({ objectStore: (name) => ({ getAll() {
        assert.deepEqual([of, name], ["pots", "pots"]);
        const got = { ...event(), result: pots };
        setTimeout(() => got.hears[pots === "held" ? "error" : "success"]?.());
        return got;
      } }) }) };
      asked.hears.success?.();
    });
    return asked;
  } };
  new Function("BUILD", "self", "caches", "fetch", "indexedDB", "crypto", "location", `${AHEAD}\n${WORKER}`)(build, self, caches, fetch, indexedDB, webcrypto, self.location);
  const wait = async (name, more = {}) => {
    const waits = [];
    heard[name]({ waitUntil: (one) => waits.push(one), ...more });
    await Promise.all(waits);
  };
  const ask = async (path, { mode = "navigate", method = "GET", root = ROOT } = {}) => {
    let response = null;
    const waits = [];
    const request = { url: root + path, method, mode };
    heard.fetch({ request, respondWith: (one) => { response = one; }, waitUntil: (one) => waits.push(one) });
    const got = await response;
    const done = Promise.all(waits);
    return { got, done, text: got && (await got.clone().text()) };
  };
  return { stores, caches, page, did, registration, wait, ask, cache: () => stores.get("covemix-one") };
};
const installed = async (...how) => {
  const one = started(...how);
  await one.wait("install");
  one.did.fetched.length = 0;
  return one;
};
const text = async (cache, path) => (await cache.match(ROOT + path))?.text();
const bytes = async (cache, path) => Buffer.from(await (await cache.match(ROOT + path)).arrayBuffer());
const silent = () => null;

const CASES = {
  "a build is kept whole, its pages and later scripts with their headers and sums": async () => {
    const one = await installed();
    for (const [path, body] of Object.entries(KEPT)) assert.deepEqual(await bytes(one.cache(), path), Buffer.from(body), path);
    for (const path of Object.keys(ASKED)) assert.equal(await text(one.cache(), path), undefined);
    assert.equal(await text(one.cache(), ""), "<p>start</p>");
    assert.equal(await text(one.cache(), "v/1/js/later.js"), "later");
    const page = await one.cache().match(`${ROOT}joint/`);
    assert.deepEqual([page.headers.get("Content-Type"), page.headers.get("X-Frame-Options")], ["text/html", "DENY"]);
    assert.equal(page.headers.get("Covemix-Sum"), await hash("<p>joint</p>"));
    assert.equal(await text(one.cache(), "shared/a.py"), undefined);
    assert.deepEqual([...one.stores.keys()], ["covemix-one"]);
    assert.deepEqual(one.did.reloaded, []);
  },
  "what comes packed is kept as what it was packed of, with the type of that, and comes so without the network": async () => {
    const one = await installed();
    for (const [path, [, text, kind]] of packed) {
      const { got, text: told } = await one.ask(path, { mode: "cors" });
      assert.deepEqual([told, got.headers.get("Content-Type")], [text, kind]);
    }
    assert.deepEqual(one.did.fetched, []);
  },
  "what comes out other than what was packed keeps nothing": async () => {
    for (const [path] of packed) {
      const one = started(undefined, [], { ...BUILD, whole: { ...whole, [path]: [whole[path][0], await hash("other")] } });
      await assert.rejects(one.wait("install"), new RegExp(`${path}: not whole`));
      assert.deepEqual([...one.stores.keys()], []);
    }
  },
  "what cannot be unpacked keeps nothing, though it came as it was sent": async () => {
    const cut = FILES[BUNDLE].subarray(0, 30);
    const build = { ...BUILD, sums: { ...sums, [BUNDLE]: await hash(cut) } };
    const one = started((path) => answer(path, path === BUNDLE ? cut : FILES[path]), [], build);
    await assert.rejects(one.wait("install"), /not whole/);
    assert.deepEqual([...one.stores.keys()], []);
  },
  "a damaged unpacker unpacks nothing: it is fetched with what it is for": async () => {
    const one = await installed();
    for (const path of [UNPACKER, BUNDLE]) one.cache().rows.set(ROOT + path, new Response("half"));
    assert.equal((await one.ask(BUNDLE, { mode: "cors" })).text, KEPT[BUNDLE]);
    assert.deepEqual(one.did.fetched.sort(), [BUNDLE, UNPACKER]);
    assert.deepEqual(await bytes(one.cache(), UNPACKER), FILES[UNPACKER]);
  },
  "half a file is fetched once more past the browser's own cache": async () => {
    const one = started((path, how) => answer(path, how.cache === "reload" ? FILES[path] : FILES[path].slice(1)));
    await one.wait("install");
    assert.deepEqual(one.did.reloaded.sort(), Object.keys(FILES).sort());
    assert.equal(await text(one.cache(), "v/1/app.css"), "css");
  },
  "what is not whole, a page, another address or a refusal in the place of a file keeps nothing": async () => {
    for (const more of [{ text: "cs" }, { kind: "text/html" }, { redirected: true }, { status: 404 }]) {
      const one = started((path) => (path === "v/1/app.css" ? answer(path, more.text ?? "css", more) : answer(path, FILES[path])));
      one.stores.set("covemix-old", new Kept());
      await assert.rejects(one.wait("install"), /app\.css/);
      assert.deepEqual([...one.stores.keys()], ["covemix-old"]);
    }
  },
  "a new build lets go of its own old ones alone, and takes the pages over": async () => {
    const one = await installed();
    for (const name of ["covemix-old", "another-app"]) one.stores.set(name, new Kept());
    await one.wait("activate");
    assert.deepEqual([...one.stores.keys()].sort(), ["another-app", "covemix-one"]);
    assert.equal(one.did.claimed, 1);
  },
  "a new build takes over when it is asked to, and at nothing else": async () => {
    const one = await installed();
    await one.wait("message", { data: "anything" });
    assert.equal(one.did.skipped, 0);
    await one.wait("message", { data: "update" });
    assert.equal(one.did.skipped, 1);
  },
  "what is for programs, sent, or of another host is left to the network": async () => {
    const one = await installed();
    for (const [path, how] of [["api/ratio", {}], ["openapi.json", {}], ["", { method: "POST" }], ["x", { root: "https://other.test/app/" }]]) {
      assert.equal((await one.ask(path, how)).got, null, path);
    }
    for (const path of ["apiary/", "openapi.json/", "see/api/"]) assert.notEqual((await one.ask(path)).got, null, path);
  },
  "a kept page comes without the network, however its address ends": async () => {
    const one = await installed();
    assert.equal((await one.ask("index.htmljoint/")).got.status, 302); // the end alone is a page's other name
    one.did.fetched.length = 0;
    for (const path of ["joint/", "joint/index.html", "joint/?thickness=9"]) assert.equal((await one.ask(path)).text, "<p>joint</p>", path);
    for (const path of ["", "index.html", "?amount=1"]) assert.equal((await one.ask(path)).text, "<p>start</p>", path);
    for (const [path, to] of [["joint", "joint/"], ["joint?thickness=9", "joint/?thickness=9"]]) {
      const { got } = await one.ask(path); // it stands at another depth: its own files would not be found from there
      assert.deepEqual([got.status, got.headers.get("Location")], [302, ROOT + to]);
    }
    assert.deepEqual(one.did.fetched, []);
  },
  "a text is asked of the server; a page of it only as long as it answers": async () => {
    let status = 200;
    const one = await installed((path) => (path in FILES ? answer(path, FILES[path]) : status && answer(path, "server", { status })));
    assert.equal((await one.ask("joint/?as=text")).text, "server");
    assert.equal((await one.ask("joint/?as=page")).text, "server");
    status = 500;
    assert.equal((await one.ask("joint/?as=page")).text, "<p>joint</p>");
    status = 0;
    assert.equal((await one.ask("joint/?as=page")).text, "<p>joint</p>");
    assert.equal((await one.ask("joint/?as=other")).text, "<p>joint</p>");
  },
  "an unknown page without signal leads to the start": async () => {
    const one = await installed((path) => (path in FILES ? answer(path, FILES[path]) : null));
    const { got } = await one.ask("unknown/");
    assert.deepEqual([got.status, got.headers.get("Location")], [302, ROOT]);
  },
  "a copy that is gone says so, with the pots that run": async () => {
    const typed = [["duration", "20"], ["batch", "A <b>"], ["place", "keel"]];
    const one = started(silent, [{ started: 0, typed }, { started: "?", typed: [] }, { started: 0, typed: [...typed, ["changes.0.air", "9"]] },
      { started: 0, typed: [["duration", "20 min"]] }, { started: 0, typed: "?" }, { started: 0, typed: [null, ["batch", "B"]] }]);
    const { got, text: told } = await one.ask("");
    assert.match(told, /lost-gone/);
    assert.doesNotMatch(told, /lost-damaged|lost-newer/);
    assert.match(told, /<strong>lost-pots: 6\.<\/strong>/);
    assert.match(told, /lost-back/);
    const mixed = new Date(0).toLocaleTimeString("de", { hour: "2-digit", minute: "2-digit" });
    const named = "page-list: A &#60;b&#62;, keel.";
    assert.deepEqual([...told.matchAll(/<li>(.*?)<\/li>/g)].map(([, words]) => words), [
      `lost-pot.lasts: ${named}; ${mixed}; 20 min.`, "lost-pot.unread: lost-pot.", `lost-pot.mixed: ${named}; ${mixed}.`,
      `lost-pot.lasts: lost-pot; ${mixed}; 20 min.`, `lost-pot.mixed: lost-pot; ${mixed}.`, `lost-pot.mixed: B; ${mixed}.`]);
    assert.equal(got.headers.get("Content-Type"), "text/html; charset=utf-8");
    assert.deepEqual(one.did.opened, ["covemix"]);
  },
  "a copy that is gone says no pot where none runs, none can be read, or no kit was ever made": async () => {
    for (const pots of [[], null, "none"]) {
      const { text: told } = await started(silent, pots).ask("");
      assert.match(told, /lost-gone/);
      assert.match(told, /lost-back<\/p>$/);
    }
  },
  "a copy that was let go comes back with the next page over the wire, once": async () => {
    const one = await installed((path) => answer(path, FILES[path] ?? "server"));
    one.cache().rows.clear();
    const asked = await Promise.all([one.ask("joint/"), one.ask("")]);
    assert.deepEqual(asked.map(({ text: told }) => told), ["server", "server"]);
    await Promise.all(asked.map(({ done }) => done));
    assert.equal(one.did.fetched.filter((path) => path === "v/1/app.css").length, 1);
    assert.equal(await text(one.cache(), "joint/"), "<p>joint</p>");
    one.did.fetched.length = 0;
    await (await one.ask("unknown/")).done;
    assert.deepEqual(one.did.fetched, ["unknown/"]); // all is there: nothing is brought back
  },
  "a copy that could not come back is tried again": async () => {
    let signal = false;
    const one = started((path) => (signal ? answer(path, FILES[path] ?? "server") : null));
    await (await one.ask("")).done;
    signal = true;
    await (await one.ask("")).done;
    assert.equal(await text(one.cache(), ""), "<p>start</p>");
  },
  "a page that is not what it was is made again of the bundle": async () => {
    const one = await installed();
    one.cache().rows.set(`${ROOT}joint/`, new Response("<p>half", { headers: { "Covemix-Sum": await hash("<p>joint</p>") } }));
    assert.equal((await one.ask("joint/")).text, "<p>joint</p>");
    one.cache().rows.delete(`${ROOT}v/1/js/later.js`);
    assert.equal((await one.ask("v/1/js/later.js", { mode: "cors" })).text, "later");
    assert.deepEqual(one.did.fetched, []);
  },
  "nothing is made of a damaged bundle: it is fetched": async () => {
    const one = await installed();
    for (const path of ["v/1/js/later.js", BUNDLE]) one.cache().rows.set(ROOT + path, new Response("half"));
    assert.equal((await one.ask("v/1/js/later.js", { mode: "cors" })).text, "later");
    assert.deepEqual(one.did.fetched, [BUNDLE]);
  },
  "a kept file comes without the network; what is not what it was is fetched and kept": async () => {
    const one = await installed();
    assert.equal((await one.ask("v/1/js/main.js", { mode: "cors" })).text, "main");
    assert.deepEqual(one.did.fetched, []);
    one.cache().rows.set(`${ROOT}v/1/js/main.js`, new Response("half"));
    assert.equal((await one.ask("v/1/js/main.js", { mode: "cors" })).text, "main");
    assert.equal(await text(one.cache(), "v/1/js/main.js"), "main");
  },
  "the face is fetched when a page says that the app is kept, and comes with the styles from then on": async () => {
    const one = await installed((path) => answer(path, { ...FILES, ...ASKED }[path]));
    await one.wait("message", { data: "face" });
    assert.deepEqual([one.did.faces, one.did.fetched, one.did.skipped], [1, [], 0]);
    const { got, text: style } = await one.ask("v/1/app.css", { mode: "cors" });
    assert.deepEqual([style, got.headers.get("Content-Type")], ["cssface", "text/css"]);
    await (await one.ask("joint/")).done;
    assert.equal(one.did.faces, 1);
    assert.equal(await text(one.cache(), "v/1/app.css"), "css");
  },
  "styles wait for no face: where it is missing or not whole the next page fetches it": async () => {
    let sent = "half";
    const one = await installed((path) => answer(path, path === FACE ? sent : FILES[path]));
    for (const kept of [null, "hurt"]) {
      if (kept) one.cache().rows.set(ROOT + FACE, new Response(kept));
      sent = "half";
      await (await one.ask("joint/")).done;
      assert.equal((await one.ask("v/1/app.css", { mode: "cors" })).text, "css");
      assert.notEqual(await text(one.cache(), FACE), "half");
      sent = "face";
      await (await one.ask("joint/")).done;
      assert.equal((await one.ask("v/1/app.css", { mode: "cors" })).text, "cssface");
    }
    assert.deepEqual(one.page.told, []);
  },
  "a newer build brings the face with it, where it can be had": async () => {
    for (const [active, sent, kept] of [[null, "face", undefined], [{}, "face", "face"], [{}, "half", undefined]]) {
      const one = started((path) => answer(path, path === FACE ? sent : FILES[path]));
      one.registration.active = active;
      await one.wait("install");
      assert.equal(await text(one.cache(), FACE), kept);
    }
  },
  "the reader of codes is fetched when it is asked for and then kept; where it cannot be had nothing is damaged": async () => {
    let signal = false;
    const one = await installed((path) => (path in FILES ? answer(path, FILES[path]) : signal && answer(path, ASKED[path])));
    const { got, done } = await one.ask(DECODER, { mode: "cors" });
    await done;
    assert.equal(got.status, 503);
    assert.deepEqual([one.page.told, one.page.went, one.registration.updated], [[], [], 0]);
    signal = true;
    assert.equal((await one.ask(DECODER, { mode: "cors" })).text, "decoder");
    signal = false;
    assert.equal((await one.ask(DECODER, { mode: "cors" })).text, "decoder");
  },
  "a file that a full phone cannot keep is used all the same": async () => {
    const one = await installed();
    one.cache().rows.clear();
    one.cache().full = true;
    assert.equal((await one.ask("v/1/app.css", { mode: "cors" })).text, "css");
  },
  "a late script is fetched once and kept; a page in its place is not, nor what is none of this build": async () => {
    const late = "v/1/js/some.late.js";
    let kind = "text/html";
    const one = await installed((path) => (path in FILES ? answer(path, FILES[path]) : answer(path, "late", { kind })));
    await one.ask(late, { mode: "cors" });
    assert.equal(await text(one.cache(), late), undefined);
    kind = "text/javascript";
    assert.equal((await one.ask(late, { mode: "cors" })).text, "late");
    one.did.fetched.length = 0;
    assert.equal((await one.ask(late, { mode: "cors" })).text, "late");
    assert.deepEqual(one.did.fetched, []);
    await one.ask("recalled.js", { mode: "cors" });
    assert.equal(await text(one.cache(), "recalled.js"), undefined);
  },
  "another file is taken from the copy without its search, but never a page that asks how it comes": async () => {
    const one = await installed((path) => answer(path, FILES[path] ?? "server"));
    one.cache().rows.set(`${ROOT}icon.png`, new Response("icon", { headers: { Vary: "Accept-Encoding" } }));
    assert.equal((await one.ask("icon.png?v=2", { mode: "cors" })).text, "icon");
    assert.equal((await one.ask("joint/?as=text", { mode: "cors" })).text, "server");
    assert.equal((await one.ask("joint/?x=1&as=text", { mode: "cors" })).text, "server");
    assert.equal((await one.ask("recalled.json", { mode: "cors" })).text, "server");
  },
  "a file that cannot be mended is said to every page, and stays refused": async () => {
    let signal = true;
    const one = await installed((path) => (signal ? answer(path, FILES[path]) : null));
    signal = false;
    one.cache().rows.set(`${ROOT}v/1/names.json`, new Response("half"));
    const { got, done } = await one.ask("v/1/names.json", { mode: "cors" });
    await done;
    assert.equal(got.status, 503);
    assert.deepEqual([one.page.told, one.page.went], [[{ damaged: "v/1/names.json" }], []]);
    assert.equal(one.registration.updated, 1);
    assert.equal((await one.ask("")).text, "<p>start</p>"); // a page without a style is a page
  },
  "a page without one of its scripts is none until it is mended": async () => {
    let signal = true;
    const one = await installed((path) => (signal ? answer(path, FILES[path]) : null));
    signal = false;
    one.cache().rows.set(`${ROOT}v/1/js/main.js`, new Response("half"));
    await (await one.ask("v/1/js/main.js", { mode: "cors" })).done;
    assert.deepEqual([one.page.told, one.page.went], [[{ damaged: "v/1/js/main.js" }], [one.page.url]]);
    const { text: told } = await one.ask("joint/");
    assert.match(told, /lost-damaged/);
    assert.match(told, /lost-newer\n<button [^>]*>update-now<\/button>/);
    assert.doesNotMatch(told, /lost-gone/);
    signal = true;
    assert.equal((await one.ask("joint/")).text, "<p>joint</p>");
  },
  "a newer build that waits takes the place of a damaged one, but never while a pot runs or may": async () => {
    for (const [pots, update] of [[[], true], [[{ started: 0, typed: [] }], false], [null, false], ["held", false], ["none", true]]) {
      for (const state of ["installed", "activated"]) {
        let signal = true;
        const one = await installed((path) => (signal ? answer(path, FILES[path]) : null), pots);
        signal = false;
        const sent = [];
        one.registration.waiting = { state, postMessage: (what) => sent.push(what) };
        one.cache().rows.set(`${ROOT}v/1/app.css`, new Response("half"));
        await (await one.ask("v/1/app.css", { mode: "cors" })).done;
        const may = state === "installed";
        assert.deepEqual(sent, may && update ? ["update"] : []);
        assert.deepEqual(one.page.told, [{ damaged: "v/1/app.css" }, ...(may && !update ? [{ damaged: "v/1/app.css", waits: true }] : [])]);
        assert.equal(one.registration.updated, 0);
      }
    }
  },
  "a newer build that is still coming is waited for": async () => {
    let signal = true;
    const one = await installed((path) => (signal ? answer(path, FILES[path]) : null));
    signal = false;
    const sent = [];
    const coming = { state: "installing", postMessage: (what) => sent.push(what), addEventListener(name, then) {
      assert.equal(name, "statechange");
      setTimeout(() => { coming.state = "installed"; then(); });
    } };
    one.registration.installing = coming;
    one.cache().rows.set(`${ROOT}v/1/app.css`, new Response("half"));
    await (await one.ask("v/1/app.css", { mode: "cors" })).done;
    assert.deepEqual(sent, ["update"]);
  },
};

for (const [name, run] of Object.entries(CASES)) {
  const late = new Promise((_, not) => { setTimeout(not, 8000, new Error("never ended")).unref(); });
  const wrong = await Promise.race([run(), late]).then(() => "", (error) => error.message || String(error));
  console.log(`${name}\t${wrong.replace(/\s+/g, " ").slice(0, 300) || "ok"}`);
}
process.exit(0);
