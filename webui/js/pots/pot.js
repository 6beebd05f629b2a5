// One running pot on the screen: what the engine says of it, large, and the taps that go with it.
import { ruled } from "../answer/figure.js";
import { bare } from "../form/units.js";
import { bound, t, write } from "../page/words.js";

const make = (tag, name, text = "") => {
  const element = document.createElement(tag);
  if (name) element.className = name;
  element.textContent = bound(text);
  return element;
};

const button = (label, act, kind) => {
  const element = make("button", "button", label);
  element.type = "button";
  if (kind) element.dataset.kind = kind;
  element.addEventListener("click", act);
  return element;
};

const say = (element, text) => write(element, bound(text));

// acts: { done, good, stiffening, gone, empty, air, left, share, calendar, drop }, each called with the pot
// eslint-disable-next-line max-lines-per-function -- One function: an article's parts, in the order in which they stand
export const potArticle = (pot, acts) => {
  const article = make("article", "pot");
  article.dataset.pot = pot.id;
  const name = make("h2", "pot-name");
  name.id = `pot-${pot.id}`;
  article.setAttribute("aria-labelledby", name.id);
  const [batch, what] = [make("span"), make("span", "pot-what")];
  name.append(batch, " ", what);
  const [minutes, label, until] = [make("span", "pot-minutes"), make("span"), make("span", "pot-until")];
  const unit = make("span", "pot-unit");
  unit.append(label, until);
  const left = make("p", "pot-left");
  left.append(minutes, " ", unit);
  const rule = make("div", "pot-span");
  const next = make("p", "pot-next");
  const warnings = make("ol", "lines pot-warnings");
  const wall = make("details", "fold");
  const times = make("ol", "lines");
  wall.append(make("summary", "fold-name"), times);
  const step = button("", () => acts.done(pot), "main");
  const actions = make("p", "actions");
  const hot = make("a", "button", t("safety-page.hot"));
  hot.dataset.to = "safety";
  hot.href = `${document.querySelector("[data-top] [data-to=safety]").href}#hot`;
  actions.append(step, button(t("pot-empty"), () => acts.empty(pot)), hot, button(t("share-share"), () => acts.share(pot)),
    button(t("files-page.calendar"), () => acts.calendar(pot)));
  const said = make("p", "actions pot-said");
  said.append(button(t("pot-still-good"), () => acts.good(pot)), button(t("pot-stiffening"), () => acts.stiffening(pot)),
    button(t("pot-gone"), () => acts.gone(pot)));
  const { fold: air, counted } = typedFold(`pot-air-${pot.id}`, AIR, (text) => acts.air(pot, text), acts.airUnit);
  const { fold: set } = typedFold(`pot-left-${pot.id}`, LEFT, (text) => acts.left(pot, text));
  const trouble = make("p", "pot-trouble");
  const drop = make("p", "actions");
  drop.append(button(t("pot-end"), () => acts.drop(pot)));
  article.append(name, left, trouble, rule, next, warnings, actions, said, air, set, wall, drop);

  const show = (lines, problem) => {
    const told = Object.fromEntries(lines.map((line) => [line.name, line]));
    const large = told.left ?? told.over;
    article.hidden = !large && !problem; // nothing stands there until the engine has said what
    trouble.hidden = !problem;
    drop.hidden = Boolean(large);
    article.toggleAttribute("data-behind", Boolean(large && problem)); // minutes of a while ago
    say(trouble, problem);
    for (const part of [left, rule, next, warnings, actions, said, air, set, wall]) part.hidden = !large;
    if (!pot.timing.length || told.over) air.hidden = true;
    counted();
    if (!large) {
      say(batch, t("pot-nameless"));
      say(what, "");
      return;
    }
    article.dataset.state = large.name;
    say(batch, told.place.label);
    say(what, told.place.text);
    say(minutes, large.text);
    say(label, large.label);
    say(until, `${told.end.label} ${told.end.text}`);
    rule.replaceChildren(...(large.span.length ? [ruled(large.span, "mix")] : []));
    next.hidden = step.hidden = !told.next;
    if (told.next) {
      next.replaceChildren(make("b", "", told.next.label), ` ${told.next.text} `, make("span", "pot-at", told.next.rough));
      say(step, t("pot-done", { step: told.next.text }));
    }
    const warned = lines.filter((line) => line.name !== "next" && (line.rank === "warn" || line.rank === "ask"));
    list(warnings, warned);
    const alarms = lines.filter((line) => line.name.startsWith("alarm"));
    wall.hidden = !alarms.length;
    if (alarms.length) say(wall.firstElementChild, t("card-line", alarms[0]));
    list(times, alarms);
  };
  return { article, show };
};

// The shed warmed up or cooled down since: typed once, the minutes follow.
const AIR = { name: t("pot-air"), label: t("pot-air.label"), mode: "decimal", act: t("pot-air.act") };
// Another phone counts the same pot, or the clock of this one was changed: what is really left.
const LEFT = { name: t("pot-left"), label: t("pot-left.label"), mode: "text", hint: "12:30", act: t("pot-left.act") };

// One thing to type, folded away. tell: called with the text, resolves to what is wrong with it, or ""; unitNow: the unit
// that a bare number has, in the phone's units
const typedFold = (id, { name, label: words, mode, hint = "", act }, tell, unitNow = () => "") => {
  const fold = make("details", "fold");
  const field = make("div", "field-box");
  const label = make("label", "field-label", words);
  const typed = make("span", "typed");
  const input = make("input", "words");
  const error = make("p", "error");
  input.id = id;
  label.htmlFor = input.id;
  error.id = `${id}-error`;
  Object.assign(input, { type: "text", inputMode: mode, autocomplete: "off", placeholder: hint });
  input.setAttribute("aria-describedby", error.id);
  error.hidden = true;
  const unit = make("span", "unit", unitNow());
  unit.ariaHidden = "true";
  typed.append(input, unit);
  const says = () => (unit.textContent && input.value && bare(input) ? `${input.value} ${unit.textContent}` : input.value);
  const settle = () => { unit.hidden = Boolean(input.value) && !bare(input); };
  input.addEventListener("input", settle);
  // the phone's units were switched: what was typed keeps its own
  const counted = () => {
    if (unit.textContent === unitNow()) return;
    input.value = says();
    unit.textContent = unitNow();
    settle();
  };
  const said = async () => {
    const wrong = await tell(says());
    say(error, wrong);
    error.hidden = !wrong;
    input.setAttribute("aria-invalid", String(Boolean(wrong)));
    if (!wrong) fold.open = false;
  };
  field.append(label, typed, error);
  const inside = make("div", "fold-inside");
  const actions = make("p", "actions");
  actions.append(button(act, said));
  inside.append(field, actions);
  fold.append(make("summary", "fold-name", name), inside);
  return { fold, counted };
};

const list = (place, lines) => {
  const now = JSON.stringify(lines.map(({ name, text, rough }) => [name, text, rough]));
  if (place.dataset.now === now) return;
  place.dataset.now = now;
  place.replaceChildren(...lines.map((line) => {
    const item = make("li", "line");
    Object.assign(item.dataset, { line: line.name, rank: line.rank });
    item.append(make("span", "line-label", line.label), make("span", "line-text", line.text), make("span", "line-rough", line.rough));
    return item;
  }));
};
