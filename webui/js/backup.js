// Everything kept here as one file, and back: all of it or nothing, and shown before it replaces anything.
import { SCHEMA, read, replaceAll } from "./store.js";

const STORES = ["kit", "log", "pots"];
const LARGEST = 5_000_000; // bytes; ten years of batches are a tenth of it
const NOT_OURS = "This is not a file that Covemix exported. Nothing was changed.";
const TOO_LARGE = "This file is too large to be one of ours. Nothing was changed.";
const NEWER = "This file comes from a newer Covemix: update this one first. Nothing was changed.";

export class Refused extends Error {}

// Throws where something cannot be read: an empty file would pass for a safe copy.
export const backup = async () => {
  const contents = await Promise.all(STORES.map(read));
  return { format: "covemix", schema: SCHEMA, ...Object.fromEntries(STORES.map((store, place) => [store, contents[place]])) };
};

const isObject = (value) => typeof value === "object" && value !== null && !Array.isArray(value);
const isTyped = (value) => isObject(value) && Object.values(value).every((text) => typeof text === "string");
const isPairs = (value) => Array.isArray(value) && value.every((pair) => Array.isArray(pair) && pair.length === 2
  && pair.every((text) => typeof text === "string"));

const isDated = (one) => Number.isFinite(one.when) || Number.isFinite(Date.parse(one.when));
const LOGGED = {
  poured: (one) => isDated(one) && isTyped(one.typed) && isPairs(one.pairs),
  putty: (one) => isDated(one) && ["filler", "mixed", "before", "after"].every((key) => typeof one[key] === "string"),
  timing: isDated,
};
const FITS = {
  kit: (one) => typeof one.record === "string" && isTyped(one.typed),
  log: (one) => LOGGED[one.kind ?? "poured"]?.(one),
  pots: (one) => Number.isFinite(one.started) && [one.typed, one.timing, one.system].every(isPairs)
    && [one.done, one.rung, one.said].every(Array.isArray),
};
const fits = (store) => (one) => isObject(one) && Number.isSafeInteger(one.id) && FITS[store](one);

// The contents of a file that can replace ours; Refused with one plain sentence otherwise.
export const readBackup = async (file) => {
  if (file.size > LARGEST) throw new Refused(TOO_LARGE);
  let read;
  try {
    read = JSON.parse(await file.text());
  } catch {
    throw new Refused(NOT_OURS);
  }
  if (!isObject(read) || read.format !== "covemix" || !Number.isInteger(read.schema)) throw new Refused(NOT_OURS);
  if (read.schema > SCHEMA) throw new Refused(NEWER);
  const contents = Object.fromEntries(STORES.map((store) => [store, read[store] ?? []]));
  const sound = STORES.every((store) => Array.isArray(contents[store]) && contents[store].every(fits(store))
    && new Set(contents[store].map((one) => one.id)).size === contents[store].length);
  if (!sound) throw new Refused(NOT_OURS);
  return contents;
};

export const counted = ({ kit, log }) => `${kit.length} of your things and ${log.filter((one) => (one.kind ?? "poured") === "poured").length} batches`;

export const restore = (contents) => replaceAll(contents);
