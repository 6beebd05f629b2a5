// What is told of one thing beside it (own timings of a system) is of no other: when another is chosen, on whatever screen,
// it is put by, and comes back with its thing.
import { keptObject } from "./choices.js";
import { toldBeside } from "./declarations.js";
import { held, pairs as typedIn } from "./form.js";
import { remember } from "./memory.js";

const KEY = "covemix.beside"; // {screen: {thing: pairs}}
const WHOSE = "whose."; // whose. and the input that picks: whose thing is told of in what was kept with it
const TYPED = "typed"; // figures without a row: corrected, they are of the same thing
const MOST = 12; // things of a screen

const read = () => keptObject(KEY);

const putBy = (screen, thing, pairs) => {
  const kept = read();
  const { [thing]: _, ...others } = kept[screen] ?? {};
  const all = { ...kept, [screen]: Object.fromEntries([...Object.entries(others).slice(1 - MOST), [thing, pairs]]) };
  try { localStorage.setItem(KEY, JSON.stringify(all)); } catch { /* it is gone with its thing, then */ }
};

const isOf = (names) => ([name]) => names.includes(name.split(".")[0]);
const thing = (form, pick) => form.elements.namedItem(pick).value || TYPED;

// By pick, the thing that is chosen.
export const things = (screen, form) => Object.fromEntries(toldBeside(screen).map(([pick]) => [pick, thing(form, pick)]));

// Pairs of a screen without what is told of the thing that was chosen, and with what was told of the one that is now.
// form: as it is now; was: as by `things`. The same pairs where nothing is told, or of the same thing
const swapped = (screen, form, was, pairs) => toldBeside(screen).reduce((found, [pick, names]) => {
  const now = thing(form, pick);
  if (!was[pick] || was[pick] === now) return found;
  const told = found.filter(isOf(names));
  const mine = told.some(([name]) => form.elements.namedItem(name)?.type === "text") ? told : []; // a row that stands there says nothing
  const own = read()[screen]?.[now] ?? [];
  if (mine.length) putBy(screen, was[pick], mine);
  return mine.length || own.length ? [...found.filter((pair) => !told.includes(pair)), ...own] : found;
}, pairs);

// Another thing was chosen in a form. Returns its pairs, or null where they stay as they are.
export const withItsOwn = (screen, form, was, pairs) => {
  const found = swapped(screen, form, was, pairs);
  return found === pairs ? null : found;
};

// The same of a form that was filled with what was kept, while another screen may have chosen another thing.
export const keptWithItsOwn = (screen, form, kept, pairs) => withItsOwn(screen, form, Object.fromEntries(
  kept.filter(([name]) => name.startsWith(WHOSE)).map(([name, text]) => [name.slice(WHOSE.length), text])), pairs);

// To be kept with a form: whose thing is told of.
const whose = (screen, form, pairs) => toldBeside(screen).filter(([, names]) => pairs.some(isOf(names)))
  .map(([pick]) => [WHOSE + pick, thing(form, pick)]);

// A screen's form as it stands, for its next opening. False where this phone keeps nothing.
export const keepForm = (screen, form, typed = typedIn(form)) => remember(screen, [...held(form), ...whose(screen, form, typed)]);

// A lead brings a thing by its figures: what was told of other typed figures is not told of these. Returns what stays.
export const beforeLead = (screen, before, pairs) => toldBeside(screen).reduce((left, [pick, names]) => {
  const digits = (all) => new Map(all.filter(([name]) => name.startsWith(`${pick}.`)).map(([name, text]) => [name, text.replace(/[^\d.,:]/g, "")]));
  const led = digits(pairs);
  if (!led.size || left.find(([name]) => name === WHOSE + pick)?.[1] !== TYPED) return left;
  const same = [...digits(left)].every(([name, text]) => !led.has(name) || led.get(name) === text);
  return same ? left : left.filter((pair) => !isOf(names)(pair));
}, before);
