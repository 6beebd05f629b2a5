// The service worker: registered where the browser has one, updated only when the user says so.
import { shown, speak, spoken, workerOf } from "../page/language.js";
import { behind, notice, once, says } from "../page/notice.js";
import { t } from "../page/words.js";

const PLAIN = t("offline-plain");

const HALF = t("offline-half");
const HALF_UPDATE = t("offline-half-update");

const MEND = t("offline-damaged.mend");

const WHOLE = t("update-whole");

let agreed = false;
const whole = new WeakSet();
const reasonsToWait = [];
let held = null; // an update that had to wait

// A part of the page with something running (a pot) can hold an update back.
// whenOver: calls its listener whenever that may have ended; the update is offered then.
export const holdUpdates = (running, whenOver) => {
  reasonsToWait.push(running);
  whenOver(() => {
    if (held?.worker.state === "installed") offer(held.worker, held.save);
  });
};

const take = (worker, save) => {
  agreed = true;
  save();
  worker.postMessage("update");
};

const offer = (worker, save) => {
  if (reasonsToWait.some((running) => running())) {
    held = { worker, save };
    return;
  }
  held = null;
  notice("update", t("update-ready"), [[t("update-now"), () => take(worker, save)]]);
};

const UNFETCHED = t("update-unfetched");
const ICON = t("offline-icon");
const NO_NEWER = t("update-none");

// Takes the newer build at once, whatever runs: pots are kept and go on. Resolves to what hinders it, if anything.
export const updateNow = async (save) => {
  const registration = await navigator.serviceWorker?.getRegistration();
  if (!registration) { // nothing is kept here: what comes over the wire is the newest
    save();
    location.reload();
    return "";
  }
  try {
    if (!registration.waiting) await registration.update();
  } catch {
    return UNFETCHED;
  }
  const next = registration.waiting ?? registration.installing;
  if (!next) return NO_NEWER;
  return await taken(next, save) ? "" : UNFETCHED;
};

const over = (worker, state) => new Promise((done) => {
  const look = () => { if (worker.state !== state) done(worker.state); };
  worker.addEventListener("statechange", look);
  look();
});

// Whether it came whole; then it takes the place of the one before, and this page is loaded anew.
const taken = async (worker, save) => {
  agreed = true; // what it says of itself is not told
  if (await over(worker, "installing") === "redundant") {
    agreed = false;
    return false;
  }
  save();
  worker.postMessage("update");
  return true;
};

// Another language for this phone, at once: pots are kept and go on. Resolves to what hinders it, if anything.
export const turnLanguage = async (language, root, save) => {
  const before = spoken();
  const workers = navigator.serviceWorker;
  speak(language, root);
  if (!workers) {
    save();
    if (document.documentElement.dataset.files === undefined) location.reload(); // the server says it
    return t("language-unkept");
  }
  try {
    const { controller } = workers;
    const registration = await workers.register(new URL(workerOf(language), root), { updateViaCache: "none" });
    const next = registration.installing ?? registration.waiting;
    if (next && !(await taken(next, save))) throw new Error("not whole");
    if (!next || !controller) { // it has its place already, or the first of this page takes it without a word
      if (next) await over(next, "installed").then(() => over(next, "activating"));
      save();
      location.reload();
    }
    return "";
  } catch {
    speak(before, root);
    return t("language-unfetched");
  }
};

// An iPhone's browser has an icon that keeps a copy of its own, and says whether it was opened by it.
const ready = (worker) => {
  if (/** @type {any} */ (navigator).standalone === false) once("icon", ICON);
  once("ready", t("offline-ready"));
  worker.postMessage("face"); // nothing waits for it
};

// unkept: told where this page finds that nothing keeps the app.
const follow = (worker, registration, save, unkept) => worker?.addEventListener("statechange", () => {
  if (worker.state === "redundant" && !whole.has(worker)) { // what hinders now stays before it
    behind(notice("half", navigator.serviceWorker.controller ? HALF_UPDATE : HALF));
    if (!navigator.serviceWorker.controller) unkept();
  }
  whole.add(worker); // past its first step, all of it is there
  // newer than what? A first one may be told to be installed when it has taken this page already
  if (worker.state === "installed" && ![null, worker].includes(registration.active) && !agreed) {
    if (spoken() === shown()) offer(worker, save);
    else take(worker, save); // it brings the language that was chosen
  }
  if (worker.state === "activated" && !agreed) {
    if (spoken() === shown()) ready(worker);
    else location.reload();
  }
});

const watch = (registration, first, save, unkept) => {
  const { active, installing, waiting } = registration;
  if (waiting && active) offer(waiting, save);
  follow(installing ?? active, registration, save, unkept); // it may have been found before anybody listened
  if (first && active?.state === "activated") ready(active); // nor may anybody hear the end of it
  registration.addEventListener("updatefound", () => follow(registration.installing, registration, save, unkept));
};

// An update another tab agreed to reloads this one too, once; on a first visit the first change is no update. Listened
// for from the beginning: it may come while this tab is still starting.
export const followUpdates = (save) => {
  const workers = navigator.serviceWorker;
  workers?.addEventListener("message", async ({ data }) => {
    if (!data?.damaged) return;
    const said = t("offline-damaged", { part: data.damaged.split("/").pop() });
    const { waiting } = data.waits ? await workers.getRegistration() : {};
    if (says("damaged", `${said} ${waiting ? WHOLE : MEND}`)) return; // each start of the engine finds it damaged anew
    if (waiting) notice("damaged", `${said} ${WHOLE}`, [[t("update-now"), () => take(waiting, save)]]).dataset.kind = "heal";
    else if (!document.querySelector("[data-kind=heal]")) behind(notice("damaged", `${said} ${MEND}`));
  });
  let leaving = false;
  let controlled = Boolean(workers?.controller);
  workers?.addEventListener("controllerchange", () => {
    if (controlled && !leaving) {
      leaving = true;
      save();
      location.reload();
    }
    controlled = true;
  });
};

export const startOffline = async (root, save, unkept) => {
  if (!("serviceWorker" in navigator)) {
    if (!window.isSecureContext) once("plain", PLAIN);
    unkept();
    return;
  }
  try {
    const first = !navigator.serviceWorker.controller;
    watch(await navigator.serviceWorker.register(new URL(workerOf(spoken()), root), { updateViaCache: "none" }), first, save, unkept);
  } catch {
    once("unkept", t("offline-unkept"));
    unkept();
  }
};
