// Everything kept here as one file, and back: all of it or nothing, and shown before it replaces anything.
import { download, today } from "./download.js";
import { notice } from "./notice.js";
import { isRow } from "./shapes.js";
import { SCHEMA, read, replaceAll } from "./store.js";

const STORES = ["kit", "log", "pots"];
const LARGEST = 5_000_000; // bytes; ten years of batches are a tenth of it
const NOT_OURS = "This is not a file that Covemix exported. Nothing was changed.";
const TOO_LARGE = "This file is too large to be one of ours. Nothing was changed.";
const NEWER = "This file comes from a newer Covemix: update this one first. Nothing was changed.";

export class Refused extends Error {}

const UNREAD = "What is kept on this phone could not be read. Nothing was saved or changed.";

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
export const counted = ({ kit, log }) => {
  const poured = log.filter(({ kind }) => kind === "poured");
  return `${kit.length} of your things and ${poured.length} ${poured.length === 1 ? "batch" : "batches"}`;
};

export const restore = (contents) => replaceAll(contents);
