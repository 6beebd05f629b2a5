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
const pairsOf = (pot) => {
  const now = Date.now();
  const passed = age(pot);
  const started = passed === null ? pot.started : now - passed * 1000;
  return [
    ...pot.system,
    ...(pot.beside ?? []), // a pot that an earlier build began has none
    ["pot.started", (started / 1000).toFixed(1)],
    ["pot.by", madeBy()],
    ["pot.sent", (now / 1000).toFixed(1)],
    ...pot.typed.filter(([name]) => name !== "sent" && name !== "by").map(([name, text]) => [`pot.${name}`, text]),
    ...pot.timing.map(([name, text]) => [`timing.${name}`, text]),
  ];
};

// The code to scan in sight, the link to send below it.
export const sharePot = (pot) => shareLive(t("share-pot"), () => pairsOf(pot));

// told: what it is; made: the pairs of its link as they are now, or what resolves to them
export const shareLive = async (told, made) => {
  const field = document.createElement("input");
  const code = document.createElement("div");
  const draw = async () => {
    const url = new URL(location.href);
    url.hash = "";
    url.search = new URLSearchParams(await made()).toString();
    field.value = url.href;
    code.replaceChildren(drawCode(field.value, t("share-code", { link: field.value })) ?? t("share-too-much"));
  };
  await draw();
  const acts = [];
  const again = () => shareLive(told, made);
  const send = () => navigator.share({ title: document.title, url: field.value }).catch(again); // called off: it stays here
  const copy = () => navigator.clipboard.writeText(field.value)
    .then(() => notice("share", t("share-copied")), async () => (await again()).select()); // refused: to be copied by hand
  if (navigator.share) acts.push([t("share-send"), send]);
  if (navigator.clipboard) acts.push([t("share-copy-the-link"), copy]);
  const box = notice("share", told, acts);
  field.className = "words";
  field.readOnly = true;
  field.setAttribute("aria-label", t("share-link"));
  code.className = "code-place";
  box.querySelector("p").after(code, field);
  const fresh = setInterval(() => {
    if (!box.isConnected) clearInterval(fresh);
    else if (document.activeElement !== field) draw().catch(() => {}); // not while it is marked to be copied
  }, FRESH);
  box.scrollIntoView({ block: "nearest" });
  return field;
};
