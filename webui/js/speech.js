import { chosen } from "./settings.js";

// Says the engine's words aloud, after a tap: only with a voice that lives on this phone, for the others send the text away
// and are silent without signal. One of the page's own language, or any: figures are understood in each.
const voice = () => {
  const own = window.speechSynthesis?.getVoices().filter((one) => one.localService) ?? [];
  return own.find((one) => one.lang.startsWith(document.documentElement.lang)) ?? own[0];
};

// Voices arrive late on some phones: asked for early, there at the tap.
export const prime = () => { window.speechSynthesis?.getVoices(); };

export const canSay = () => Boolean(voice());

export const whenVoices = (listener) => window.speechSynthesis?.addEventListener?.("voiceschanged", listener);

// Whether the bench reads each step without being asked.
export const reads = () => chosen("voice") === "on";

export const say = (words) => {
  const own = voice();
  if (!own) return false;
  const saying = new SpeechSynthesisUtterance(words);
  saying.voice = own;
  saying.lang = own.lang;
  window.speechSynthesis.cancel();
  window.speechSynthesis.speak(saying);
  return true;
};

export const hush = () => { window.speechSynthesis?.cancel(); };
