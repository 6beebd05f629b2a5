// Kit: the builder's own things by kind, what this phone is set to, and a copy of everything.
import { goneOne } from "../form/choices.js";
import { editing } from "./editor.js";
import { ask } from "../engine/engine.js";
import { entry, keepRoom, said, toldOf, unreadEntry } from "../kit/entries.js";
import { keepThing, learn } from "../kit/kit.js";
import { laidBy } from "../kit/log.js";
import { soon, withPart } from "../offline/parts.js";
import { notice } from "../page/notice.js";
import { choose, chosen, units, whenUnits } from "../page/settings.js";
import { today } from "../phone/download.js";
import { canSay, prime, whenVoices } from "../phone/speech.js";
import { kept, put, putBack, remove, unread, whenChanged } from "../store/store.js";
import { figureFields, given } from "../form/form.js";
import { offerRowUndo } from "../form/undo.js";
import { says, typedOf } from "../form/units.js";
import { t } from "../page/words.js";

// A bare number is kept with its unit: the phone may count in others by then.
const typedIn = (form, record) => {
  const own = figureFields(form, record)
    .filter(given)
    .map((field) => [field.name.slice(record.length + 1), says(field)]);
  const base = typedOf(form.elements.namedItem(record));
  delete base.id;
  return { ...base, ...Object.fromEntries(own) };
};

const pairsOf = ({ record, typed }) => [["kind", record],
  ...Object.entries(typed).map(([key, text]) => [`${record}.${key}`, text])];

const BACKUP = "views/backup.js";
const STORES = ["kit", "pots"]; // the log shows its own rows that cannot be read
let counted = () => {}; // the kit that is shown, in other units
whenUnits(() => counted());

const byAge = (a, b) => a.id - b.id;

// Field by field: what differs from what the form opened with, else what is kept by now.
const merged = (opened, mine, now) => Object.fromEntries(
  [...new Set([...Object.keys(mine), ...Object.keys(now)])]
    .map((name) => [name, mine[name] === opened[name] ? now[name] : mine[name]])
    .filter(([, text]) => text !== undefined));

// eslint-disable-next-line max-lines-per-function -- One function: the state of one screen, which all that it listens to shares
export const mount = (screen, main) => {
  const form = main.querySelector("[data-form]");
  main.querySelector("[data-reference]").addEventListener("click", (event) => {
    event.preventDefault();
    const { href } = event.currentTarget;
    withPart("kit/reference.late.js", ({ open }) => open(href));
  });

  // Another tab may have kept the same thing since it was opened here: what was changed here goes before, the rest is as it
  // stands by now. One that is gone meanwhile is kept as a new one.
  const keep = async (_, thing) => {
    const record = form.elements.namedItem("kind").value;
    const typed = typedIn(form, record);
    const now = thing && (await kept("kit")).find(({ id }) => id === thing.id);
    return keepThing({ made: Date.now(), ...thing, record, typed: now ? merged(thing.typed, typed, now.typed) : typed });
  };
  const openForm = editing(screen, main, keep);

  const focusName = (record) => () => {
    const figures = form.querySelector(`[data-record="${record}"]`);
    figures.open = true;
    return form.elements.namedItem(`${record}.name`);
  };
  const change = (thing) => openForm(pairsOf(thing), thing, focusName(thing.record));
  const copy = async ({ record, typed }) => {
    const id = await put("kit", { record, typed: { ...typed, name: t("kit-copy", { name: typed.name }).slice(0, 60) }, made: Date.now() });
    if (id !== undefined) offerRowUndo("kit", id, "kit", t("kit-copied", { name: typed.name }), () => remove("kit", id));
  };
  const drop = async (thing) => {
    if (!(await remove("kit", thing.id))) return;
    const chooseAgain = goneOne(thing);
    const undo = async () => {
      const id = await putBack("kit", thing);
      if (id !== undefined) chooseAgain(id);
    };
    notice("kit", t("kit-removed", { name: thing.typed.name }), [[t("page-undo"), undo]]);
  };

  const teach = async ({ id, typed }, learned) => {
    const back = await learn(id, learned);
    if (back) offerRowUndo("kit", id, "kit", t("kit-taught", { name: typed.name }), back);
  };

  // What the log tells of these people and they do not have yet.
  const toLearn = async (thing) => {
    if (thing.record !== "people") return null;
    const rows = await laidBy(thing.typed.name);
    const own = rows.length ? await ask({ move: "own_rates", typed: { rows, units: units(), units_typed: "metric" } }).catch(() => null) : null;
    const learned = own?.leads[0]?.pairs[0][1];
    return learned && learned !== thing.typed.learned ? { learned, said: said(own) } : null;
  };

  const shown = async (thing) => {
    const own = await toLearn(thing);
    return entry({
      id: thing.id,
      title: thing.typed.name ?? "",
      beside: "",
      details: (await toldOf({ move: "kit", typed: { kind: thing.record, [thing.record]: thing.typed, day: today() } })).concat(own?.said ?? []),
      acts: [...(own ? [[t("kit-use-rates"), () => teach(thing, own.learned)]] : []),
        [t("entry-change"), () => change(thing)], [t("entry-copy"), () => copy(thing)], [t("entry-remove"), () => drop(thing)]],
    });
  };

  const came = keepRoom(screen, main);
  let turn = 0;
  const list = async () => {
    const mine = ++turn;
    const shelves = [...main.querySelectorAll("[data-shelf]")];
    const known = new Set(shelves.map((shelf) => shelf.dataset.shelf));
    const all = (await kept("kit")).sort(byAge);
    const things = all.filter(({ record }) => known.has(record)); // of a kind that is no more it has no shelf
    const strange = (await Promise.all(STORES.map(async (store) => (await unread(store)).map((row) => unreadEntry(store, row))))).flat()
      .concat(all.filter(({ record }) => !known.has(record)).map((row) => unreadEntry("kit", row)));
    // at once: they wait for one start of the engine
    const rows = await Promise.all(things.map(async (thing) => [thing.record, await shown(thing)]));
    if (mine !== turn || !main.isConnected) return;
    for (const shelf of shelves) {
      const own = rows.filter(([record]) => record === shelf.dataset.shelf).map(([, row]) => row);
      shelf.querySelector("[data-entries]").replaceChildren(...own);
    }
    main.querySelector("[data-none]").hidden = things.length + strange.length > 0;
    const place = main.querySelector("[data-unread]");
    place.hidden = !strange.length;
    place.querySelector("[data-entries]").replaceChildren(...strange);
    came();
  };

  // a start row's own choices stand in the form, or the form's would go before them
  form.addEventListener("change", ({ target }) => {
    if (!target.matches("[data-pick]")) return;
    const typed = typedOf(target);
    for (const field of form.querySelectorAll(`[data-record="${target.name}"] select`)) {
      const text = typed[field.name.slice(target.name.length + 1)];
      if (text) field.value = text;
    }
  });
  for (const button of main.querySelectorAll("[data-add]")) {
    const record = button.dataset.add;
    button.addEventListener("click", () => openForm([["kind", record]], null, focusName(record)));
  }
  for (const field of main.querySelectorAll("[data-setting]")) {
    if (field.value === chosen(field.name.slice(4))) field.checked = true;
    field.addEventListener("change", () => {
      if (!choose(field.name.slice(4), field.value)) notice("settings", t("setting-unkept"));
    });
  }
  const voices = () => { main.querySelector("[data-no-voice]").hidden = canSay(); };
  prime();
  voices();
  whenVoices(voices);
  counted = () => {
    if (!main.isConnected) return;
    for (const field of main.querySelectorAll("[name=set-units]")) field.checked = field.value === units();
    list();
  };
  // what it does comes when it is opened, and its keys with it
  const copies = main.querySelector("[data-backup]");
  soon(BACKUP);
  copies.addEventListener("toggle", async () => {
    if (copies.open && !(await withPart(BACKUP, ({ startBackup }) => startBackup(main)))) copies.open = false;
  });
  if (location.hash === "#backup") copies.open = true; // a page outside of the app leads here
  whenChanged(() => { if (main.isConnected) list(); });
  return { filled: list() };
};
