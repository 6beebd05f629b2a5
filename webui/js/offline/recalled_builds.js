// Recalled builds: a phone that runs one says so before anything else, with the way out. The list is fetched fresh at each
// opening and kept as it was last known. The engine is not asked: it may be what is wrong.
import { updateNow } from "./offline.js";
import { notice } from "../page/notice.js";
import { t } from "../page/words.js";

const KEPT = "covemix.told.recalled";
const LONGEST = 600; // characters of what is said

const lastKnown = () => { try { return JSON.parse(localStorage.getItem(KEPT)); } catch { return null; } };

const keep = (list) => { try { localStorage.setItem(KEPT, JSON.stringify(list)); } catch { /* asked again next time */ } };

// The rows that name this build.
const ours = (list) => {
  const { release, build } = document.documentElement.dataset;
  const names = ({ first, last, builds }) => (Number(release) >= first && Number(release) <= last) || (builds ?? []).includes(build);
  return (Array.isArray(list?.recalled) ? list.recalled : []).filter(names);
};

let said = "";

const say = (list, save, more = "") => {
  const words = ours(list).flatMap(({ wrong, check }) => [wrong, check]).join(" ").slice(0, LONGEST);
  if (!words || (words === said && !more)) return;
  said = words;
  notice("recalled", [t("recalled-this"), words, more].filter(Boolean).join(" "), [[t("update-now"), async () => {
    const hindered = await updateNow(save);
    if (hindered) say(list, save, hindered); // it stays said
  }]]);
};

export const startRecall = async (root, save) => {
  say(lastKnown(), save);
  const fresh = await fetch(new URL("recalled.json", root), { cache: "no-store" })
    .then((response) => (response.ok && !response.redirected ? response.json() : null)).catch(() => null);
  if (!Array.isArray(fresh?.recalled)) return; // no signal, or a page of somebody else's network
  keep(fresh);
  say(fresh, save);
};
