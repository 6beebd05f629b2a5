// What the knock detector makes of signals that are MODELLED, all of them our own: a knock is the damped resonance of a bench,
// hammering a train of such blows, a sander noise of all frequencies. No bench was measured.
// `node tests/node/knocks.mjs FOLDER` prints a line for each: its name, a tab, what was felt of how much. FOLDER is that of webui/.
import { readFileSync } from "node:fs";
import { join } from "node:path";

const text = readFileSync(join(process.argv[2], "js/phone/knocks.late.js"), "utf8");
const { STILL, feel } = await import(`data:text/javascript,${encodeURIComponent(text)}`);

const HOUR = 3600; // s
const RATE = 60; // samples per second that a browser hands on
const TURNED = [0.05, 0.1, 9.8]; // m/s2, a phone that lies almost flat

// the same numbers at each run (mulberry32)
const dice = (seed) => () => {
  seed = (seed + 0x6D2B79F5) | 0;
  let mixed = Math.imul(seed ^ (seed >>> 15), 1 | seed);
  mixed = (mixed + Math.imul(mixed ^ (mixed >>> 7), 61 | mixed)) ^ mixed;
  return ((mixed ^ (mixed >>> 14)) >>> 0) / 4294967296;
};
const between = (roll, low, high) => low + (high - low) * roll();
const normal = (roll) => Math.sqrt(-2 * Math.log(1 - roll())) * Math.cos(2 * Math.PI * roll());

// A bench that was hit, with the phone on it: how high they ring [Hz], and for how long [s].
const bench = (roll) => ({ high: between(roll, 25, 120), lasts: between(roll, 0.015, 0.04) });
const blow = (at, strength, { high, lasts }) => ({ at, until: at + 8 * lasts,
  pull: (time) => strength * Math.exp(-(time - at) / lasts) * Math.sin(2 * Math.PI * high * (time - at)) });
// half a wave, as of a step or of a hand that lifts the phone
const swing = (at, strength, lasts) => ({ at, until: at + lasts, pull: (time) => strength * Math.sin(Math.PI * (time - at) / lasts) });
const rough = (roll, at, until, strength) => ({ at, until, pull: () => strength * normal(roll) });

// The double knocks that are felt in what happens, in so many seconds of samples: how strong each was.
const strengths = (roll, events, lasts, tried = 0) => {
  const sorted = [...events].sort((one, other) => one.at - other.at);
  let [state, next, lively] = [STILL, 0, []];
  const found = [];
  for (let place = 0; place < lasts * RATE; place += 1) {
    const time = (place + 0.1 * roll()) / RATE;
    while (next < sorted.length && sorted[next].at <= time) { lively.push(sorted[next]); next += 1; }
    lively = lively.filter(({ until }) => until > time);
    const pull = lively.reduce((sum, one) => sum + one.pull(time), 0);
    const [x, y, z] = [0.3, 0.2, 1].map((share, axis) => TURNED[axis] + share * pull + 0.03 * normal(roll));
    state = feel(state, { at: 1000 * time, x, y, z }, tried);
    if (state.felt) found.push(state.felt);
  }
  return found;
};
const felt = (...asked) => strengths(...asked).length;

// The same once for each try: of how many it was felt.
const tries = (count, make) => {
  let [found, roll] = [0, dice(7)];
  for (let place = 0; place < count; place += 1) if (felt(roll, make(roll), 6) === 1) found += 1;
  return `${found} of ${count}`;
};
const knocks = (roll, gaps, strength = between(roll, 2, 10)) => {
  const own = bench(roll);
  let at = between(roll, 2, 2.2);
  return [0, ...gaps].map((gap) => { at += gap; return blow(at, strength * between(roll, 0.8, 1.25), own); });
};

// An hour on a bench on which two knocks were tried before; a knock is KNOCK strong, a hammer HAMMER times so, with a
// spread (lognormal) as wide as from a half to the double.
const [KNOCK, HAMMER, SPREAD] = [3, 8, 0.7];
const hour = (make, tries = true) => {
  const roll = dice(11);
  const own = bench(roll);
  const [tried] = tries ? strengths(roll, [blow(2, KNOCK, own), blow(2.35, KNOCK, own)], 4) : [0];
  return felt(roll, make(roll, own), HOUR, tried);
};
// one: what happens at a time; pause: until the next of them [s]
const ever = (pause, one) => (roll, own) => {
  const found = [];
  for (let at = 2; at < HOUR; at += between(roll, ...pause)) found.push(...one(roll, at, own));
  return found;
};
// Nails: so many blows a second, from least to most for each, and what lies between two nails.
const nails = (perSecond, [least, most], pause = [1, 15]) => (roll, own) => {
  const found = [];
  for (let at = 2; at < HOUR;) {
    const count = Math.floor(between(roll, least, most + 1));
    const strength = KNOCK * HAMMER * Math.exp(SPREAD * normal(roll));
    for (let place = 0; place < count; place += 1) {
      found.push(blow(at, strength * between(roll, 0.7, 1.4), own));
      at += between(roll, 0.9, 1.1) / perSecond;
    }
    at += between(roll, ...pause);
  }
  return found;
};
// two blows that set a nail, and five that drive it after a pause
const setNails = ever([6, 15], (roll, at, own) => {
  const set = KNOCK * HAMMER / 2 * Math.exp(SPREAD * normal(roll));
  const driven = at + between(roll, 1.35, 2.35);
  return [blow(at, set, own), blow(at + 0.35, set, own), ...[0, 1, 2, 3, 4].map((place) => blow(driven + 0.4 * place, 2 * set, own))];
});
// from 0.9 m, and back up with 0.3 to 0.5 of its speed each time
const dropped = ever([10, 10], (roll, at, own) => {
  const [found, back] = [[], between(roll, 0.3, 0.5)];
  let [time, strength, flight] = [at, KNOCK * HAMMER, 0.86 * back];
  for (; strength > 0.3; time += flight, flight *= back, strength *= back) found.push(blow(time, strength, own));
  return found;
});

const CASES = {
  "double knock, 0.2 to 0.5 s apart": () => tries(400, (roll) => knocks(roll, [between(roll, 0.2, 0.5)])),
  "one knock": () => tries(100, (roll) => knocks(roll, [])),
  "two knocks 0.1 s apart": () => tries(100, (roll) => knocks(roll, [0.1])),
  "two knocks 0.8 s apart": () => tries(100, (roll) => knocks(roll, [0.8])),
  "three knocks": () => tries(100, (roll) => knocks(roll, [0.35, 0.35])),
  ...Object.fromEntries([1, 1.7, 2, 3, 4, 6].map((rate) => [`hammering, 3 to 12 blows for a nail, ${rate} a second`, () => hour(nails(rate, [3, 12]))])),
  "hammering without a pause, 3 blows a second": () => hour(nails(3, [3, 12], [0.33, 0.34])),
  "hammering, 1 to 12 blows for a nail, 3 a second": () => hour(nails(3, [1, 12])),
  "the same, had no knock been tried": () => hour(nails(3, [1, 12]), false),
  "nails set with two blows, driven after a second": () => hour(setNails),
  "the same nails, had no knock been tried": () => hour(setNails, false),
  "a sander, on and off": () => hour(ever([8, 25], (roll, at) => [rough(roll, at, at + between(roll, 3, 8), 1.5)])),
  "sanding by hand, 2.5 strokes a second": () => hour(ever([0.36, 0.44], (roll, at) => [rough(roll, at, at + 0.25, 0.8)])),
  "walking past, 1.8 steps a second": () => hour(ever([0.5, 0.6], (roll, at) => [swing(at, between(roll, 0.05, 0.6), 0.18)])),
  "walking with the phone in a pocket": () => hour(ever([0.5, 0.6], (roll, at) => [swing(at, between(roll, 1, 6), 0.25)])),
  "the phone picked up and put down": () => hour(ever([5, 12], (roll, at, own) => [swing(at, 3, 0.6), swing(at + 0.7, -3, 0.5), blow(at + 1.3, 5, own)])),
  "a dropped tool every ten seconds": () => hour(dropped),
};

for (const [name, run] of Object.entries(CASES)) console.log(`${name}\t${run()}`);
