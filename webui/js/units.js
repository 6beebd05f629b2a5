// A form in one system of units and the other. What differs in the other stands on the page: {"text", "default", "unit",
// ...}; no unit is known here.
const NUMBERS = /^[\p{N}\s.,/+\u2212\u2044-]*$/u; // letters and signs among them are a unit

// Whether the number in a field, the last of several, says no unit.
export const bare = ({ value }) => NUMBERS.test(value.split(/[:;]|\sto\s/).at(-1));

// Where a field's unit stands: beside it, or on the choice of what its amount is of.
const holder = (field) => {
  const unit = field.nextElementSibling;
  if (!unit?.matches(".unit")) return null;
  return unit.dataset.unitOf ? field.form.elements.namedItem(`${unit.dataset.unitOf}_is`).selectedOptions[0] : unit;
};

const typedIn = (field) => {
  const unit = holder(field);
  return unit?.dataset.unit ?? unit?.textContent ?? "";
};

const differs = (field) => /"(unit|text)":/.test(holder(field)?.dataset.other ?? "");

// A text as it would be typed in a field, with the unit it means there; without a number it is as it is.
export const withUnit = (field, text) => {
  const unit = text && field.matches("input[type=text]") && bare({ value: text }) && typedIn(field);
  return unit ? `${text.trim()} ${unit}` : text;
};
export const says = (field) => withUnit(field, field.value);

const swap = (element) => {
  const { text, ...rest } = JSON.parse(element.dataset.other);
  const now = text === undefined ? {} : { text: element.textContent };
  for (const name of Object.keys(rest)) now[name] = element.dataset[name];
  if (text !== undefined) element.textContent = text;
  Object.assign(element.dataset, rest);
  if (rest.default !== undefined) element.placeholder = rest.default;
  element.dataset.other = JSON.stringify(now);
};

// The fields say the other units; nothing that is typed is touched.
export const follow = (form, system) => {
  if (form.dataset.units === system) return;
  form.dataset.units = system;
  for (const place of [form, ...[...form.querySelectorAll("template")].map(({ content }) => content)]) {
    for (const element of place.querySelectorAll("[data-other]")) swap(element);
  }
  for (const field of form.querySelectorAll("[data-aside]")) field.value = system;
};

// The phone's units were switched: a number that was typed in the others keeps them, and what nobody typed is as it
// stands in a fresh form.
export const turn = (form, system) => {
  const choice = form.elements.namedItem("units");
  if (choice) choice.value = system;
  if (form.dataset.units === system) return;
  const untouched = [...form.querySelectorAll("[data-untouched]")].filter(stands);
  for (const field of form.querySelectorAll("input[type=text][name]")) {
    if (differs(field) && !untouched.includes(field)) field.value = says(field);
  }
  follow(form, system);
  for (const field of untouched) field.value = field.dataset.initial;
};

// Whether a field holds what stands there before anybody types: of the first kind of amount.
export const stands = (field) => "untouched" in field.dataset && field.value === field.dataset.initial
  && !holder(field)?.previousElementSibling;
