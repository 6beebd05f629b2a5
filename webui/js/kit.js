// The builder's own things beside the built-in rows of every pick: "kit:<id>", with the figures they stand for.
import { all } from "./store.js";

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

const entry = ({ id, typed }) => {
  const option = document.createElement("option");
  option.value = `kit:${id}`;
  option.dataset.kit = "";
  option.dataset.typed = JSON.stringify(typed);
  option.textContent = typed.name || `Number ${id}`;
  return option;
};
