// A running pot as a link: whoever opens it sees the same clock. Made in the tap itself: some browsers allow no waiting.
import { notice } from "./notice.js";

const address = (pot) => {
  const url = new URL(location.href);
  url.hash = "";
  url.search = new URLSearchParams([
    ...pot.system,
    ["pot.started", String(pot.started / 1000)],
    ...pot.typed.map(([name, text]) => [`pot.${name}`, text]),
    ...pot.timing.map(([name, text]) => [`timing.${name}`, text]),
  ]).toString();
  return url.href;
};

export const sharePot = (pot) => {
  const link = address(pot);
  const show = () => {
    const box = notice("share", "Copy this link, it shows the same clock:");
    const field = document.createElement("input");
    field.className = "words";
    field.value = link;
    field.readOnly = true;
    field.setAttribute("aria-label", "Link");
    box.querySelector("p").after(field);
    field.select();
  };
  if (navigator.share) navigator.share({ title: document.title, url: link }).catch((error) => { if (error.name !== "AbortError") show(); });
  else if (navigator.clipboard) {
    navigator.clipboard.writeText(link).then(() => notice("share", "The link is copied. It shows the same clock on another phone."), show);
  } else show();
};
