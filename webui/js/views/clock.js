// Clock: the running pots above, how long a batch lasts below; one tap on the answer starts its clock.
import { keepAwake } from "../phone/wake_lock.js";
import { beep, canSpeak, isAloud, prime, setAloud, speak, whenVoices } from "../phone/alarm.js";
import { ask } from "../engine/engine.js";
import { chosen, fill, pairs, spelled } from "../form/form.js";
import { offerKit } from "../kit/kit.js";
import { ifHere, withPart } from "../offline/parts.js";
import { dropBatch, logBatch } from "../kit/log.js";
import { recall, remember } from "../form/memory.js";
import { UNANSWERED, dismiss, notice } from "../page/notice.js";
import { about, amend, bringBack, end, follows, inOrder, lasts, line, lines, list, pairsOf, problem, setLeft, start, whenTold } from "../pots/pots.js";
import { Watch, measured } from "../phone/clocks.js";
import { potArticle } from "../pots/pot.js";
import { units } from "../page/settings.js";
import { all, change } from "../store/store.js";
import { offerRowUndo } from "../form/undo.js";
import { isLearned, keptText, saidHere } from "../form/units.js";
import { mount as mountScreen } from "./screen.js";
import { t } from "../page/words.js";

const WAITING = "clock-waiting"; // mixed, but how long it lasts is not known yet
const WAITS = 5000; // ms from one kept count to the next
/** @param {string[]} pair */
const isPot = ([name]) => name.startsWith("pot.") || name.startsWith("timing.");
const isSystem = ([name]) => name === "system" || name.startsWith("system.");
const ANEW = ["air", "batch", "container"]; // what is asked with a new air; the pot itself knows the other two
const isBeside = (pair) => !isPot(pair) && !isSystem(pair) && !ANEW.includes(pair[0]);

const BEFORE = "1";
const LINK = "share/pot_link.js";
const DOUBTS = ["made_by", "link_times", "clocks_differ", "clock_changed", "lost", "unseen"]; // what a link is said with

let shown = null; // what is on the screen now; the pots outlive it

export const mount = (screen, main) => {
  const link = [...new URLSearchParams(location.search)];
  if (link.some(isPot)) {
    history.replaceState(null, "", location.pathname);
    offer(link);
  }
  const led = (recall(screen) ?? []).filter(isPot);
  if (led.length) remember(screen, recall(screen).filter((pair) => !isPot(pair)));
  const view = mountScreen(screen, main);
  const place = main.querySelector("[data-pots]");
  shown = { ...view, place, articles: new Map() };
  if (led.length) began(led);
  tools(place);
  const answers = view.form.querySelector(".side");
  answers.addEventListener("click", fromAnswer);
  view.form.addEventListener("answered", startWaiting);
  showPots(list());
  return view;
};

const isFigure = ([name]) => !saidHere(shown.form.elements.namedItem(name)); // what stays here is in no pot's link

// A pot keeps its system and what was typed beside it (own timings, warm resin, the cup): another air is reckoned with both.
const begin = (led, started = Date.now(), from = spelled(shown.form), beside = chosen(shown.form), watch = null) => (
  start(led, started, from.filter(isSystem).filter(isFigure), beside.filter(isBeside), watch));

const startLead = () => [...shown.form.querySelectorAll("[data-move=heat] [data-lead]")]
  .map((link) => JSON.parse(link.dataset.lead)).find((lead) => lead.pairs.some(isPot));

const fromAnswer = (event) => {
  const link = event.target.closest("[data-lead]");
  const lead = link && JSON.parse(link.dataset.lead);
  if (!lead?.pairs.some(isPot)) return;
  event.preventDefault();
  begin(lead.pairs);
  shown.place.scrollIntoView({ block: "start" });
};

// Another screen began a pot: at once where it says how long it lasts, else as soon as the answer here does.
const began = (led) => {
  if (led.some(([name]) => name === "pot.duration")) {
    begin(led);
    return;
  }
  waiting = Watch.begin();
  keepWaiting();
  notice("waiting", t("clock-mixed"));
};

// What waits for its air is counted as a pot is, by both clocks, and kept as often.
let waiting = null;
let keeping = 0;
let starting = false;

const keepWaiting = () => {
  const { age, wall, carried } = waiting.beat;
  remember(WAITING, [["age", String(age)], ["wall", String(wall)], ...carried]);
  clearInterval(keeping);
  keeping = setInterval(countWaiting, WAITS);
};

const CARRIED = ["jumped", "unseen", "lost"]; // what the engine gave to be kept

// An earlier build kept when it was mixed, and no more.
const recallWaiting = () => {
  const kept = Object.fromEntries(recall(WAITING) ?? []);
  const { age, wall, started, ...carried } = kept;
  if (age === undefined && started === undefined) return null;
  return new Watch({ age: Number(age ?? 0), wall: Number(wall ?? started), carried: Object.entries(carried).filter(([name]) => CARRIED.includes(name)) });
};

// Asks the engine how long it waits by now; resolves to whether that is known.
const countWaiting = async () => {
  if (!waiting) return false;
  const mine = waiting;
  const now = measured();
  const { lines: said } = await ask({ move: "timer", pairs: [["lasts", "2880"], ["bound", "most"], ...mine.pairs(now)] })
    .catch(() => ({ lines: [] }));
  if (mine !== waiting || !said.length) return false;
  mine.told(now, said);
  keepWaiting();
  return true;
};

const startWaiting = async () => {
  waiting ??= recallWaiting();
  if (!waiting || starting || shown.form.querySelector("[data-error]") || !startLead()) return;
  starting = true;
  try {
    if (!(await countWaiting())) return; // the next answer tries again
    const lead = startLead();
    if (!lead) return;
    const mine = waiting;
    waiting = null;
    clearInterval(keeping);
    remember(WAITING, []);
    await begin(lead.pairs, Date.now() - mine.age() * 1000, undefined, undefined, mine);
  } finally {
    starting = false;
  }
};

// A pot that a link brings is shown before it is added.
const offer = async (link) => {
  const started = Number(link.find(([name]) => name === "pot.started")?.[1]) * 1000;
  const typed = link.filter(([name]) => name.startsWith("pot.") && name !== "pot.started").map(([name, text]) => [name.slice(4), text]);
  if (!typed.some(([name]) => name === "by")) typed.push(["by", BEFORE]); // made before links said what made them
  const { answer, watch } = await about({ typed, started, done: [] }).catch(() => ({ answer: null, watch: null }));
  if (!answer) { // the address no longer holds it
    notice("pot-link", t("pot-link.unread"), [[t("pot-link.again"), () => offer(link)]]);
    return;
  }
  const words = answer.errors.length ? answer.errors.map((one) => one.message)
    : [...answer.lines.filter((one) => one.name === "say" || one.name === "place").reverse(),
      ...answer.lines.filter((one) => DOUBTS.includes(one.name))].map((one) => one.text);
  const add = answer.errors.length ? [] : [[t("pot-link.add"), () => begin(link, started, link, link, watch)]];
  notice("pot-link", t("pot-link", { words: words.join(" · ") }), add);
};

const showPots = (pots) => {
  if (!shown?.place.isConnected) return;
  const { place, articles } = shown;
  if (place.hidden && pots.length) ifHere("phone/unheard.late.js", (unheard) => unheard.offer(place));
  place.hidden = !pots.length;
  const rows = place.querySelector("[data-pots-list]");
  for (const [id, { article }] of articles) {
    if (pots.some((pot) => pot.id === id)) continue;
    article.remove();
    articles.delete(id);
  }
  inOrder().forEach((pot, at) => {
    if (!articles.has(pot.id)) articles.set(pot.id, potArticle(pot, acts));
    const { article, show } = articles.get(pot.id);
    show(lines(pot), problem(pot));
    article.toggleAttribute("data-first", at === 0);
    if (rows.children[at] !== article) rows.insertBefore(article, rows.children[at] ?? null);
  });
};

const seconds = (pot) => `${Math.max(1, Math.round(line(pot, "passed")?.value ?? 0))} s`;

// What a system is known by, each figure with its unit: a pot that an earlier build began may have kept bare ones.
const figures = (system) => {
  const known = system.map(([name, text]) => [shown.form.elements.namedItem(name), name, text]);
  return JSON.stringify(known.filter(([field]) => !isLearned(field)).map(([field, name, text]) => [name, keptText(field, text)]).sort());
};
const ofKit = async ({ system }) => (await all("kit")).find(({ record, typed }) => record === "system"
  && figures(Object.entries(typed).map(([key, text]) => [`system.${key}`, text])) === figures(system));

// how many timings of a system count: the newest, as its form takes them
const most = () => Number(shown.form.querySelector("[data-group=timings]").dataset.most);

// A timing of a system of the kit stays with it, and every screen that picks it reckons with it. It is added to what is
// kept at that moment: another tap may have added one meanwhile.
const keepTiming = async (thing, typed) => {
  const added = (kept) => {
    const before = (kept.typed.timings ?? "").split(";").map((one) => one.trim()).filter(Boolean);
    const timings = [...before, typed.map(([, text]) => text).join(" ")].slice(-most()).join("; ");
    return { ...kept, typed: { ...kept.typed, timings } };
  };
  const { errors } = await ask({ move: "kit", typed: { kind: "system", system: added(thing).typed } })
    .catch(() => ({ errors: [{ message: UNANSWERED }] }));
  if (errors.length) notice("timing", errors[0].message); // a tap by mistake must not spoil the system
  if (errors.length || !(await change("kit", thing.id, added))) return;
  await offerKit(shown.form);
  shown.changed();
};

// What is said of a pot is an own timing of its system, reckoned with on this screen; the log keeps it with the batch.
const say = async (pot, said) => {
  const typed = [["said", said], ["after", seconds(pot)], ...pot.timing];
  await amend(pot, (kept) => ({ ...kept, said: [...kept.said, [said === "good" ? "good" : "own_time", seconds(pot)]] }));
  if (!pot.timing.length) return;
  const thing = await ofKit(pot);
  if (thing) {
    await keepTiming(thing, typed);
    return;
  }
  const { form, changed } = shown;
  const now = pairs(form);
  if (figures(spelled(form).filter(isSystem)) !== figures(pot.system)) return;
  const rows = new Map();
  for (const [name, text] of now.filter(([one]) => one.startsWith("timings."))) {
    const [, row, key] = name.split(".");
    rows.set(row, [...(rows.get(row) ?? []), [key, text]]);
  }
  const used = [...rows.values()].filter((row) => row.some(([key]) => key === "after"));
  const timings = [...used, typed].slice(-most())
    .flatMap((row, at) => row.map(([key, text]) => [`timings.${at}.${key}`, text]));
  fill(form, [...now.filter(([name]) => !name.startsWith("timings.")), ...timings]);
  changed();
};

const finish = async (pot, outcome) => {
  const value = (key) => pot.timing.find(([name]) => name === key)?.[1];
  const own = pot.said.findLast(([key]) => key === "own_time")?.[1];
  const kept = (key) => pot.typed.find(([name]) => name === key)?.[1];
  const typed = Object.fromEntries([["batch", kept("batch")], ["seam", kept("place")], ["pieces", kept("pieces")], ["mass", value("mass")], ["temperature", value("at")],
    ["own_time", own], ["outcome", outcome], ["used", seconds(pot)]].filter(([, text]) => text));
  const entry = await logBatch({ typed, pairs: pot.system, when: pot.started });
  if (entry === undefined) return; // told by the store; the pot runs on
  if (!(await end(pot))) {
    await dropBatch(entry);
    return;
  }
  offerRowUndo("log", entry, "pot-ended", t("pot-logged"), () => { bringBack(pot); dropBatch(entry); });
};

// as it is kept now: an article holds the pot as it was when it was first shown
const current = (pot) => list().find((one) => one.id === pot.id) ?? pot;

// told in the phone's units; an earlier build kept numbers without theirs beside a pot, and the units of its form
const counted = (beside = []) => [["units", units()], ["units_typed", beside.find(([name]) => name === "units")?.[1] ?? "metric"]];

const acts = {
  airUnit: () => shown.form.elements.namedItem("air").nextElementSibling.textContent,
  done: (pot) => {
    const next = line(pot, "step");
    if (next) amend(pot, (kept) => ({ ...kept, done: [...kept.done, next.text] }));
  },
  good: async (pot) => {
    const again = line(pot, "again");
    await say(pot, "good");
    if (again) await lasts(pot, Math.round(again.value));
    dismiss(`pot-${pot.id}`);
  },
  stiffening: (pot) => say(pot, "stiffening"),
  gone: async (pot) => {
    const now = current(pot);
    await say(now, "gone");
    await finish({ ...now, said: [...now.said, ["own_time", seconds(now)]] }, "stiff");
  },
  empty: (pot) => finish(current(pot), ""),
  // resolves to what is wrong with the temperature, if anything
  air: async (pot, text) => {
    const now = current(pot);
    const value = (key) => now.timing.find(([name]) => name === key)?.[1] ?? "";
    const asked = [["batch", value("mass")], ["container", value("in")], ["air", text]];
    const answer = await ask({ move: "heat", pairs: [...counted(now.beside), ...now.system, ...(now.beside ?? []), ...asked] }).catch(() => null);
    if (!answer) return UNANSWERED;
    const usable = answer.lines.find((one) => one.name === "usable");
    if (usable) await follows(now, usable.value);
    return answer.errors[0]?.message ?? "";
  },
  // resolves to what is wrong with the minutes, if anything
  left: (pot, text) => setLeft(current(pot), text).catch(() => UNANSWERED),
  share: (pot) => withPart(LINK, ({ sharePot }) => sharePot(current(pot))),
  calendar: (pot) => withPart("kit/files.js", ({ hand }) => hand("pot.pot.ics", pairsOf(current(pot)))),
  drop: async (pot) => {
    const now = current(pot);
    if (await end(now)) notice("pot-ended", t("pot-ended"), [[t("page-undo"), () => bringBack(now)]]);
  },
};

const tools = (place) => {
  const aloud = place.querySelector("[data-aloud]");
  const offerVoice = () => { aloud.hidden = !canSpeak(); };
  const press = (button, on) => button.setAttribute("aria-pressed", String(on));
  offerVoice();
  whenVoices(offerVoice);
  press(aloud, isAloud());
  aloud.addEventListener("click", () => {
    setAloud(!isAloud());
    press(aloud, isAloud());
    for (const pot of list()) speak(line(pot, "say")?.text ?? "");
  });
  place.querySelector("[data-try-alarm]").addEventListener("click", () => { prime(); setTimeout(beep, 100); });
  keepAwake(place.querySelector("[data-awake]"), press);
};

whenTold(showPots);
