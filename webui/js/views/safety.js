// Safety: from what happened straight to what to do, also from a running pot and from the steps.
import { mount as mountScreen } from "./screen.js";

const HOT = "#hot"; // the address that a hot pot is come by

export const mount = (screen, main) => {
  const view = mountScreen(screen, main);
  const { form, changed } = view;
  const at = (place) => {
    place.closest("details")?.setAttribute("open", "");
    place.tabIndex = -1;
    place.focus({ preventScroll: true });
    place.scrollIntoView({ block: "start" });
  };
  const answer = (task) => {
    form.elements.namedItem("task").value = task;
    changed();
    at(main.querySelector("[data-move=safety]"));
  };
  const go = (way) => {
    const line = main.querySelector(`.aid [data-line^="${way}"]`);
    if (line) at(line);
    else answer(way);
  };
  main.addEventListener("click", (event) => {
    const link = event.target.closest("[data-aid]");
    if (!link) return;
    event.preventDefault();
    go(link.dataset.aid);
  });
  if (location.hash === HOT) go("hot_");
  return view;
};
