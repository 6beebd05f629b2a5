// A link that this phone opened elsewhere, pasted or scanned. The engine looks at it before anything goes anywhere.
import { look } from "./opened_link.js";
import { EngineMissing } from "../engine/engine.js";
import { ifHere } from "../offline/parts.js";
import { t } from "../page/words.js";

const STRANGE = t("paste-strange");

// The screen a link is for: by the last step of its path, wherever the app that made it stands.
const screenOf = (url) => {
  const last = url.pathname.replace(/\/(index\.html)?$/, "").split("/").pop();
  const links = [...document.querySelectorAll("[data-to]")];
  return links.find((one) => one.dataset.to === last) ?? links.find((one) => one.dataset.to === "pour");
};

// "" or one sentence why not
const follow = async (text) => {
  let url;
  try {
    url = new URL(text.trim());
  } catch {
    return STRANGE;
  }
  if (!/^https?:$/.test(url.protocol) || url.search.length < 2) return STRANGE;
  const target = screenOf(url);
  const { refused } = await look(target.dataset.to, url.search)
    .catch((error) => { if (error instanceof EngineMissing) return {}; throw error; }); // the page that opens says so
  if (refused) return refused;
  location.assign(target.href.replace(/\?.*/, "") + url.search);
  return "";
};

export const startPasting = (sheet) => {
  const field = sheet.querySelector("[data-pasted]");
  const error = sheet.querySelector("[data-paste-error]");
  const tell = (message) => {
    error.textContent = message;
    error.hidden = !message;
    field.setAttribute("aria-invalid", String(Boolean(message)));
  };
  sheet.querySelector("[data-paste]").addEventListener("submit", async (event) => {
    event.preventDefault();
    tell(await follow(field.value).catch(() => t("paste-unread")));
  });
  if (navigator.mediaDevices) ifHere("share/scan.late.js", ({ offer }) => offer(sheet, tell, follow));
};
