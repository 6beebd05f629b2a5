// A link that carries everything in itself; made before the tap, because some browsers allow no waiting after it.
import { notice } from "./notice.js";

let link = "";

export const prepare = (pairs) => {
  const url = new URL(location.href);
  url.hash = "";
  url.search = new URLSearchParams(pairs).toString();
  link = url.href;
};

const copied = async () => {
  try {
    await navigator.clipboard.writeText(link);
    notice("share", "The link is copied. It holds the numbers themselves and opens without signal.");
  } catch {
    showLink();
  }
};

const showLink = () => {
  const box = notice("share", "Copy this link:");
  const field = document.createElement("input");
  field.value = link;
  field.readOnly = true;
  field.setAttribute("aria-label", "Link");
  box.querySelector("p").after(field);
  field.select();
};

export const share = (title) => {
  if (navigator.share) navigator.share({ title, url: link }).catch((error) => { if (error.name !== "AbortError") copied(); });
  else if (navigator.clipboard) copied();
  else showLink();
};

// What a link brings, in the words of the form.
export const inWords = (form, pairs) => pairs.map(([name, text]) => {
  const field = form.elements.namedItem(name);
  const label = field?.labels?.[0]?.textContent ?? field?.getAttribute?.("aria-label") ?? name;
  const option = field?.options && [...field.options].find((one) => one.value === text);
  return `${label.trim()}: ${option ? option.textContent.trim() : text}`;
}).join(", ");
