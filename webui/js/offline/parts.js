// Parts of the page that are fetched when they are asked for: from this phone, once it keeps the app.
import { notice } from "../page/notice.js";
import { t } from "../page/words.js";

const UNFETCHED = t("part-unfetched");
const NEEDS = /(?:^|[;\n])(?:im|ex)port *(?:[^;"]*from *)?"(\.[^"]+)"/g; // what a script cannot start without

// A browser remembers that an import failed, and does not ask for it again. So where nothing is kept on this phone, a part
// and all that it needs are fetched first, which can be tried again, and imported once all of it is here.
const here = new Map(); // address -> when it has come with all that it needs
const come = async (url) => {
  const response = await fetch(url);
  if (!response.ok) throw new Error(`${url}: ${response.status}`);
  const needs = [...(await response.text()).matchAll(NEEDS)].map(([, near]) => new URL(near, url).href);
  await Promise.all(needs.map(fetched));
};
const fetched = (url) => {
  if (!here.has(url)) {
    here.set(url, come(url).catch((error) => {
      here.delete(url);
      throw error;
    }));
  }
  return here.get(url);
};

// kept: whether it is on this phone for certain; what no first visit brings may not be.
export const get = async (path, kept = navigator.serviceWorker?.controller) => {
  const url = new URL(`../${path}`, import.meta.url).href;
  if (!kept || path.includes(".late")) await fetched(url);
  return import(url);
};

// path: of the script, from the folder of all rooms. Resolves to what `use` makes of it, or says that it could not be
// fetched.
export const withPart = async (path, use) => {
  const part = await get(path).catch(() => { notice("unfetched", UNFETCHED); });
  return part && use(part);
};

// Nothing is missed where it cannot be fetched.
export const ifHere = (path, use) => get(path).then(use, () => {});

// Where the app is not kept, what the keys in sight need is fetched while there is a connection, and nothing else to do.
const wanted = new Set();
let unkept = false;
const idle = window.requestIdleCallback ?? setTimeout;
const getSoon = (path) => idle(() => get(path).catch(() => {})); // the tap says so
export const soon = (path) => {
  if (unkept && !wanted.has(path)) getSoon(path);
  wanted.add(path);
};
export const fetchSoon = () => {
  unkept = true;
  wanted.forEach(getSoon);
};
