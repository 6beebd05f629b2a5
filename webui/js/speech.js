import { chosen } from "./settings.js";

// Says the engine's words aloud: only with a voice that is on this phone, and only after a tap.
const voice = () => window.speechSynthesis?.getVoices().find((one) => one.localService && one.lang.startsWith("en"))
  ?? window.speechSynthesis?.getVoices().find((one) => one.localService);

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
