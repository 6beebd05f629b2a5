// A phone's keypad for decimals has no letters, blank or "/": a tap on the unit beside a field brings all keys, and so does a
// field that holds some of them already.
const MORE = /[^\d.,]/;

export const startLetters = () => {
  document.addEventListener("pointerdown", ({ target }) => {
    if (target.inputMode === "decimal" && MORE.test(target.value)) allKeys(target);
  });
  document.addEventListener("click", ({ target }) => {
    const field = target.matches(".unit") && target.parentElement.querySelector("input");
    if (!field) return;
    if (field.inputMode === "decimal") {
      field.blur(); // the keys are chosen when it is entered
      allKeys(field);
    }
    field.focus();
  });
};

const allKeys = (field) => {
  field.inputMode = "text";
  field.addEventListener("blur", () => { field.inputMode = "decimal"; }, { once: true });
};
