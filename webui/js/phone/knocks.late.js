// A double knock on the bench, felt by the phone's motion sensor. This is a signal of the phone's own and no figure of the
// trade, so it is found here and not by the engine: samples go no further than this function. All limits are our own
// judgement, tried against modelled signals (tests/node/knocks.mjs), on no bench.
const SETTLE = 250; // ms in which a lasting pull, as that of the earth, is no longer felt
const CALM = 500; // ms over which the noise of the place is taken
const FLOOR = 0.3; // m/s2; less is no blow, however still the place is
const ABOVE = 4; // times the noise of the place from which on it is a blow
const BLOW = 120; // ms that belong to one blow
const SHORT = 0.25; // of its energy that may come in the second half of them; with more it shakes on, and is no knock
const RING = 110; // ms in which what rings on falls to a third
const [NEAR, FAR] = [150, 600]; // ms from the first of two knocks to the second
const WEAK = 0.8; // m/s2 of all samples of a blow; a weaker one is no knock, but breaks the quiet
const STILLEST = 0.15; // m/s2; with more noise before the first the place is not quiet
const ALIKE = 4; // times that one of two knocks may be as strong as the other: so few samples tell no more of a short blow
const AS_TRIED = 2.5; // times that both may be as strong as the ones that were tried
const BEFORE = 1200; // ms of quiet before the first
const AFTER = 800; // ms of quiet behind the second, more than FAR: a third blow would have come
const WORK = 5000; // ms in which MANY blows are work on the bench, and no knock counts
const MANY = 3;

export const STILL = { at: null, pull: null, noise: 0, blow: null, blows: [], felt: 0, since: 0 };

// The noise of the place is felt between the blows alone, and a blow must stand out of what rings on of the last one.
const listening = (state, at, strength) => {
  const span = at - state.at;
  const last = state.blows.at(-1);
  const rings = last ? last.peak * Math.exp(-(at - last.at) / RING) : 0;
  const noise = state.noise + (strength - state.noise) * Math.min(1, span / CALM);
  if (strength <= Math.max(FLOOR, ABOVE * state.noise, rings)) return { ...state, noise };
  return { ...state, blow: { at, peak: strength, sum: strength ** 2, late: 0, noise: state.noise } };
};

const within = ({ blow, ...state }, at, strength) => {
  const power = strength ** 2;
  if (at - blow.at < BLOW) {
    const late = blow.late + (at - blow.at < BLOW / 2 ? 0 : power);
    return { ...state, blow: { ...blow, peak: Math.max(blow.peak, strength), sum: blow.sum + power, late } };
  }
  const made = { ...blow, strength: Math.sqrt(blow.sum), shakes: blow.late > SHORT * blow.sum };
  return { ...state, blow: null, blows: [...state.blows.filter((one) => at - one.at < BEFORE + WORK), made] };
};

const alike = (one, other, times) => Math.max(one, other) <= times * Math.min(one, other);

// tried: how strong the knocks were that were tried here, or 0
const doubled = ({ blows, since }, at, tried) => {
  const [first, second] = blows.slice(-2);
  if (!second || at - second.at < AFTER) return 0;
  const apart = second.at - first.at;
  const quiet = first.at - (blows.at(-3)?.at ?? since) >= BEFORE && first.noise <= STILLEST;
  const work = blows.filter((one) => one.at < first.at && first.at - one.at < WORK).length >= MANY;
  const strength = Math.sqrt(first.strength * second.strength);
  const knocks = [first, second].every((one) => one.strength >= WEAK && !one.shakes);
  const like = alike(first.strength, second.strength, ALIKE) && (!tried || alike(strength, tried, AS_TRIED));
  return apart >= NEAR && apart <= FAR && quiet && !work && knocks && like ? strength : 0;
};

/**
 * What is felt by one more sample: a pure function of what was felt before it. A knock is short: two peaks 0.15 to 0.6 s
 * apart, alike, with quiet before and behind. Hammering goes on, sanding and walking are not short, what falls bounces.
 * @param {any} state of the sample before, at first STILL; of the one returned felt is how strong a double knock was that is over now, or 0
 * @param {{at: number, x: number, y: number, z: number}} sample at [ms], acceleration with or without gravity [m/s2]
 * @param {number} tried how strong the knock was that was tried here, or 0: any strength counts
 */
export const feel = (state, { at, x, y, z }, tried = 0) => {
  const here = [x, y, z];
  if (state.at === null || at - state.at > SETTLE) return { ...STILL, at, pull: here, since: at }; // the sensor begins, or was away
  const share = Math.min(1, (at - state.at) / SETTLE);
  const pull = state.pull.map((one, axis) => one + (here[axis] - one) * share);
  const strength = Math.hypot(...here.map((one, axis) => one - pull[axis]));
  const next = state.blow ? within(state, at, strength) : listening(state, at, strength);
  const felt = next.blow ? 0 : doubled(next, at, tried);
  return { ...next, at, pull, felt, ...(felt && { blows: [] , since: at }) };
};
