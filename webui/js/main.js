// Starts the page: the screen, and what keeps it all for a shop without signal.
import { isLink } from "./share/opened_link.js";
import { handedOn, startEngine, whenHung } from "./engine/engine.js";
import { keepForm } from "./form/beside.js";
import { startLetters } from "./form/letters.js";
import { fetchSoon, ifHere, withPart } from "./offline/parts.js";
import { recall } from "./form/memory.js";
import { startNavigation } from "./navigation.js";
import { offerLanguage, shown as shownIn } from "./page/language.js";
import { notice } from "./page/notice.js";
import { followUpdates, holdUpdates, startOffline, turnLanguage } from "./offline/offline.js";
import { running, startPots, whenTold } from "./pots/pots.js";
import { startRecall } from "./offline/recalled_builds.js";
import { applySettings } from "./page/settings.js";
import { lookAtStore, offerWhereFull } from "./store/store.js";
import { mount as mountScreen } from "./views/screen.js";
import { arrive } from "./page/to_safety.js";
import { cover } from "./page/whole_keys.js";
import { t } from "./page/words.js";

const LONG = 4000; // ms
const STARTED_ANEW = t("engine-started-anew");

const root = new URL("../../../", import.meta.url);

// Fetched when the screen is shown; its page names them too, so that they come with the page. Any other screen is a form and
// its answers.
const VIEWS = {
  boat: () => import("./views/boat.js"),
  clock: () => import("./views/clock.js"),
  kit: () => import("./views/kit.js"),
  log: () => import("./views/log.js"),
  plan: () => import("./views/plan.js"),
  pour: () => import("./views/pour.js"),
  trial: () => import("./views/trial.js"),
};
const coming = (screen) => VIEWS[screen]?.().catch(() => {}); // whoever shows it meets what is wrong

const show = async () => {
  const main = document.querySelector("[data-main]");
  const { screen } = document.documentElement.dataset;
  const mount = VIEWS[screen] ? (await VIEWS[screen]()).mount : mountScreen;
  if (!main.isConnected) return; // another screen was asked for meanwhile
  const filled = main.querySelector("[data-form]") && mount(screen, main)?.filled;
  await filled?.catch((error) => setTimeout(() => { throw error; })); // the screen stands, whatever its list met
  if (!main.isConnected) return; // another one is shown by now
  main.dataset.unanswered &&= "";
  arrive();
  cover();
  try { localStorage[HERE] = screen; } catch { /* it opens at the front door */ }
  lookAtStore();
};

const HERE = "covemix.told.here"; // the screen that the hand was on last
let last = "";
try { last = localStorage[HERE]; } catch { /* nothing is kept here */ }
const isNew = !window.name; // a tab that was on none yet
window.name = "covemix";

// Whoever touches what lies under it needs it no more.
const welcome = () => {
  const box = document.querySelector("[data-welcome]");
  const past = () => { box.hidden = true; };
  box.hidden = false;
  document.addEventListener("click", past);
  document.querySelector("[data-main]").addEventListener("focusin", past);
};

export const save = () => {
  const form = document.querySelector("[data-form]:is(.live, .alone)"); // mounted: before that it holds nothing that was kept
  if (form && !isLink(form)) keepForm(document.documentElement.dataset.screen, form);
};

const started = startEngine().then(() => handedOn).catch(() => {}); // the first question says so, at the field
followUpdates(save);
offerWhereFull([[t("backup-save"), () => withPart("kit/backup.js", ({ saveFile }) => saveFile())]]);
whenHung(() => notice("hung", STARTED_ANEW));
startRecall(root, save);
applySettings();
// Takes up another language, and says what hinders it.
const turn = async (language) => {
  const hindered = await turnLanguage(language, root, save);
  if (!hindered) return;
  notice("language", hindered);
  for (const one of document.querySelectorAll("[name=set-language]")) one.checked = one.value === shownIn();
};
document.addEventListener("change", ({ target }) => { if (target.name === "set-language") turn(target.value); });
offerLanguage(turn);
const { screen: first } = document.documentElement.dataset;
const front = document.querySelector("[data-welcome]") && location.search.length < 2;
export const shown = show();
startNavigation(show, coming);
// A killed app opens in the run that was under way; at the front door it opens where the hand was last, and says on the
// first open what it is.
const along = Object.fromEntries(recall("plan.run") ?? []);
const goes = along.ran && !along.left ? "plan" : front && isNew && last;
const went = () => document.documentElement.dataset.screen !== first;
if (goes && goes !== first) shown.then(() => went() || document.querySelector(`[data-foot] [data-to=${goes}]`)?.click());
else if (front && !last && !recall(first)) welcome();
holdUpdates(running, whenTold);
startPots();
startLetters();
// what is asked first is answered first; then the phone keeps it all, also where the engine does not start
Promise.race([started, new Promise((resolve) => { setTimeout(resolve, LONG); })])
  .then(() => {
    if (navigator.serviceWorker?.controller) ifHere("views/all.late.js", () => {}); // the worker keeps what comes
    startOffline(root, save, fetchSoon);
  });
