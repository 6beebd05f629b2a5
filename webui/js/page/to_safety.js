// From what happened straight to what to do, on Safety; also from a running pot and from the steps.
const HOT = "#hot"; // the address that a hot pot is come by

const at = (place) => {
  place.closest("details")?.setAttribute("open", "");
  place.tabIndex = -1;
  place.focus({ preventScroll: true });
  place.scrollIntoView({ block: "start" });
};

const go = (way) => {
  const line = document.querySelector(`.aid [data-line^="${way}"]`);
  if (line) {
    at(line);
    return;
  }
  const field = document.querySelector("[data-form]").elements.namedItem("task");
  field.value = way;
  field.dispatchEvent(new Event("input", { bubbles: true }));
  at(document.querySelector("[data-move=safety]"));
};

document.addEventListener("click", (event) => {
  const link = event.target.closest?.("[data-aid]");
  if (!link) return;
  event.preventDefault();
  go(link.dataset.aid);
});

// a screen is shown: whoever came for a hot pot sees what to do
export const arrive = () => { if (location.hash === HOT && document.querySelector(".aid")) go("hot_"); };
