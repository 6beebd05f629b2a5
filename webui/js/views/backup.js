// The part of Kit that writes everything to a file and reads it back: what would change stands there first.
import { Refused, bringBack, changes, counted, current, imports, readBackup, saveFile, undoImport } from "../kit/backup.js";
import { notice } from "../page/notice.js";
import { about } from "../pots/pots.js";
import { fits } from "../store/schema.js";
import { whenChanged } from "../store/store.js";
import { locales, t } from "../page/words.js";

const NAMED = 4; // rows told by name; of the others, how many
const NOTHING = t("backup-nothing");
const when = (time) => new Date(time).toLocaleString(locales(), { dateStyle: "medium", timeStyle: "short" });

const typedIn = (pot, name) => (Array.isArray(pot.typed) ? pot.typed : []).filter(Array.isArray).find(([key]) => key === name)?.[1];
const NAMES = {
  kit: (row) => row.typed?.name,
  log: (row) => row.typed?.what ?? row.filler,
  pots: (pot) => [typedIn(pot, "batch"), typedIn(pot, "place"), Number.isFinite(pot.started) && t("backup-begun", { when: when(pot.started) })]
    .filter(Boolean).join(", "),
};

const named = (rows, name) => {
  const names = rows.slice(0, NAMED).map((row) => name(row) || t("backup-nameless")).join("; ");
  return rows.length > NAMED ? t("backup-names", { names, count: rows.length - NAMED }) : names;
};

// way: "comes" or "goes"
const listed = (store, rows, way) => (rows.length
  ? [t("backup-changes", { way, store, count: rows.length, names: named(rows, NAMES[store]) })] : []);

const told = (made) => {
  const lines = Object.entries(made).flatMap(([store, { come, go }]) => [...listed(store, come, "comes"), ...listed(store, go, "goes")]);
  return lines.length ? lines : [NOTHING];
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

  const leave = () => { waiting = null; preview.hidden = true; file.value = ""; };

  const show = (mine) => {
    at("preview-words").textContent = t("backup-holds", { file: counted(waiting), phone: counted(mine) });
    const left = ended.length
      ? [t("backup-over", { count: ended.length, names: ended.slice(0, NAMED).map(NAMES.pots).join("; ") })]
      : [];
    list(at("preview-add"), told(changes(waiting, mine, false)).concat(left));
    list(at("preview-replace"), told(changes(waiting, mine, true)).concat(left));
    at("preview-pots").hidden = !mine.pots.length;
    at("preview-pots").textContent = t("backup-runs-on", { pots: mine.pots.map((pot) => NAMES.pots(pot)).join("; ") });
    preview.hidden = false;
    preview.scrollIntoView({ block: "start" });
  };

  file.addEventListener("change", async () => {
    error.hidden = preview.hidden = true;
    if (!file.files.length) return;
    try {
      [waiting, ended] = await withoutEnded(await readBackup(file.files[0]));
      const mine = await current();
      if (mine) show(mine);
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
    list(at("imports-list"), found.map((one) => `${when(one.when)}: ${told(Object.fromEntries(Object.keys(one.came)
      .map((store) => [store, { come: one.came[store], go: one.gone[store] }]))).join(". ")}`));
    at("undo-import").onclick = () => undoImport(newest.id);
  };
  whenChanged(showImports);
  showImports();
  return true;
};
