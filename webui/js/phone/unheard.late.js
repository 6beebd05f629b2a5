// An alarm that may not be heard: says while a pot runs that this page may make no sound yet, and tells a pot's end by a
// notification while the page is out of sight, where the builder has allowed that.
import { canSound } from "./alarm.js";
import { t, write } from "../page/words.js";

const LOOK = 1000; // ms
const may = () => window.Notification?.permission;
const RING = "[data-kind=ring]";

const notify = async (box) => {
  const text = box.querySelector(".notice-text").textContent;
  const how = { body: text, tag: box.dataset.notice, requireInteraction: true };
  try {
    const one = new Notification("Covemix", how);
    one.addEventListener("click", () => { window.focus(); one.close(); });
  } catch { // a phone shows those of its worker only
    await (await navigator.serviceWorker?.getRegistration())?.showNotification("Covemix", how);
  }
};

// what rings is announced there, on whichever screen
new MutationObserver((changes) => {
  if (!document.hidden || may() !== "granted") return;
  for (const one of changes.flatMap(({ addedNodes }) => [...addedNodes])) if (one.matches?.(RING)) notify(one).catch(() => {});
}).observe(document.querySelector("[data-notices]"), { childList: true });

// place: of the running pots, behind their keys
export const offer = (place) => {
  if (place.querySelector("[data-unheard]")) return;
  const said = document.createElement("p");
  said.dataset.unheard = "";
  said.setAttribute("role", "status");
  const key = Object.assign(document.createElement("button"), { type: "button", className: "button", textContent: t("unheard-notify") });
  key.dataset.notify = "";
  place.querySelector("[data-try-alarm]").after(key);
  place.append(said);
  const look = () => {
    key.hidden = may() !== "default";
    const words = [!canSound() && t("unheard-sound"), may() === "denied" && t("unheard-denied"), may() === "granted" && t("unheard-granted")]
      .filter(Boolean).join(" ");
    write(said, words);
    said.hidden = !words;
  };
  key.addEventListener("click", () => Notification.requestPermission().then(look));
  const looks = setInterval(() => { if (place.isConnected) look(); else clearInterval(looks); }, LOOK);
  look();
};
