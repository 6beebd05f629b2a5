// The builder's own things beside the built-in rows of every pick: "kit:<id>", with the figures they stand for.
import { all, change } from "./store.js";

export const offerKit = async (form) => {
  if (form.closest("[data-editing]")) return; // where a thing is changed it does not stand for itself
  const picks = [...form.querySelectorAll("[data-pick]")];
  if (!picks.length) return;
  const kit = await all("kit");
  for (const pick of picks) {
    const chosen = pick.value;
    for (const old of pick.querySelectorAll("[data-kit]")) old.remove();
    pick.prepend(...kit.filter((thing) => thing.record === pick.dataset.pick).map(entry));
    pick.value = chosen;
  }
};

// What people of the kit have learned, "" for nothing. Resolves to the way back, or undefined where nothing was changed.
export const learn = async (id, learned) => {
  let before = "";
  const changed = await change("kit", id, (thing) => {
    const { learned: old, ...typed } = thing.typed;
    before = old ?? "";
    return { ...thing, typed: learned ? { ...typed, learned } : typed };
  });
  return changed ? () => learn(id, before) : undefined;
};

const entry = ({ id, typed }) => {
  const option = document.createElement("option");
  option.value = `kit:${id}`;
  option.dataset.kit = "";
  option.dataset.typed = JSON.stringify(typed);
  option.textContent = typed.name || `Number ${id}`;
  return option;
};
