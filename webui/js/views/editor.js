// A list and, in its place while one thing is added or changed, the form for it.
import { ask } from "../engine/engine.js";
import { fill, openAround, pairs, settle } from "../form/form.js";
import { recallOpen, rememberOpen } from "../form/memory.js";
import { notice, unanswered } from "../page/notice.js";
import { mount } from "./screen.js";

// keep(pairs, entry): stores it; resolves to undefined where that failed. beside: fields outside the form that belong to
// what is typed. What is half typed comes back after a reload, with the entry it belongs to. Returns open(values, entry).
// eslint-disable-next-line max-lines-per-function -- One function: what is typed and not yet kept, which all that listens shares
export const editing = (screen, main, keep, beside = []) => {
  const listing = main.querySelector("[data-listing]");
  const section = main.querySelector("[data-editing]");
  const { form, changed, refuse, brought } = mount(screen, main);
  let current = null;

  const turn = (edit, focus) => {
    listing.hidden = edit;
    delete listing.dataset.early;
    section.hidden = !edit;
    const share = document.querySelector("[data-share]"); // of a list there is nothing to hand over
    if (share) share.hidden = !edit;
    window.scrollTo(0, 0);
    focus?.focus({ preventScroll: true });
  };
  const hold = () => rememberOpen(screen, { entry: current, beside: beside.map((field) => field.value) });
  const close = () => { current = null; rememberOpen(screen, null); turn(false, document.getElementById("main")); };

  const save = async () => {
    const typed = pairs(form);
    const asked = await ask({ screen, pairs: typed }).catch(unanswered);
    if (!asked) return;
    const { answers } = asked;
    const wrong = answers.flatMap(([, answer]) => answer.errors);
    if (wrong.length) {
      const field = form.elements.namedItem(wrong[0].field) ?? form.querySelector(`[data-error="${wrong[0].field}"]`);
      if (!field || field.type === "hidden") notice("unsaved", wrong[0].message);
      else {
        openAround(field);
        field.focus();
      }
      return;
    }
    const empty = answers.flatMap(([, answer]) => answer.lines).find((line) => line.name === "empty");
    if (empty) {
      const first = [...form.querySelectorAll("input[name]")].find((one) => !one.value && !one.closest("[hidden]"));
      refuse([{ field: first.name, message: empty.text }]);
      first.focus();
      return;
    }
    if ((await keep(typed, current)) !== undefined) close();
  };

  section.querySelector("[data-keep]").addEventListener("click", save);
  section.querySelector("[data-leave]").addEventListener("click", close);
  section.querySelector("[data-buttons]").hidden = false;
  section.querySelector("[data-plain]").hidden = true;
  for (const field of beside) field.addEventListener("input", hold);
  turn(false);
  const open = recallOpen(screen);
  if (open) {
    brought.then(() => { // the form holds by now what was typed last
      current = open.entry;
      beside.forEach((field, place) => { field.value = open.beside[place]; });
      for (const field of form.querySelectorAll("input[name]:not([type=radio], [type=checkbox])")) if (field.value) openAround(field);
      turn(true);
    });
  }
  return (values, entry, focus) => {
    current = entry;
    fill(form, values);
    settle(form);
    changed();
    hold();
    turn(true, focus?.(form) ?? form.querySelector("input, select"));
  };
};
