// Plan: the boat's seams as pieces, and a day under way: the phone types the time, one tap tells each step.
import { ask } from "../engine/engine.js";
import { fill, pairs } from "../form/form.js";
import { learn, offerKit } from "../kit/kit.js";
import { dropBatch, laidBy, logBatch } from "../kit/log.js";
import { recall, remember } from "../form/memory.js";
import { notice, unanswered } from "../page/notice.js";
import { units } from "../page/settings.js";
import { isLink, look } from "../share/opened_link.js";
import { printCards } from "../share/share.js";
import { whenChanged } from "../store/store.js";
import { offerUndo } from "../form/undo.js";
import { soon, withPart } from "../offline/parts.js";
import { today, two } from "../phone/download.js";
import { prime } from "../phone/speech.js";
import { bare, typedOf, unitBeside } from "../form/units.js";
import { mount as mountScreen } from "./screen.js";
import { t } from "../page/words.js";

const RUN = "views/run.js";
const ALONG = "plan.run"; // where a run that is under way is kept
const HELP = "plan.part"; // where a piece of somebody else's is
const EACH = 15_000; // ms between two looks at the clock
const LOGGED = "log."; // what the log keeps of a batch whose last step was told
// The air is typed once for the working day: as it was read last, and how long ago [s]; null where that was another day.
const AIR = "air";
const AIR_LASTS = 12 * 3600; // s
const airNow = () => {
  const { text, when } = Object.fromEntries(recall(AIR) ?? []);
  const age = (Date.now() - Number(when)) / 1000;
  return text && age >= 0 && age < AIR_LASTS ? { text, age } : null;
};
const airRead = (text) => remember(AIR, [["text", text], ["when", String(Date.now())]]);
/** @param {string[]} pair */
const isPiece = ([name]) => name.startsWith("pieces.");

/** @param {string[]} pair */
const isRun = ([name]) => name.startsWith("run.");

let shown = null;

export const mount = (screen, main) => {
  const link = [...new URLSearchParams(location.search)];
  const sent = link.some(isRun) && link;
  const seen = sent && look(screen, location.search).catch(() => ({})); // without an engine the run says so itself
  if (sent) history.replaceState(null, "", location.pathname);
  const view = mountScreen(screen, main);
  const { form, refresh } = view;
  shown = { ...view, screen };
  const pieces = form.querySelector("[data-group=pieces]").closest("details");
  if (pairs(form).some(isPiece)) pieces.open = false;
  form.addEventListener("input", typeClock, true);
  form.addEventListener("click", sameScreen);
  const air = form.elements.namedItem("temperature");
  air.addEventListener("change", () => { if (!isLink(form) && air.value.trim()) airRead(bare(air) ? `${air.value.trim()} ${unitBeside(air)}` : air.value); });
  if (!isLink(form) && !air.value && airNow()) {
    air.value = airNow().text;
    view.changed();
  }
  const take = main.querySelector("[data-take-boat]");
  take.hidden = false;
  take.addEventListener("click", async () => { if (await takeBoat()) pieces.open = false; });
  const print = main.querySelector("[data-print-cards]");
  print.hidden = false;
  print.addEventListener("click", printCards);
  main.querySelector("[data-day]").value = today();
  const own = main.querySelector("[data-own-rates]");
  const offer = async () => { own.hidden = !(await laidBy(crew(form))).length; };
  own.addEventListener("click", takeRates);
  form.addEventListener("change", offer);
  whenChanged((store) => { if (store === "log" && own.isConnected) offer(); });
  offer();
  if (sent) fill(form, recall(screen) ?? []);
  if (typeClock() || sent) refresh();
  stepping(view, main, sent, seen);
  return view;
};

// The next batch of this plan in the view of the steps, fetched at the tap.
const stepping = ({ form, changed, accept, brought }, main, sent, seen) => {
  const start = main.querySelector("[data-run]");
  const [on, go, hand] = ["[data-run-on]", "[data-run-go]", "[data-run-hand]"].map((key) => start.querySelector(key));
  const waits = (at) => {
    on.hidden = hand.hidden = !at;
    if (at) on.textContent = t("pour-along-on", at);
    go.toggleAttribute("data-second", Boolean(at));
  };
  const air = (name, text) => {
    form.elements.namedItem(name).value = text;
    airRead(text);
    changed();
  };
  const finish = ({ label, pairs: told, logs }) => put(label, [...told, ...logs.map(([name, text]) => [LOGGED + name, text])]);
  let run = null;
  const along = (use) => withPart(RUN, ({ Run }) => {
    if (!form.isConnected) return null;
    run ??= new Run(main.querySelector("[data-along]"), { at: ALONG, asked: () => pairs(form), finish, waits,
      air, airAge: () => airNow()?.age ?? null, done: () => {} });
    return use(run);
  });
  soon(RUN);
  prime();
  start.hidden = false;
  go.addEventListener("click", () => { accept(); along((one) => one.start()); });
  on.addEventListener("click", () => along((one) => one.goOn()));
  hand.addEventListener("click", () => along((one) => one.hand()));
  brought.then(async () => {
    const { refused } = await seen || {};
    if (refused) notice("link", refused);
    const link = !refused && sent;
    if (link || recall(HELP)) return along((one) => one.help(link));
    return recall(ALONG) ? along((one) => one.resume()) : null;
  });
};

const crew = (form) => form.elements.namedItem("crew.name").value || typedOf(form.elements.namedItem("crew")).name;

const typeClock = () => {
  if (!shown.form.querySelector("[name=running] option[value=yes]:checked, [name=running][value=yes]:checked")) return false;
  const now = new Date();
  const field = (name) => shown.form.elements.namedItem(name);
  field("clock").value = `${now.getHours()}:${two(now.getMinutes())}`;
  field("today").value = today(now);
  return true;
};

const put = (label, told) => {
  shown.accept(); // a day that begins by a link's plan is this phone's own
  const { form, changed } = shown;
  const [kept, found] = [true, false].map((of) => told.filter(([name]) => name.startsWith(LOGGED) === of));
  const typed = Object.fromEntries(kept.map(([name, text]) => [name.slice(LOGGED.length), text]));
  const logged = kept.length ? logBatch({ typed }) : null;
  const before = pairs(form);
  const names = new Set(found.map(([name]) => name));
  fill(form, [...before.filter(([name]) => !names.has(name)), ...found]);
  typeClock();
  changed();
  offerUndo(form, "lead", t("lead-done", { label }), async () => {
    fill(form, before);
    changed();
    const id = await logged;
    if (id) dropBatch(id);
  });
};

// How fast these hands were, by the log.
const takeRates = async () => {
  const { form } = shown;
  const answer = await ask({ move: "own_rates", typed: { rows: await laidBy(crew(form)), units: units(), units_typed: "metric" } }).catch(unanswered);
  if (!answer) return;
  const own = Number(form.elements.namedItem("crew").value.match(/^kit:(\d+)$/)?.[1]);
  for (const { label, pairs: [[name, learned]] } of answer.leads) {
    if (own) await teach(own, label, learned); // people of the kit keep them there
    else put(label, [[name, learned]]);
  }
};

const teach = async (id, label, learned) => {
  const show = async () => {
    await offerKit(shown.form);
    if (shown.form.isConnected) shown.changed();
  };
  const back = await learn(id, learned);
  if (!back) return; // told by the store, or it is gone from the kit
  await show();
  offerUndo(shown.form, "lead", t("lead-done", { label }), async () => { await back(); await show(); });
};

// A lead that stays on this screen: the step is told, nothing else moves.
const sameScreen = (event) => {
  const link = event.target.closest("[data-lead]");
  const lead = link && JSON.parse(link.dataset.lead);
  if (lead?.screen !== shown.screen) return;
  event.preventDefault();
  put(lead.label, lead.pairs);
};

const takeBoat = async () => {
  const answer = await ask({ move: "boat", pairs: recall("boat") ?? [] }).catch(unanswered);
  if (!answer) return false;
  const lead = answer.leads.find((one) => one.screen === shown.screen);
  if (!lead) {
    notice("no-boat", answer.errors[0]?.message ?? t("plan-no-seams"));
    return false;
  }
  const { form } = shown;
  fill(form, pairs(form).filter((pair) => !isPiece(pair)));
  put(lead.label, lead.pairs);
  return true;
};

setInterval(() => { if (shown?.form.isConnected && typeClock()) shown.refresh(); }, EACH);
