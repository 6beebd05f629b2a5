// A running pot as a link: whoever opens it sees the same clock. Made in the tap itself: some browsers allow no waiting.
import { drawCode } from "./code.js";
import { notice } from "./notice.js";

const address = (pot) => {
  const url = new URL(location.href);
  url.hash = "";
  url.search = new URLSearchParams([
    ...pot.system,
    ...(pot.beside ?? []), // a pot that an earlier build began has none
    ["pot.started", String(pot.started / 1000)],
    ...pot.typed.map(([name, text]) => [`pot.${name}`, text]),
    ...pot.timing.map(([name, text]) => [`timing.${name}`, text]),
  ]).toString();
  return url.href;
};

// The code to scan in sight, the link to send below it.
export const sharePot = (pot) => {
  const link = address(pot);
  const acts = [];
  const send = () => navigator.share({ title: document.title, url: link }).catch(() => {}); // called off: it stays here
  const copy = () => navigator.clipboard.writeText(link)
    .then(() => notice("share", "The link is copied."), () => {}); // refused: it stands there to be copied by hand
  if (navigator.share) acts.push(["Send", send]);
  if (navigator.clipboard) acts.push(["Copy the link", copy]);
  const box = notice("share", "Another phone that scans this, or opens the link, shows the same clock.", acts);
  const field = document.createElement("input");
  field.className = "words";
  field.value = link;
  field.readOnly = true;
  field.setAttribute("aria-label", "Link");
  const code = drawCode(link, `A code of the link ${link}`);
  box.querySelector("p").after(...(code ? [code] : []), field);
  box.scrollIntoView({ block: "nearest" });
};
