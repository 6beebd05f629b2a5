// Plan: the boat's seams as pieces, and a day under way: the phone types the time, one tap tells each step.
import { ask } from "../engine.js";
import { fill, pairs } from "../form.js";
import { recall } from "../memory.js";
import { notice } from "../notice.js";
import { mount as mountScreen } from "./screen.js";

const EACH = 15_000; // ms between two looks at the clock
const isPiece = ([name]) => name.startsWith("pieces.");

let shown = null;

export const mount = (screen, main) => {
  const view = mountScreen(screen, main);
  const { form, refresh } = view;
  shown = { ...view, screen };
  const pieces = form.querySelector("[data-group=pieces]").closest("details");
  if (pairs(form).some(isPiece)) pieces.open = false;
  form.addEventListener("input", typeClock, true);
  form.addEventListener("click", sameScreen);
  const take = main.querySelector("[data-take-boat]");
  take.hidden = false;
  take.addEventListener("click", async () => { if (await takeBoat()) pieces.open = false; });
  if (typeClock()) refresh();
};

const typeClock = () => {
  if (!shown.form.querySelector("[name=running] option[value=yes]:checked, [name=running][value=yes]:checked")) return false;
  const now = new Date();
  const two = (count) => String(count).padStart(2, "0");
  shown.form.elements.namedItem("clock").value = `${now.getHours()}:${two(now.getMinutes())}`;
  return true;
};

const put = (label, found) => {
  const { form, changed } = shown;
  const before = pairs(form);
  const names = new Set(found.map(([name]) => name));
  fill(form, [...before.filter(([name]) => !names.has(name)), ...found]);
  typeClock();
  changed();
  notice("lead", `${label}: done.`, [["Undo", () => { fill(form, before); changed(); }]]);
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
  const answer = await ask({ move: "boat", pairs: recall("boat") ?? [] }).catch(() => null);
  const lead = answer?.leads.find((one) => one.screen === shown.screen);
  if (!lead) {
    notice("no-boat", answer?.errors[0]?.message ?? "The boat has no seams to lay yet.");
    return false;
  }
  const { form } = shown;
  fill(form, pairs(form).filter((pair) => !isPiece(pair)));
  put(lead.label, lead.pairs);
  return true;
};

setInterval(() => { if (shown?.form.isConnected && typeClock()) shown.refresh(); }, EACH);
