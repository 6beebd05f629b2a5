// The part of Kit that writes everything to a file and reads it back: what would change stands there first.
import { Refused, bringBack, changes, counted, current, imports, readBackup, saveFile, undoImport } from "../kit/backup.js";
import { notice } from "../page/notice.js";
import { batchName } from "../kit/entries.js";
import { about } from "../pots/pots.js";
import { fits } from "../store/schema.js";
import { whenChanged } from "../store/store.js";
import { apart, listed as side } from "../page/lists.js";
import { locales, t } from "../page/words.js";

const NAMED = 4; // rows told by name; of the others, how many
const NOTHING = t("backup-nothing");
const when = (time) => new Date(time).toLocaleString(locales(), { dateStyle: "medium", timeStyle: "short" });

const typedIn = (pot, name) => (Array.isArray(pot.typed) ? pot.typed : []).filter(Array.isArray).find(([key]) => key === name)?.[1];
// In the words of the page: a filler by the row of its pick, a batch and a pot as the engine says them.
const NAMES = {
  kit: (row) => row.typed?.name,
  log: (row) => (fits("log", row) && row.typed ? batchName(row) : row.typed?.what ?? fillerNamed(row.filler)),
  pots: async (pot) => side([await potName(pot), typedIn(pot, "place"),
    Number.isFinite(pot.started) && t("backup-begun", { when: when(pot.started) })]),
};
const fillerNamed = (key) => [...document.querySelectorAll("[data-pick=filler] option")].find(({ value }) => key && value === key)?.textContent.trim() ?? key;
const potName = async (pot) => {
  const found = fits("pots", pot) && await about(pot).catch(() => null);
  return found ? found.answer.lines.find(({ name }) => name === "place")?.label : typedIn(pot, "batch");
};

const each = (rows, name) => Promise.all(rows.slice(0, NAMED).map(name));
const named = async (rows, name) => {
  const names = apart((await each(rows, name)).map((one) => one || t("backup-nameless")));
  return rows.length > NAMED ? t("backup-names", { names, count: rows.length - NAMED }) : names;
};

// way: "comes" or "goes"
const listed = async (store, rows, way) => (rows.length
  ? [t("backup-changes", { way, store, count: rows.length, names: await named(rows, NAMES[store]) })] : []);

const told = async (made) => {
  const lines = await Promise.all(Object.entries(made).flatMap(([store, { come, go }]) => [listed(store, come, "comes"), listed(store, go, "goes")]));
  return lines.flat().length ? lines.flat() : [NOTHING];
};

// A pot that was over long ago is not started again: the engine says which. One that cannot be told comes in as it is.
const isEnded = async (pot) => {
  if (!fits("pots", pot)) return false;
  const found = await about(pot).catch(() => null);
  return Boolean(found?.answer.lines.some(({ name }) => name === "long_ago"));
};
const withoutEnded = async (contents) => {
  const over = await Promise.all(contents.pots.map(isEnded));
  return [{ ...contents, pots: contents.pots.filter((_, place) => !over[place]) }, contents.pots.filter((_, place) => over[place])];
};

const list = (place, lines) => place.replaceChildren(...lines.map((line) => {
  const item = document.createElement("li");
  item.textContent = line;
  return item;
}));

// eslint-disable-next-line max-lines-per-function -- One function: the state of one screen, which all that it listens to shares
export const startBackup = (main) => {
  const at = (name) => main.querySelector(`[data-${name}]`);
  const inside = at("backup").querySelector(".fold-inside");
  if (!inside.hidden) return true;
  inside.hidden = false;
  const preview = at("preview");
  const error = at("import-error");
  const file = at("import");
  let waiting = null;
  let ended = []; // pots of the file that were over long ago

  at("export").addEventListener("click", saveFile);
  const { hostname } = location;
  at("own-address").hidden = !/^(?!127\.)[\d.]+$/.test(hostname); // a router may give it to another
  at("own-address").textContent = t("backup-address", { address: hostname });

  at("icon").hidden = /** @type {any} */ (navigator).standalone !== false; // an iPhone's browser, and not its icon

  const leave = () => { waiting = null; preview.hidden = true; file.value = ""; };

  const show = async (mine) => {
    at("preview-words").textContent = t("backup-holds", { file: counted(waiting), phone: counted(mine) });
    const left = ended.length
      ? [t("backup-over", { count: ended.length, names: apart(await each(ended, NAMES.pots)) })]
      : [];
    const holding = waiting;
    const [add, replace] = await Promise.all([false, true].map((whole) => told(changes(waiting, mine, whole))));
    const runs = await Promise.all(mine.pots.map(NAMES.pots));
    if (waiting !== holding) return; // another file by now
    list(at("preview-add"), add.concat(left));
    list(at("preview-replace"), replace.concat(left));
    at("preview-pots").hidden = !mine.pots.length;
    at("preview-pots").textContent = t("backup-runs-on", { pots: apart(runs) });
    preview.hidden = false;
    preview.scrollIntoView({ block: "start" });
  };

  file.addEventListener("change", async () => {
    error.hidden = preview.hidden = true;
    if (!file.files.length) return;
    try {
      [waiting, ended] = await withoutEnded(await readBackup(file.files[0]));
      const mine = await current();
      if (mine) await show(mine);
      else leave();
    } catch (problem) {
      error.textContent = problem instanceof Refused ? problem.message : t("backup-wrong");
      error.hidden = false;
      leave();
    }
  });

  const bring = async (whole) => {
    const id = await bringBack(waiting, whole);
    if (id === undefined) return; // told by the store
    leave();
    notice("import", whole ? t("backup-replaced") : t("backup-added"), [[t("page-undo"), () => undoImport(id)]]);
  };
  at("add-to-mine").addEventListener("click", () => bring(false));
  at("replace").addEventListener("click", () => bring(true));
  at("leave-it").addEventListener("click", leave);

  const showImports = async () => {
    const found = await imports();
    if (!main.isConnected) return;
    at("imports").hidden = !found.length;
    const [newest] = found;
    const lines = await Promise.all(found.map(async (one) => t("card-line", {
      label: when(one.when),
      text: apart(await told(Object.fromEntries(Object.keys(one.came).map((store) => [store, { come: one.came[store], go: one.gone[store] }])))),
    })));
    list(at("imports-list"), lines);
    at("undo-import").onclick = () => undoImport(newest.id);
  };
  whenChanged(showImports);
  showImports();
  return true;
};
