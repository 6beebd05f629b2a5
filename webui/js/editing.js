// A list and, in its place while one thing is added or changed, the form for it.
import { ask } from "./engine.js";
import { fill, pairs, settle } from "./form.js";
import { unanswered } from "./notice.js";
import { mount } from "./views/screen.js";

// keep(pairs, entry): stores it; resolves to undefined where that failed. Returns open(values, entry).
export const editing = (screen, main, keep) => {
  const listing = main.querySelector("[data-listing]");
  const section = main.querySelector("[data-editing]");
  const { form, changed, refuse } = mount(screen, main);
  let current = null;

  const turn = (edit, focus) => {
    listing.hidden = edit;
    section.hidden = !edit;
    const share = document.querySelector("[data-share]"); // of a list there is nothing to hand over
    if (share) share.hidden = !edit;
    window.scrollTo(0, 0);
    focus?.focus({ preventScroll: true });
  };
  const close = () => { current = null; turn(false, document.getElementById("main")); };

  const save = async () => {
    const typed = pairs(form);
    const asked = await ask({ screen, pairs: typed }).catch(unanswered);
    if (!asked) return;
    const { answers } = asked;
    const wrong = answers.flatMap(([, answer]) => answer.errors);
    if (wrong.length) {
      const field = form.elements.namedItem(wrong[0].field) ?? form.querySelector(`[data-error="${wrong[0].field}"]`);
      for (let fold = field?.closest("details"); fold; fold = fold.parentElement.closest("details")) fold.open = true;
      field?.focus?.();
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
  turn(false);
  return (values, entry, focus) => {
    current = entry;
    fill(form, values);
    settle(form);
    changed();
    turn(true, focus?.(form) ?? form.querySelector("input, select"));
  };
};
