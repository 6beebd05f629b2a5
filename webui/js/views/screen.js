// Any screen that is a form and its answers: answers at each key press, keeps what was typed, makes the link.
import { bring } from "../bring.js";
import { EngineMissing, newest } from "../engine.js";
import { addRow, fill, pairs, settle, showErrors, showUnderstood } from "../form.js";
import { offerKit } from "../kit.js";
import { blankAnswers, clearAnswers, showAnswers, spoken } from "../lines.js";
import { recall, recallAnswer, remember, rememberAnswer } from "../memory.js";
import { notice, once } from "../notice.js";
import { openShare, prepare } from "../share.js";

const QUIET = 600; // ms without a key press before the answer is spoken
const NO_ENGINE = "The part that calculates did not load. With a connection, \u201cWork it out\u201d asks the server instead.";
const OUR_FAULT = "That could not be worked out. It is not your input; change something and it tries again.";

export const mount = (screen, main) => {
  const form = main.querySelector("[data-form]");
  const answers = main.querySelector("[data-answers]");
  const status = document.querySelector("[data-status]");
  let speaking = 0;

  let touched = false;

  const show = (got, error) => {
    if (error instanceof EngineMissing) {
      form.classList.remove("live"); // the form is a plain one again, and the server answers it
      notice("engine", NO_ENGINE);
      if (touched) clearAnswers(answers);
      return;
    }
    if (error) {
      clearAnswers(answers);
      showErrors(form, [{ field: lastTouched(form), message: OUR_FAULT }]);
      return;
    }
    const errors = got.answers.flatMap(([, answer]) => answer.errors);
    const homeless = showErrors(form, errors);
    showAnswers(answers, got.answers);
    showUnderstood(form, got.understood);
    document.querySelector("[data-caution]").textContent = got.caution;
    prepare(screen, got.link);
    clearTimeout(speaking);
    speaking = setTimeout(() => {
      status.textContent = homeless.concat(spoken(got.answers)).join(" ");
      rememberAnswer(screen, pairs(form), got);
    }, QUIET);
  };
  const answer = newest(show);
  const refresh = () => answer({ screen, pairs: pairs(form) });

  const changed = () => {
    touched = true;
    settle(form);
    const kept = remember(screen, pairs(form));
    if (!kept) once("unkept-typed", "This browser keeps nothing: what you type is gone when the page closes.");
    refresh();
  };

  form.classList.add("live");
  for (const add of form.querySelectorAll("[data-add-row]")) add.hidden = false;
  form.addEventListener("input", changed);
  form.addEventListener("submit", (event) => {
    if (!form.classList.contains("live")) return;
    event.preventDefault();
    changed();
  });
  form.addEventListener("focusin", (event) => { form.dataset.touched = event.target.name ?? ""; });
  form.addEventListener("click", (event) => {
    const group = event.target.closest("[data-add-row]")?.closest("[data-group]");
    if (group) addRow(group)?.querySelector("input")?.focus();
  });
  const button = document.querySelector("[data-share]");
  if (button) {
    button.hidden = false;
    button.onclick = openShare;
  }

  const brought = bring(screen, form, changed);
  settle(form);
  const painted = recallAnswer(screen, pairs(form));
  if (painted) show(painted, null);
  else if (recall(screen)) blankAnswers(answers);
  brought.then(refresh);
  offerKit(form).then(() => { fill(form, pairs(form)); });
  return { form, answers, refresh, changed };
};

const lastTouched = (form) => form.dataset.touched || form.querySelector("[data-error]").dataset.error;
