// Figures that no longer belong to what is typed are marked as old, in words and crossed out, until the new ones stand.
import { dismiss } from "../page/notice.js";
import { t } from "../page/words.js";

const SOON = 280; // ms; most answers are there long before, and the mark is painted within 300
const TOLD = t("page-stale");

// key: what figures belong to, as one text; "" where none stand
export const watchOld = (main, key) => {
  const mark = main.querySelector("[data-old-mark]");
  const status = document.querySelector("[data-status]");
  const places = main.querySelectorAll("[data-follows]"); // they may be new before the rest is
  let standing = key;
  let early = null; // what the places that do not wait show
  let wanted = null;
  let timer = 0;
  /** @type {(came: boolean) => void} */
  let waiting = () => {};

  const lift = () => {
    clearTimeout(timer);
    timer = 0;
    if (!("old" in main.dataset)) return;
    delete main.dataset.old;
    waiting(true);
    mark.hidden = true;
    for (const place of places) delete place.dataset.fresh;
    if (status.textContent === TOLD) status.textContent = "";
    dismiss("old"); // the notice that asked to wait for them
  };
  const freshen = () => { for (const place of places) place.toggleAttribute("data-fresh", early === wanted); };
  const put = () => {
    if (!main.isConnected) return;
    main.dataset.old = "";
    mark.hidden = false;
    status.textContent = TOLD;
    freshen();
  };
  return {
    asked(asked) {
      wanted = asked;
      if (!standing || standing === asked) lift();
      else if ("old" in main.dataset) freshen();
      else timer ||= setTimeout(put, SOON); // counted from the first of several key presses
    },
    firstShown(shown) {
      early = shown;
      if ("old" in main.dataset) freshen();
    },
    shown(shown) {
      standing = early = shown;
      if (!standing || standing === wanted) lift();
    },
    // whoever taps before the mark stands sees it at once
    isOld() {
      if (standing && wanted && standing !== wanted) put();
      return "old" in main.dataset;
    },
    // resolves to whether the new ones came within that time [ms]
    current: (within) => new Promise((resolve) => {
      waiting = resolve;
      setTimeout(resolve, within, false);
    }),
  };
};
