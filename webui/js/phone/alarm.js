// The alarm: sound, vibration, large text and, if wanted, a voice. Whether it is time is told by the engine.
import { notice } from "../page/notice.js";
import { say } from "./speech.js";

export { canSay as canSpeak, whenVoices } from "./speech.js";

const PAUSE = 15_000; // ms between two rounds
const ROUNDS = 8;
const TONES = [880, 660, 880, 660, 880]; // Hz
const TONE = 0.28; // s
const SHAKE = [400, 200, 400, 200, 700]; // ms
const KEY = "covemix.aloud";

let sound = null;

// Browsers let a page sound only after a tap: any tap will do, and is taken.
export const prime = () => {
  const Sound = window.AudioContext ?? window.webkitAudioContext;
  if (!Sound) return;
  sound ??= new Sound();
  if (sound.state !== "running") sound.resume().catch(() => {});
};

export const canSound = () => sound?.state === "running";

export const beep = () => {
  navigator.vibrate?.(SHAKE);
  if (!canSound()) return;
  TONES.forEach((tone, place) => {
    const [from, to] = [place, place + 0.8].map((count) => sound.currentTime + count * TONE);
    const source = sound.createOscillator();
    const level = sound.createGain();
    source.type = "square";
    source.frequency.value = tone;
    level.gain.setValueAtTime(0.4, from);
    level.gain.linearRampToValueAtTime(0, to);
    source.connect(level).connect(sound.destination);
    source.start(from);
    source.stop(to);
  });
};

const kept = () => { try { return localStorage.getItem(KEY) === "yes"; } catch { return false; } };
let aloud = kept();
export const isAloud = () => aloud;
export const setAloud = (wanted) => {
  aloud = wanted;
  try { localStorage.setItem(KEY, wanted ? "yes" : "no"); } catch { /* for this page only, then */ }
};

export const speak = (text) => { if (aloud) say(text); };

// Rings until somebody closes it, for two minutes.
export const ring = (name, text, actions = []) => {
  const box = notice(name, text, actions);
  box.dataset.kind = "ring";
  document.querySelector("[data-notice=recalled]")?.before(box);
  box.setAttribute("role", "alert");
  let rounds = 0;
  const round = () => {
    if (!box.isConnected || rounds >= ROUNDS) return;
    rounds += 1;
    // first: a voice that fails ends no alarm
    setTimeout(round, PAUSE);
    beep();
    speak(text);
  };
  round();
};

// a finger counts when it lifts, a mouse when it presses
for (const name of ["pointerdown", "pointerup", "touchend", "keydown"]) document.addEventListener(name, prime, { passive: true });
