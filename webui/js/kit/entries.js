// Kept things in a list: each by name, with what the engine says of it, and with the keys to change or remove it.
import { ask } from "../engine/engine.js";
import { notice } from "../page/notice.js";
import { units } from "../page/settings.js";
import { putBack, remove } from "../store/store.js";
import { bound, t } from "../page/words.js";

const NO_FIGURES = t("entry-no-figures");

// One of them.
export const entry = ({ id, title, beside, details, acts }) => {
  const item = document.createElement("li");
  item.className = "entry";
  item.dataset.entry = id;
  const name = document.createElement("h3");
  name.className = "entry-name";
  name.id = `entry-${id}`;
  name.textContent = title;
  const aside = document.createElement("p");
  aside.className = "entry-beside";
  aside.textContent = beside;
  aside.hidden = !beside;
  const lines = details.map((text) => {
    const line = document.createElement("p");
    line.className = "entry-line";
    line.textContent = bound(text);
    return line;
  });
  const actions = document.createElement("p");
  actions.className = "actions";
  actions.append(...acts.map(([label, act]) => {
    const button = document.createElement("button");
    button.type = "button";
    button.className = "button";
    button.textContent = label;
    button.setAttribute("aria-describedby", name.id);
    button.addEventListener("click", act);
    return button;
  }));
  item.append(name, aside, ...lines, actions);
  return item;
};

// What is kept is listed late, and pushes nothing away as it comes: until then each list has the room that it took last, and
// the words for none have theirs. Returns what is called once all of it stands there.
const ROOM = "covemix.told.lists.";
export const keepRoom = (screen, main) => {
  const listing = main.querySelector("[data-listing]");
  const late = [...listing.querySelectorAll("[data-none], [data-entries], [data-timings]")];
  try {
    JSON.parse(localStorage[ROOM + screen]).forEach((high, at) => {
      late[at].style.minBlockSize = `${high}px`;
      if (!high && late[at].matches("[data-none]")) listing.dataset.read = "";
    });
  } catch { /* none is known */ }
  return () => {
    listing.dataset.read = "";
    for (const one of late) one.style.minBlockSize = "";
    try { if (!listing.hidden) localStorage[ROOM + screen] = JSON.stringify(late.map((one) => one.offsetHeight)); } catch { /* full */ }
  };
};

const MOST = 240; // letters of it in sight; the file that Kit saves has them all
const CANNOT = t("entry-unread.why");

// A row that this build cannot read, as it stands in the store. The others stand beside it as ever.
export const unreadEntry = (store, row) => {
  const text = JSON.stringify(row);
  const drop = async () => {
    if (await remove(store, row.id)) notice(store, t("entry-unread.removed"), [[t("page-undo"), () => putBack(store, row)]]);
  };
  const item = entry({ id: `unread-${row.id}`, title: t("entry-unread"), beside: CANNOT,
    details: [text.length > MOST ? `${text.slice(0, MOST)} …` : text], acts: [[t("entry-remove"), drop]] });
  item.dataset.unread = store;
  return item;
};

// What the engine says of a kept thing: the errors are said too, a thing of an older time may need putting right.
export const said = ({ errors, lines }) => (errors.length ? errors.map((one) => one.message)
  : lines.filter((line) => line.rank !== "more").map((line) => (line.rank === "say" ? line.text : t("card-line", line))))
  .filter(Boolean);

// It is told in the phone's units, whatever it was typed in; null where nothing answers.
export const askOf = ({ move, typed }) => ask({ move, typed: { ...typed, units: units(), units_typed: typed.units ?? "metric" } })
  .catch(() => null);

// What is kept is shown also where nothing answers.
export const toldBy = (answer) => (answer ? said(answer) : [NO_FIGURES]);
export const toldOf = async (thing) => toldBy(await askOf(thing));

// What a batch of the log is called: in somebody's own words, or by what is known of it.
export const nameBy = (answer, { typed }) => answer?.lines.find(({ name }) => name === "summary")?.label ?? (typed.what || t("log-what.none"));
export const batchName = async (batch) => batch.typed.what || nameBy(await askOf({ move: "log", typed: batch.typed }), batch);
