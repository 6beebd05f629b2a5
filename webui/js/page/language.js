// Language: each is a build of its own, with a service worker of its own that takes the place of the one before. The server
// puts `LANGUAGES` in front of this file: {name: {label, worker, offer}}, offer being said in the language itself.
import { notice } from "./notice.js";
import { choose, chosen } from "./settings.js";
import { t } from "./words.js";

const SETTING = "language";
const YEAR = 31536000; // s

export const shown = () => document.documentElement.lang;

// The language of this phone: the chosen one where this host has it, else the one of the page that came.
export const spoken = () => (chosen(SETTING) in LANGUAGES ? chosen(SETTING) : shown());

export const workerOf = (language) => LANGUAGES[language].worker;

// Also for the server, which answers where nothing is kept here. False: it holds until the page closes.
export const speak = (language, root) => {
  const kept = choose(SETTING, language);
  document.cookie = `${SETTING}=${language}; path=${root.pathname}; max-age=${YEAR}; samesite=lax`;
  return kept;
};

// Once, where the phone speaks a language of ours and nobody has chosen. turn: what takes a language up.
export const offerLanguage = (turn) => {
  const own = (navigator.languages ?? [navigator.language]).map((one) => one.slice(0, 2)).find((one) => one in LANGUAGES);
  if (!own || own === shown() || chosen(SETTING)) return;
  const stay = () => choose(SETTING, shown());
  const box = notice("language", LANGUAGES[own].offer, [[LANGUAGES[own].label, () => turn(own)]], t("language-stay"), stay);
  for (const one of box.querySelectorAll("p, .button:not(:last-child)")) one.lang = own;
};
