// Any screen that is a form and its answers: answers at each key press, keeps what was typed, makes the link.
import { bring, isLink, ofServer } from "../share/opened_link.js";
import { keepForm, keptWithItsOwn, things, withItsOwn } from "../form/beside.js";
import { hold, takeOwn } from "../form/choices.js";
import { EngineFault, EngineMissing, LONGEST_TYPED, newest } from "../engine/engine.js";
import { comesApart, figureFields, fill, held, openAround, pairs, putAway, settle, settleTools, settleUnit, showErrors, spelled, showUnderstood, turnUnits } from "../form/form.js";
import { keepTyped, offerKit } from "../kit/kit.js";
import { draw } from "../answer/figure.js";
import { blankAnswers, clearAnswers, showAnswers, showFirst, showWrong, spoken } from "../answer/lines.js";
import { atFirst, recall, recallAnswer, rememberAnswer } from "../form/memory.js";
import { notice, once } from "../page/notice.js";
import { watchOld } from "../answer/stale.js";
import { addLike, copyRow, moveRow, removeRow, rowsOf, showRows } from "../form/rows.js";
import { choose, units, whenUnits } from "../page/settings.js";
import { withPart } from "../offline/parts.js";
import { openShare, prepare } from "../share/share.js";
import { edited, offerUndo, shown } from "../form/undo.js";
import { bound, t, write } from "../page/words.js";

const BOUNCE = 800; // ms from a tap within which the same key is not tapped again
const PATIENCE = 1000; // ms that a tap waits for the figures that it is of
const QUIET = 600; // ms without a key press before the answer is spoken
const NO_ENGINE = t("engine-missing.server");
const NO_SERVER = t("engine-missing");
const exported = "files" in document.documentElement.dataset; // files on some host, with no server of ours behind them
const ourFault = (error) => (error instanceof EngineFault ? t("page-our-fault.why", { why: error.message }) : t("page-our-fault"));
const PUT_AWAY = t("pick-put-away");
const NOT_OLD = t("page-not-old");
const key = (typed) => JSON.stringify(typed);
const kindOf = (caution) => caution.replace(/\d+/g, ""); // other figures are the same caution

// eslint-disable-next-line max-lines-per-function -- One function: the state of one screen, which all that it listens to shares
export const mount = (screen, main) => {
  const form = main.querySelector("[data-form]");
  const status = document.querySelector("[data-status]");
  let speaking = 0;

  let latest = null; // the pairs that were asked last
  let touched = false;
  let refused = []; // by what the form is for, until something is typed
  let urgent = ""; // another caution than before, still to be announced

  const old = watchOld(main, key(pairs(form)));
  // at the fields, and in the place of the answer what leads to them
  const mark = (errors) => {
    const homeless = showErrors(form, errors);
    showWrong(main);
    return homeless;
  };
  const clear = () => {
    clearAnswers(main);
    old.shown("");
  };

  const show = (got, error, asked) => {
    clearTimeout(speaking);
    if (!form.isConnected) return; // an answer that comes late belongs to no other screen
    if (latest && asked.pairs !== latest) return; // nor to what is typed by now
    main.dataset.shown = "";
    if (error instanceof EngineMissing) {
      if (!exported) form.classList.replace("live", "alone"); // the form is a plain one again, and the server answers it
      const why = exported || main.querySelector("[data-listing]") ? NO_SERVER : NO_ENGINE; // a list asks no server
      notice("engine", t("card-line.rough", { line: why, rough: error.message }));
      if (touched) clear();
      return;
    }
    if (error) {
      clear();
      mark([{ field: lastTouched(form), message: ourFault(error) }]);
      return;
    }
    const errors = got.answers.flatMap(([, answer]) => answer.errors).concat(refused);
    form.classList.replace("alone", "live");
    const homeless = mark(errors);
    showAnswers(main, got.answers);
    showRows(form, got.answers);
    showUnderstood(form, got.understood);
    const caution = document.querySelector("[data-caution]");
    const now = bound(got.bar ?? got.caution);
    if (kindOf(caution.textContent) !== kindOf(now)) urgent = now;
    write(caution, now);
    write(document.querySelector(".foot [data-whole]"), got.bar === got.caution ? "" : bound(got.caution));
    draw(document.querySelector("[data-signs]"), got.signs ?? []); // an answer that an older build kept has none
    old.shown(key(asked.pairs));
    speaking = setTimeout(() => {
      if (!form.isConnected) return;
      const wrong = [...form.querySelectorAll("[data-error]:not([data-asks])")].map((one) => one.textContent);
      const told = [urgent, ...homeless, ...wrong, spoken(got.answers)].filter(Boolean).join(" ");
      urgent = "";
      write(status, told);
      if (!isLink(form) && asked.pairs === latest) rememberAnswer(screen, spelt(), got);
    }, QUIET);
  };
  /** @type {(value?: unknown) => void} */
  let full = () => {};
  const filled = new Promise((resolve) => { full = resolve; }); // by what is kept, or answered before that
  const answer = newest((got, error, asked) => {
    show(got, error, asked);
    full();
    if (got) form.dispatchEvent(new Event("answered"));
  });
  const follows = main.querySelectorAll("[data-follows]"); // what does not wait for the rest
  const first = newest((got, error, asked) => {
    if (got && form.isConnected) {
      showFirst(follows, got.answers);
      if (got.answers.length) old.firstShown(key(asked.pairs));
    }
    if (asked.pairs === latest) answer({ screen, pairs: latest }); // the engine is at work while this is painted
  });
  const refresh = (typed = pairs(form)) => {
    latest = typed;
    prepare(screen, typed);
    old.asked(key(typed));
    if (follows.length) first({ first: screen, pairs: typed });
    else answer({ screen, pairs: typed });
  };

  let chosen = things(screen, form);
  const keepTyping = (typed) => {
    chosen = things(screen, form);
    return keepForm(screen, form, typed);
  };
  // its own timings and the like, of the thing that is chosen by now
  const ownBeside = () => {
    const found = isLink(form) ? null : keptWithItsOwn(screen, form, recall(screen) ?? [], pairs(form));
    if (!found) {
      chosen = things(screen, form);
      return false;
    }
    fill(form, found);
    keepTyping(found);
    return true;
  };

  // field: the one that was typed in, where only its own figure is new and no choice
  const changed = (field = null) => {
    if (!form.isConnected) return; // another screen is shown, and may hold other words of this one
    settleTools(form, field);
    const typed = pairs(form);
    refused = [];
    refresh(typed); // first, so that the engine is at work while the rest is done here
    touched = true;
    form.dataset.typed = "yes";
    if (field) settleUnit(field);
    else settle(form);
    if (!isLink(form)) hold(form);
    edited(form);
    const kept = isLink(form) ? holdHere(held(form)) : keepTyping(typed);
    if (!kept) once("unkept-typed", t("store-unkept"));
  };

  const refuse = (errors) => {
    refused = errors;
    mark(errors);
  };

  // what is kept of this screen says its own units until it is typed in again
  const counts = (system) => {
    if (!form.isConnected) return;
    turnUnits(form, system);
    refresh();
  };
  counting = counts;

  const inSight = (field) => {
    openAround(field);
    field.closest(".field").scrollIntoView({ block: "center" });
  };

  form.classList.add("live");
  for (const tool of form.querySelectorAll("[data-add-row], .row-tools")) tool.hidden = false;
  form.addEventListener("input", ({ target }) => { // three megabytes cost a phone seconds before anybody can refuse them
    if (target.value.length > LONGEST_TYPED) target.value = target.value.slice(0, LONGEST_TYPED);
  }, { capture: true });
  form.addEventListener("input", ({ target }) => {
    if (target.name === "units") {
      choose("units", target.value);
      return;
    }
    target.removeAttribute("data-untouched");
    const before = latest ?? pairs(form);
    const picked = target.matches("[data-pick]");
    const figures = picked && putAway(form, target);
    const own = picked && !isLink(form) && withItsOwn(screen, form, chosen, pairs(form));
    const gone = figures || Boolean(own);
    if (own) fill(form, own);
    const apart = comesApart(form, target);
    changed(target.matches("input:not([type=radio], [type=checkbox])") && !apart ? target : null);
    if (gone) offerUndo(form, "apart", PUT_AWAY, () => { fill(form, before); changed(); });
    if (picked && !target.value) inSight(figureFields(form, target.name)[0]); // "typed below" shows where
  });
  form.addEventListener("submit", (event) => {
    event.preventDefault();
    if (form.classList.contains("live")) changed();
    else location.assign(ofServer(location.pathname, pairs(form))); // a thing of the kit by its figures
  });
  form.addEventListener("focusin", (event) => { form.dataset.touched = event.target.name ?? ""; });
  form.addEventListener("keydown", downColumn);
  form.addEventListener("click", (event) => rowTool(event, form, changed));
  const LEADS = "[data-lead], [data-keep-pour]";
  // the same key of the new answer, if it has one
  const onceCurrent = async ({ textContent }) => {
    if (await old.current(PATIENCE)) [...main.querySelectorAll(LEADS)].find((lead) => lead.textContent === textContent)?.click();
    else if (old.isOld()) notice("old", NOT_OLD);
  };
  let waits = null;
  let tapped = null;
  let at = 0;
  // what an old answer leads to would carry its figures on; and a finger that bounces taps once
  form.addEventListener("click", (event) => {
    const lead = event.target.closest(LEADS);
    if (!lead) return;
    const isOld = old.isOld();
    const bounced = lead === tapped && event.timeStamp - at < BOUNCE;
    if (isOld || bounced) {
      event.preventDefault();
      event.stopImmediatePropagation();
    } else [tapped, at] = [lead, event.timeStamp];
    if (isOld) waits ??= onceCurrent(lead).finally(() => { waits = null; });
  }, { capture: true });
  main.querySelector("[data-to-wrong]")?.addEventListener("click", ({ target }) => {
    const lead = target.closest("[data-wrong]");
    const field = lead && form.elements.namedItem(lead.dataset.wrong);
    if (!field) return;
    inSight(field);
    field.focus({ preventScroll: true });
  });
  form.addEventListener("click", ({ target }) => {
    const keep = target.closest("[data-keep-typed]");
    if (keep) keepTyped(form, form.elements.namedItem(keep.dataset.keepTyped), changed, refuse);
  });
  const button = document.querySelector("[data-share]");
  if (button) {
    button.hidden = false;
    button.onclick = openShare;
  }
  prepare(screen, pairs(form)); // for a tap that comes before the first question

  for (const print of main.querySelectorAll("[data-print]")) {
    print.hidden = false;
    print.onclick = () => window.print();
  }

  for (const one of main.querySelectorAll("[data-files]")) one.hidden = false;
  for (const made of main.querySelectorAll("[data-file]")) {
    made.hidden = false;
    made.onclick = () => withPart("kit/files.js", ({ hand }) => hand(made.dataset.file, pairs(form), main.querySelector("[data-day]")?.value));
  }

  const blank = () => {
    blankAnswers(main);
    old.shown("");
  };
  const spelt = () => [units(), ...spelled(form)]; // what was typed bare may come back with its unit
  const showKept = (kept) => {
    try {
      show(kept, null, { pairs: latest ?? pairs(form) });
    } catch { // it was not kept whole
      blank();
    }
  };

  const served = location.search.length > 1 && !("unanswered" in main.dataset); // what the server answered stands
  const answeredIn = form.dataset.units;
  const brought = bring(screen, main, { again: () => { takeOwn(form); settle(form); refresh(); }, changed });
  turnUnits(form, units());
  const kept = recallAnswer(screen, spelt());
  const stands = served || !(location.search.length > 1 || (recall(screen) ?? atFirst(screen)));
  if (kept) showKept(kept);
  else if (!stands || answeredIn !== units()) blank();
  else old.shown(key(pairs(form))); // the server's figures are of this form, settled or not
  brought.then(() => refresh());
  offerKit(form).then((any) => {
    if (any) fill(form, held(form));
    if (isLink(form)) return;
    const own = takeOwn(form);
    if (!ownBeside() && !own) return;
    settle(form);
    refresh();
    const found = recallAnswer(screen, spelt()); // of the thing itself, not of its figures
    if (found) showKept(found);
  }).finally(() => { if (main.dataset.shown !== undefined) full(); });
  if (stands || kept) full();
  shown(form);
  // whoever pours by a link's values has taken them
  const accept = () => { if (isLink(form)) form.dispatchEvent(new Event("accept")); };
  return { form, refresh, changed, refuse, brought, accept, filled };
};

// What is typed over a link's values stays with its address: a reload and the way back show it.
const holdHere = (typed) => {
  try {
    history.replaceState({ typed }, "");
  } catch { /* too much, or too often: it stands in the form */ }
  return true;
};

// the screen that is shown; the page hears of other units once
/** @type {(system: string) => void} */
let counting = () => {};
whenUnits((system) => counting(system));

// Numbers go down a column: the key for done leads to the same field of the next row, behind the last to the key for one more.
const downColumn = (event) => {
  const { target } = event;
  const row = target.closest("[data-row]");
  const group = row?.closest("[data-apart]");
  if (event.key !== "Enter" || !group || !target.matches("input")) return;
  event.preventDefault();
  const place = [...row.querySelectorAll("[name]")].indexOf(target);
  const next = row.nextElementSibling;
  row.open = !next;
  if (next) next.open = true;
  const field = next ? next.querySelectorAll("[name]")[place] : group.querySelector("[data-add-row]");
  field.focus();
  field.select?.();
};

// Another row, or one away, up or down; what is taken away can be brought back.
const rowTool = ({ target }, form, changed) => {
  const group = target.closest("[data-add-row], [data-row-up], [data-row-down], [data-row-copy], [data-row-remove]")?.closest("[data-group]");
  if (!group) return;
  const row = target.closest("[data-row]");
  let removed = null;
  if (!row) {
    const added = addLike(group);
    for (const other of rowsOf(group)) other.open = other === added;
    added?.querySelector("input")?.focus();
  } else if (target.closest("[data-row-copy]")) {
    copyRow(group, row);
  } else if (target.closest("[data-row-remove]")) {
    const before = pairs(form);
    const called = row.querySelector(".row-name").textContent;
    const near = row.nextElementSibling ?? row.previousElementSibling;
    removeRow(group, row);
    (near ?? group).querySelector("summary, [data-row-remove], [data-add-row]").focus();
    removed = () => offerUndo(form, "row", t("row-removed", { called }), () => {
      fill(form, before);
      changed();
      form.dispatchEvent(new Event("undone"));
    });
  } else {
    moveRow(group, row, target.closest("[data-row-up]") ? -1 : 1);
    row.scrollIntoView({ block: "nearest" });
    target.closest("button").focus();
  }
  changed();
  removed?.();
};

const lastTouched = (form) => form.dataset.touched || form.querySelector("[data-field]").dataset.field;
