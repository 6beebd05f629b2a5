// What runs here as a link, a pot or a piece of a seam: whoever opens it sees the same clock. Made in the tap itself: some
// browsers allow no waiting.
import { drawCode } from "./qr_code.js";
import { notice } from "../page/notice.js";
import { age } from "../pots/pots.js";
import { t } from "../page/words.js";

const FRESH = 5000; // ms; the code tells the time it was drawn at

const madeBy = () => { const { release, build } = document.documentElement.dataset; return `${release}.${build}`; };

// What has passed by what was seen goes with it, and the time of the link, so that another clock can be told from a way
// that took long.
const address = (pot) => {
  const now = Date.now();
  const passed = age(pot);
  const started = passed === null ? pot.started : now - passed * 1000;
  const url = new URL(location.href);
  url.hash = "";
  url.search = new URLSearchParams([
    ...pot.system,
    ...(pot.beside ?? []), // a pot that an earlier build began has none
    ["pot.started", (started / 1000).toFixed(1)],
    ["pot.by", madeBy()],
    ["pot.sent", (now / 1000).toFixed(1)],
    ...pot.typed.filter(([name]) => name !== "sent" && name !== "by").map(([name, text]) => [`pot.${name}`, text]),
    ...pot.timing.map(([name, text]) => [`timing.${name}`, text]),
  ]).toString();
  return url.href;
};

// The code to scan in sight, the link to send below it.
export const sharePot = (pot) => shareLive(t("share-pot"), () => address(pot));

// told: what it is; made: the address as it is now
export const shareLive = (told, made) => {
  const acts = [];
  const send = () => navigator.share({ title: document.title, url: made() }).catch(() => {}); // called off: it stays here
  const copy = () => navigator.clipboard.writeText(made())
    .then(() => notice("share", t("share-copied")), () => {}); // refused: it stands there to be copied by hand
  if (navigator.share) acts.push([t("share-send"), send]);
  if (navigator.clipboard) acts.push([t("share-copy-the-link"), copy]);
  const box = notice("share", told, acts);
  const field = document.createElement("input");
  field.className = "words";
  field.readOnly = true;
  field.setAttribute("aria-label", t("share-link"));
  const code = document.createElement("div");
  code.className = "code-place";
  box.querySelector("p").after(code, field);
  const draw = () => {
    field.value = made();
    code.replaceChildren(drawCode(field.value, t("share-code", { link: field.value })) ?? t("share-too-much"));
  };
  draw();
  const fresh = setInterval(() => {
    if (!box.isConnected) clearInterval(fresh);
    else if (document.activeElement !== field) draw(); // not while it is marked to be copied
  }, FRESH);
  box.scrollIntoView({ block: "nearest" });
};
