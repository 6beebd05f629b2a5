// The boat: the demo boat and an empty one, and the kit's rolls to cut from, each with the way back.
import { fill, pairs } from "../form/form.js";
import { withPart } from "../offline/parts.js";
import { all, whenChanged } from "../store/store.js";
import { offerUndo } from "../form/undo.js";
import { mount as mountScreen } from "./screen.js";
import { t } from "../page/words.js";

export const mount = (screen, main) => {
  const view = mountScreen(screen, main);
  const { form, changed } = view;
  const replace = (selector, said) => {
    const button = form.querySelector(selector);
    button.hidden = false;
    button.addEventListener("click", () => {
      const before = pairs(form);
      const { empties, stands } = button.dataset; // groups, and what then stands in their place: nothing is their default
      const emptied = empties.split(" ");
      const others = before.filter(([name]) => !emptied.includes(name.split(".")[0]));
      fill(form, stands ? [...others, ...emptied.map((name) => [name, stands])] : others);
      changed();
      offerUndo(form, "row", said, () => { fill(form, before); changed(); });
    });
  };
  replace("[data-demo]", t("boat-demo"));
  replace("[data-empty]", t("boat-emptied"));
  const file = form.querySelector("[data-open-boat]");
  file.addEventListener("change", () => withPart("kit/files.js", async ({ readBoat }) => {
    const found = file.files.length ? await readBoat(screen, file.files[0]) : null;
    file.value = "";
    if (!found || !form.isConnected) return;
    const before = pairs(form);
    fill(form, found);
    changed();
    offerUndo(form, "row", t("files-page.opened"), () => { fill(form, before); changed(); });
  }));
  startStock(view);
  return view;
};

// What cuts from the kit's rolls comes with the first of them.
const startStock = (view) => {
  const { keptAs } = view.form.querySelector("[data-kept-left]").dataset;
  let started = false;
  const look = async () => {
    if (started || !view.form.isConnected || !(await all("kit")).some(({ record }) => record === keptAs)) return;
    if (started) return;
    started = true;
    started = Boolean(await withPart("kit/boat_rolls.js", ({ start }) => { start(view); return true; }));
  };
  whenChanged((store) => { if (store !== "log" && store !== "pots") look().catch(() => {}); });
  view.brought.then(look).catch(() => {}); // where nothing may be kept there is no roll
};
