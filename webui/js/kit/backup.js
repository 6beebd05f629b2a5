// Everything kept here as one file, and back: all of it or nothing, shown before it changes anything, and undone later.
import { download, today } from "../phone/download.js";
import { notice } from "../page/notice.js";
import { isRow } from "../store/schema.js";
import { read, together } from "../store/store.js";
import { listed } from "../page/lists.js";
import { t } from "../page/words.js";

const SCHEMA = 2; // of a file; the store may have come further, and keeps there what no file carries
const MOST = 10; // imports that can be undone, one after the other
const STORES = ["kit", "log", "pots"];
const LARGEST = 5_000_000; // bytes; ten years of batches are a tenth of it
const NOT_OURS = t("backup-wrong.not-ours");
const TOO_LARGE = t("backup-wrong.too-large");
const NEWER = t("backup-wrong.newer");

export class Refused extends Error {}

const UNREAD = t("backup-wrong.unread");

// Everything as a file, or undefined, and told, where it cannot be read.
export const current = () => backup().catch(() => { notice("store", UNREAD); });
export const saveFile = async () => {
  const contents = await current();
  if (contents) download(`covemix-${today()}.json`, JSON.stringify(contents, null, 1), "application/json");
};

// Throws where the store cannot be read: an empty file would pass for a copy.
export const backup = async () => {
  const contents = await Promise.all(STORES.map(read));
  return { format: "covemix", schema: SCHEMA, ...Object.fromEntries(STORES.map((store, place) => [store, contents[place]])) };
};

// The contents of a file that can replace ours; Refused with one plain sentence otherwise.
export const readBackup = async (file) => {
  if (file.size > LARGEST) throw new Refused(TOO_LARGE);
  let found;
  try {
    found = JSON.parse(await file.text());
  } catch {
    throw new Refused(NOT_OURS);
  }
  if (found?.format !== "covemix" || !Number.isInteger(found.schema)) throw new Refused(NOT_OURS);
  if (found.schema > SCHEMA) throw new Refused(NEWER);
  const contents = Object.fromEntries(STORES.map((store) => [store, found[store] ?? []]));
  const sound = STORES.every((store) => Array.isArray(contents[store]) && contents[store].every(isRow)
    && new Set(contents[store].map((one) => one.id)).size === contents[store].length);
  if (!sound) throw new Refused(NOT_OURS);
  return contents;
};

// Putty batches stand in the log too, as own timings once did, but are not what was poured.
export const counted = ({ kit, log, pots }) => {
  const poured = log.filter(({ kind }) => kind === "poured").length;
  const others = log.length - poured;
  return listed([t("backup-count", { things: kit.length, count: poured }),
    others && t("backup-count.others", { count: others }),
    pots.length && t("backup-count.pots", { count: pots.length })]);
};

const text = ({ id, ...rest }) => JSON.stringify(Object.entries(rest).sort(([a], [b]) => (a < b ? -1 : 1)));
// a pot is written to while it runs; these two say which one it is
const potText = ({ started, typed }) => JSON.stringify([started, (Array.isArray(typed) ? typed : [])
  .filter(Array.isArray).filter(([name]) => !`${name}`.startsWith("changes.") && name !== "duration")]);
const content = (store) => (store === "pots" ? potText : text);

// What bringing a file back would change, by store: { come, go }. `whole`: all is to be as in the file; else it is added
// to what is here. A pot that runs here runs on either way: a file stops no clock.
export const changes = (file, mine, whole) => Object.fromEntries(STORES.map((store) => {
  const of = content(store);
  const replaced = whole && store !== "pots";
  const key = (row) => (replaced ? `${row.id} ` : "") + of(row);
  const [here, there] = [mine[store], file[store]].map((rows) => new Set(rows.map(key)));
  const come = file[store].filter((row) => !here.has(key(row)));
  const go = replaced ? mine[store].filter((row) => !there.has(key(row))) : [];
  return [store, { come, go }];
}));

// A row in its own place, or in a new one where that is taken; resolves to the row as it stands there.
const place = async (at, row) => {
  const { id, ...rest } = row;
  const free = !(await at.get(id));
  return { ...rest, id: await at.put(free ? row : rest) };
};

// Brings a file back, and keeps what that changed so that it can be undone. Resolves to the number of that, or undefined.
export const bringBack = (file, whole) => together(STORES, async (mine, at) => {
  const made = changes(file, mine, whole);
  const [came, gone] = [{}, {}];
  for (const store of STORES) {
    for (const row of made[store].go) await at(store).delete(row.id);
    gone[store] = made[store].go;
    came[store] = [];
    for (const row of made[store].come) came[store].push(await place(at(store), row));
  }
  const id = await at("imports").put({ when: Date.now(), whole, came, gone });
  const older = (await at("imports").getAllKeys()).slice(0, -MOST);
  for (const one of older) await at("imports").delete(one);
  return id;
});

// Newest first: the newest is undone before the one before it can be.
export const imports = async () => (await read("imports").catch(() => [])).sort((a, b) => b.id - a.id);

// Takes the newest import back: what came goes, what went comes. What was changed or entered since stays.
export const undoImport = (id) => together(STORES, async (mine, at) => {
  const newest = (await at("imports").getAll()).sort((a, b) => b.id - a.id)[0];
  if (newest?.id !== id) return false;
  for (const store of STORES) {
    const of = content(store);
    const now = new Map(mine[store].map((row) => [row.id, of(row)]));
    for (const row of newest.came[store]) if (now.get(row.id) === of(row)) await at(store).delete(row.id);
    for (const row of newest.gone[store]) await place(at(store), row);
  }
  await at("imports").delete(id);
  return true;
});
