// What a kept row has to hold to be read here. A row of an older shape, or a damaged one, is left out of everything that
// reckons with rows, shown as what it is, and kept: see `unread` of store.js.
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
  timing: isBatch, // an own timing, as it was once kept; systems keep their own by now
  putty: (one) => isTime(one.when)
    && ["filler", "mixed", "before", "after", "came_out"].every((name) => typeof one[name] === "string"),
};

const FITS = {
  kit: (one) => typeof one.record === "string" && isTyped(one.typed),
  log: (one) => Boolean(LOG[one.kind]?.(one)),
  pots: (one) => Number.isFinite(one.started) && ["typed", "timing", "system", "said"].every((name) => isPairs(one[name]))
    && ["done", "rung"].every((name) => isWords(one[name])) && (one.beside === undefined || isPairs(one.beside)),
};

export const fits = (store, one) => FITS[store](one);

// A row at all: an object with an id that the store can hold.
export const isRow = (value) => isObject(value) && (Number.isFinite(value.id) || typeof value.id === "string");
