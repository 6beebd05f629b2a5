// Test cup: what it gave is kept with its system, in the kit where the system is from there.
import { fill, pairs } from "../form/form.js";
import { offerUndo } from "../form/undo.js";
import { learn, offerKit } from "../kit/kit.js";
import { mount as mountScreen } from "./screen.js";
import { t } from "../page/words.js";

export const mount = (screen, main) => {
  const view = mountScreen(screen, main);
  const { form, changed } = view;
  const show = async (typed) => {
    fill(form, typed);
    await offerKit(form);
    changed();
  };
  form.addEventListener("click", async (event) => {
    const link = event.target.closest("[data-lead]");
    const lead = link && JSON.parse(link.dataset.lead);
    if (lead?.screen !== screen) return;
    event.preventDefault();
    const [[name, text]] = lead.pairs;
    const [pick, field] = name.split(".");
    const before = pairs(form);
    const id = Number(form.elements.namedItem(pick).value.match(/^kit:(\d+)$/)?.[1]);
    const back = id ? await learn(id, text, null, field) : () => {};
    if (!back) return; // told by the store, or it is gone from the kit
    await show(id ? before : [...before.filter(([one]) => one !== name), [name, text]]);
    offerUndo(form, "lead", t("lead-done", { label: lead.label }), async () => { await back(); await show(before); });
  });
  return view;
};
