// Everything kept here as one file, and back: all of it or nothing, and shown before it replaces anything.
import { SCHEMA, read, replaceAll } from "./store.js";

const STORES = ["kit", "log", "pots"];
const LARGEST = 5_000_000; // bytes; ten years of batches are a tenth of it
const NOT_OURS = "This is not a file that Covemix exported. Nothing was changed.";
const TOO_LARGE = "This file is too large to be one of ours. Nothing was changed.";
const NEWER = "This file comes from a newer Covemix: update this one first. Nothing was changed.";

export class Refused extends Error {}

// Throws where the store cannot be read: an empty file would pass for a copy.
export const backup = async () => {
  const contents = await Promise.all(STORES.map(read));
  return { format: "covemix", schema: SCHEMA, ...Object.fromEntries(STORES.map((store, place) => [store, contents[place]])) };
};

const isObject = (value) => typeof value === "object" && value !== null && !Array.isArray(value);
const isTyped = (value) => isObject(value) && Object.values(value).every((text) => typeof text === "string");
const isPairs = (value) => Array.isArray(value) && value.every((pair) => Array.isArray(pair) && pair.length === 2
  && pair.every((text) => typeof text === "string"));

const isWords = (value) => Array.isArray(value) && value.every((text) => typeof text === "string");

// Putty batches once kept their time as text; a phone may still hold such rows.
const isTime = (value) => Number.isFinite(value) || (typeof value === "string" && Number.isFinite(Date.parse(value)));
const isBatch = (one) => Number.isFinite(one.when) && isTyped(one.typed) && isPairs(one.pairs);
const LOG = {
  poured: isBatch,
  putty: (one) => isTime(one.when)
    && ["filler", "mixed", "before", "after", "came_out"].every((name) => typeof one[name] === "string"),
};

const FITS = {
  kit: (one) => typeof one.record === "string" && isTyped(one.typed),
  log: (one) => (LOG[one.kind] ?? LOG.poured)(one),
  pots: (one) => Number.isFinite(one.started) && ["typed", "timing", "system", "said"].every((name) => isPairs(one[name]))
    && ["done", "rung"].every((name) => isWords(one[name])),
};
const fits = (store) => (one) => isObject(one) && Number.isSafeInteger(one.id) && FITS[store](one);

// The contents of a file that can replace ours; Refused with one plain sentence otherwise.
export const readBackup = async (file) => {
  if (file.size > LARGEST) throw new Refused(TOO_LARGE);
  let found;
  try {
    found = JSON.parse(await file.text());
  } catch {
    throw new Refused(NOT_OURS);
  }
  if (!isObject(found) || found.format !== "covemix" || !Number.isInteger(found.schema)) throw new Refused(NOT_OURS);
  if (found.schema > SCHEMA) throw new Refused(NEWER);
  const contents = Object.fromEntries(STORES.map((store) => [store, found[store] ?? []]));
  const sound = STORES.every((store) => Array.isArray(contents[store]) && contents[store].every(fits(store))
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
