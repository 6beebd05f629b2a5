// From screen to screen without losing the engine: the next page's own HTML takes the place of this one's.
import { leadIn } from "./form/choices.js";
import { beforeLead } from "./form/beside.js";
import { recall, remember } from "./form/memory.js";
import { behind } from "./page/notice.js";
import { isMeasured } from "./form/declarations.js";
import { showFirst } from "./pots/pots.js";
import { offerUndo } from "./form/undo.js";
import { reach } from "./form/rows.js";
import { t } from "./page/words.js";

const PARTS = ["[data-top]", "[data-main]", "[data-foot]"];

let latest = 0; // of two that are asked for quickly only the last is shown: the address is already its own

// Resolves to whether it is shown.
const go = async (url, show, arrive = () => {}, tab = false) => {
  latest += 1;
  const mine = latest;
  const response = await fetch(url);
  const next = new DOMParser().parseFromString(await response.text(), "text/html");
  const { screen, build } = next.documentElement.dataset;
  if (mine !== latest) return false;
  if (!response.ok || !screen || build !== document.documentElement.dataset.build) throw new Error("not this build");
  arrive(); // first the address: the new links are relative to it
  const whole = document.querySelector(".foot [data-whole]"); // the caution that led there, with the English beside it
  for (const part of PARTS) document.querySelector(part).replaceWith(next.querySelector(part));
  if (whole) document.querySelector(".aid-ways")?.after(whole);
  showFirst();
  document.documentElement.dataset.screen = screen;
  document.title = next.title;
  window.scrollTo(0, 0);
  await show();
  if (mine !== latest) return false;
  // what had the focus is gone with its page: near it stands the tab of this one, or what was asked for
  if (document.activeElement === document.body) document.querySelector(tab ? ".nav [aria-current]" : "[data-main]")?.focus({ preventScroll: true });
  return true;
};

// A lead fills in its own fields and leaves the rest of the other screen as it was; one tap takes it back. A thing or a
// list that it brings comes whole: of a system before it no figure stays, nor of pieces before them.
// adds: the group of the other screen that its pairs are the next rows of.
const followLead = ({ label, screen, pairs: given, adds }) => {
  const before = recall(screen) ?? [];
  const pairs = adds ? nextRow(adds, given, before) : given;
  const whole = (name) => (adds ? name : name.split(".")[0]);
  const names = new Set(pairs.map(([name]) => whole(name)));
  remember(screen, beforeLead(screen, before, pairs).filter(([name]) => !names.has(whole(name)) && !isMeasured(screen, name)).concat(pairs));
  if (!adds) leadIn(screen, pairs);
  const undo = () => { remember(screen, before); leadIn(screen, before); location.reload(); };
  const form = () => document.querySelector("[data-form]");
  return () => behind(offerUndo(form(), "lead", t("lead-here", { label }), undo)); // what the screen asks for comes first
};

const nextRow = (group, pairs, before) => {
  const next = reach(group, before.map(([name]) => name));
  return [[group, ""], ...pairs.map(([name, text]) => {
    const [, place, field] = name.split(".");
    return [`${group}.${next + Number(place)}.${field}`, text];
  })];
};

// show: mounts the page that stands there now; coming: is told the screen that will
export const startNavigation = (show, coming) => {
  // not the style sheet: it would be read, and the whole page laid out, a second time
  for (const link of document.querySelectorAll("head :is([rel=manifest], [rel*=icon]), [data-sheet] a")) link.setAttribute("href", link.href);
  document.addEventListener("click", async (event) => {
    const link = event.target.closest?.("a[data-to], a[data-lead]");
    if (!link || event.defaultPrevented || event.button || event.ctrlKey || event.metaKey || event.shiftKey) return;
    event.preventDefault();
    const lead = link.dataset.lead && JSON.parse(link.dataset.lead);
    coming(lead?.screen ?? link.dataset.to);
    const href = lead ? link.href.replace(/\?.*/, "") : link.href; // read now: the address is about to change
    const tell = lead ? followLead(lead) : () => {};
    await go(href, show, () => history.pushState(null, "", href), link.closest(".nav")).then((shown) => { if (shown) tell(); }, () => location.assign(href));
  });
  window.addEventListener("popstate", () => go(location.href, show).catch(() => location.reload()));
};
