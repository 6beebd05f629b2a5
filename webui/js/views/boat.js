// The boat: the demo boat and an empty one, each with the way back.
import { fill, pairs } from "../form.js";
import { notice } from "../notice.js";
import { NONE } from "../rows.js";
import { mount as mountScreen } from "./screen.js";

const GROUP = "joints";

export const mount = (screen, main) => {
  const view = mountScreen(screen, main);
  const { form, changed } = view;
  const replace = (selector, joints, said) => {
    const button = form.querySelector(selector);
    button.hidden = false;
    button.addEventListener("click", () => {
      const before = pairs(form);
      const others = before.filter(([name]) => name !== GROUP && !name.startsWith(`${GROUP}.`));
      fill(form, [...others, ...joints]);
      changed();
      notice("row", said, [["Undo", () => { fill(form, before); changed(); }]]);
    });
  };
  replace("[data-demo]", [], "An invented dinghy stands there now.");
  replace("[data-empty]", [[GROUP, NONE]], "All joints are out.");
  return view;
};
