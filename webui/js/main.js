// Starts the page: the screen, and what keeps it all for a shop without signal.
import { saveFile } from "./backup.js";
import { isLink } from "./bring.js";
import { startEngine, whenHung } from "./engine.js";
import { held } from "./form.js";
import { remember } from "./memory.js";
import { startNavigation } from "./navigate.js";
import { notice } from "./notice.js";
import { followUpdates, holdUpdates, startOffline } from "./offline.js";
import { running, startPots, whenTold } from "./pots.js";
import { startRecall } from "./recall.js";
import { applySettings } from "./settings.js";
import { startSharing } from "./share.js";
import { lookAtStore, offerWhereFull } from "./store.js";
import { mount as mountBoat } from "./views/boat.js";
import { mount as mountClock } from "./views/clock.js";
import { mount as mountKit } from "./views/kit.js";
import { mount as mountLog } from "./views/log.js";
import { mount as mountPlan } from "./views/plan.js";
import { mount as mountPour } from "./views/pour.js";
import { mount as mountScreen } from "./views/screen.js";

const LONG = 4000; // ms
const STARTED_ANEW = "The part that calculates stood still and was started anew. Nothing that you typed is lost.";

const root = new URL("../../../", import.meta.url);

const VIEWS = { // any other screen is a form and its answers
  boat: mountBoat, clock: mountClock, kit: mountKit, log: mountLog, plan: mountPlan, pour: mountPour,
};

const show = () => {
  const main = document.querySelector("[data-main]");
  const { screen } = document.documentElement.dataset;
  if (main.querySelector("[data-form]")) (VIEWS[screen] ?? mountScreen)(screen, main);
  lookAtStore();
};

const save = () => {
  const form = document.querySelector("[data-form]");
  if (form && !isLink(form)) remember(document.documentElement.dataset.screen, held(form));
};

followUpdates(save);
offerWhereFull([["Save kit and log to a file", saveFile]]);
whenHung(() => notice("hung", STARTED_ANEW));
startRecall(root, save);
applySettings();
show();
startNavigation(show);
startSharing();
holdUpdates(running, whenTold);
startPots();
// what is asked first is answered first; then the phone keeps it all, also where the engine does not start
Promise.race([startEngine().catch(() => {}), new Promise((resolve) => { setTimeout(resolve, LONG); })])
  .then(() => startOffline(root, save));
