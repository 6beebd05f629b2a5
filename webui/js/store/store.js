// What is kept on this phone: kit, log, running pots. One database, steps from version to version, never backwards.
import { openDB } from "../../vendor/idb/index.js";
import { dismiss, notice, once } from "../page/notice.js";
import { fits } from "./schema.js";
import { t } from "../page/words.js";

const NAME = "covemix";
// step n makes schema n of what schema n - 1 left; a step that has been released is never changed again
const STEPS = [
  (db) => {
    db.createObjectStore("kit", { keyPath: "id", autoIncrement: true }).createIndex("record", "record");
    db.createObjectStore("pots", { keyPath: "id", autoIncrement: true });
    db.createObjectStore("log", { keyPath: "id", autoIncrement: true });
  },
  (_, stores) => { stores.objectStore("log").createIndex("when", "when"); },
  (db) => { db.createObjectStore("imports", { keyPath: "id", autoIncrement: true }); }, // what files changed, to be undone
];

const channel = "BroadcastChannel" in window ? new BroadcastChannel(NAME) : null;
const listeners = new Set();
let opened = null;

const tell = (store) => { for (const listener of listeners) listener(store); };
channel?.addEventListener("message", ({ data }) => tell(data));

// Called with the name of the store that changed, in this tab or another.
export const whenChanged = (listener) => { listeners.add(listener); };

const asking = async (on) => openDB(NAME, STEPS.length, on); // some browsers throw at once where nothing may be kept

const open = () => {
  opened ??= asking({
    upgrade: (db, before, _, stores) => { for (const step of STEPS.slice(before)) step(db, stores); },
    blocked: () => notice("blocked", t("store-blocked")),
    blocking: (_, __, event) => {
      event.target.close();
      opened = null;
      open().catch(() => {}); // behind the newer one: what it finds then is said
    },
    terminated: () => { opened = null; },
  }).then((db) => { dismiss("blocked"); return db; }, (error) => {
    opened = null;
    dismiss("blocked");
    if (error.name === NEWER_ONE) failed(error); // every screen says so, also one that only reads
    throw error;
  });
  return opened;
};

// A page that is left may be kept as it stands (WebKit), a step of the store half done: every other page would wait for it.
addEventListener("pagehide", () => {
  opened?.then((db) => db.close(), () => {});
  opened = null;
});

// A connection that died under us (storage was evicted), before or while it was asked, is opened again, once.
const DEAD = ["InvalidStateError", "AbortError"];
const withStore = async (act) => {
  try {
    return await act(await open());
  } catch (error) {
    if (!DEAD.includes(error.name)) throw error;
    opened = null;
    return act(await open());
  }
};

const FAILED = t("store-failed");
const NEWER = t("store-newer");
const NEWER_ONE = "VersionError";

// What can still be done about it: what is kept already can be saved to a file. Given from outside, it needs this one.
let wayOut = [];
export const offerWhereFull = (acts) => { wayOut = acts; };

const failed = (error) => (error.name === NEWER_ONE ? notice("store", NEWER) : notice("store", FAILED, wayOut));

// Says so where what is kept cannot be read at all by this build.
export const lookAtStore = () => open().catch(() => {});

const changing = async (store, act) => {
  try {
    const result = await withStore((db) => act(db));
    tell(store);
    channel?.postMessage(store);
    askToStay();
    return result;
  } catch (error) {
    failed(error);
    return undefined;
  }
};

let asked = false;
const askToStay = async () => {
  if (asked || !navigator.storage?.persist) return;
  asked = true;
  if (!(await navigator.storage.persist())) {
    once("persist", t("store-may-clear"));
  }
};

// Clocks must be on the disk before anything is said to run.
const STRICT = { durability: "strict" };

// Throws where it cannot be read: for whoever must not take a failed read for an empty store.
export const read = (store) => withStore(async (db) => {
  const step = db.transaction(store);
  const [rows] = await Promise.all([step.store.getAll(), step.done]);
  return rows;
});
// Throws too; without the rows that cannot be read.
export const sound = async (store) => (await read(store)).filter((row) => fits(store, row));
// What cannot be read: rows of an older shape, or damaged ones. They are kept as they are.
export const unread = async (store) => (await read(store).catch(() => [])).filter((row) => !fits(store, row));
export const all = (store) => sound(store).catch(() => []);
// For a screen that is about what is kept: an empty list that is really a failed one is told.
export const kept = (store) => sound(store).catch((error) => { failed(error); return []; });
export const put = (store, value) => changing(store, async (db) => {
  const change = db.transaction(store, "readwrite", STRICT);
  const [id] = await Promise.all([change.store.put(value), change.done]); // where it dies, both do
  return id;
});
// A row that was removed: in its own place, or in a new one where that was taken meanwhile (a file was brought back).
export const putBack = (store, row) => changing(store, async (db) => {
  const step = db.transaction(store, "readwrite", STRICT);
  const { id, ...rest } = row;
  const taken = await step.store.get(id);
  const [place] = await Promise.all([step.store.put(taken ? rest : row), step.done]);
  return place;
});
// Resolves to true, or undefined where it failed (the person is told).
export const remove = (store, id) => changing(store, async (db) => {
  await db.delete(store, id);
  return true;
});

// All or nothing, in one transaction over what is kept and the imports. work(rows, stores): what is kept by store, and the
// open stores; resolves to what this resolves to.
export const together = (stores, work) => changing("all", async (db) => {
  const step = db.transaction([...stores, "imports"], "readwrite", STRICT);
  step.done.catch(() => {}); // where the step dies before its end, what is awaited says so
  const found = await Promise.all(stores.map((store) => step.objectStore(store).getAll()));
  const result = await work(Object.fromEntries(stores.map((store, place) => [store, found[place]])), (store) => step.objectStore(store));
  await step.done;
  return result;
});

// What was there is replaced.
export const replaceAll = (contents) => together(Object.keys(contents), async (_, at) => {
  for (const [store, rows] of Object.entries(contents)) {
    await at(store).clear();
    for (const row of rows) await at(store).put(row);
  }
  return true;
});

// Read and written in one step, so that of two tabs one wins. make: the thing as it is -> as it shall be, or null to
// leave it. Resolves to whether it was changed.
const changed = async (db, store, id, make) => {
  const step = db.transaction(store, "readwrite", STRICT);
  step.done.catch(() => {}); // where the step dies before its end, what is awaited says so
  const before = await step.store.get(id);
  const after = before ? make(before) : null;
  if (after) await step.store.put(after);
  await step.done;
  return Boolean(after);
};
export const change = (store, id, make) => changing(store, (db) => changed(db, store, id, make));

// As `change`, every few seconds while something runs: nobody is told, and one that fails is followed by the next.
export const beat = (store, id, make) => withStore((db) => changed(db, store, id, make)).catch(() => false);
