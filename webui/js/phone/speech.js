// Says the engine's words aloud, after a tap: only with a voice that lives on this phone, for the others send the text away
// and are silent without signal. One of the page's own language, or none: a figure or an alarm that a foreign voice reads
// is misheard, and the sound and what stands on the screen tell it better.
import { chosen } from "../page/settings.js";

const voice = () => {
  const own = document.documentElement.lang;
  const speaks = (one) => one.localService && one.lang.toLowerCase().split(/[-_]/)[0] === own;
  return window.speechSynthesis?.getVoices().find(speaks);
};

// Voices arrive late on some phones: asked for early, there at the tap.
export const prime = () => { window.speechSynthesis?.getVoices(); };

export const canSay = () => Boolean(voice());

export const whenVoices = (listener) => window.speechSynthesis?.addEventListener?.("voiceschanged", listener);

// Whether the view of the steps reads each one without being asked.
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
