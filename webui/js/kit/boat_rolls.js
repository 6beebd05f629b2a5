// The boat's cut from the kit's rolls: taken into its list, and what was cut taken off them.
import { ask } from "../engine/engine.js";
import { fill, pairs } from "../form/form.js";
import { offerUndo } from "../form/undo.js";
import { apart } from "../page/lists.js";
import { notice, unanswered } from "../page/notice.js";
import { t } from "../page/words.js";
import { whenChanged } from "../store/store.js";
import { cutOff, differ, leftOf, rollsOf, shorten, stand, takeIn } from "./rolls.js";

export const start = ({ form, changed, brought }) => {
  const use = form.querySelector("[data-use-rolls]");
  const cut = form.querySelector("[data-cut-rolls]");
  let rolls = [];
  const settle = () => {
    if (!form.isConnected) return;
    use.hidden = !differ(form, rolls);
    cut.hidden = !stand(form, rolls);
  };
  const read = async () => { rolls = await rollsOf(form).catch(() => rolls); settle(); };
  const refilled = (before) => { fill(form, before); changed(); settle(); };

  use.addEventListener("click", () => {
    const before = pairs(form);
    const count = takeIn(form, rolls);
    if (!count) {
      notice("row", t("boat-full"));
      return;
    }
    changed();
    settle();
    offerUndo(form, "row", t("boat-rolls", { count }),
      () => refilled(before));
  });
  cut.addEventListener("click", async () => {
    const answer = await ask({ move: "boat", pairs: pairs(form) }).catch(unanswered);
    if (!answer) return;
    const { errors, lines } = answer;
    const cuts = errors.length ? [] : cutOff(form, rolls, lines);
    if (!cuts.length) {
      notice("cut", errors[0]?.message ?? t("boat-no-roll"));
      return;
    }
    const done = await shorten(form, cuts);
    if (!done.length) return;
    const left = apart(done.map(([roll]) => leftOf(form, roll)));
    notice("cut", t("boat-left", { left }), [[t("page-undo"), () => shorten(form, done)]]);
  });
  form.addEventListener("input", settle);
  form.addEventListener("click", () => setTimeout(settle)); // rows come and go
  whenChanged((store) => { if (form.isConnected && store !== "log" && store !== "pots") read(); });
  brought.then(read);
};
