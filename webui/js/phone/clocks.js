// What this phone can measure of passing time: its own clock, which can be set, and a steady one, which may stand still in
// sleep and starts anew with each page. The engine (elapsed.py) is asked with both, and with what was seen last.
let hides = 0; // how often this page was out of sight: the steady clock may have slept
const hid = () => { hides += 1; };
document.addEventListener("visibilitychange", hid);
window.addEventListener("pageshow", ({ persisted }) => { if (persisted) hid(); });

const APART = 1500; // ms; below what the engine takes for a change
const text = (seconds) => seconds.toFixed(2);

export const measured = () => ({ wall: Date.now(), steady: performance.now(), hides, hidden: document.hidden });

export class Watch {
  // beat: {age: s, wall: ms, carried: pairs} as it was kept last, by this page or one before it; or null
  constructor(beat = null) {
    this.beat = beat;
    this.last = null; // this page's own look at both clocks, at the moment of the beat
  }

  // s, or null where nothing is known yet
  age({ steady } = measured()) {
    if (!this.beat) return null;
    return this.beat.age + (this.last ? Math.max(0, steady - this.last.steady) / 1000 : 0);
  }

  // Begins to count now.
  static begin() {
    const now = measured();
    const watch = new Watch({ age: 0, wall: now.wall, carried: [] });
    watch.last = now;
    return watch;
  }

  // Whether the clocks disagree since the last look, or one of them may have slept: the engine is to be asked then.
  unsure(now) {
    if (!this.last || this.last.hides !== now.hides) return true;
    return Math.abs((now.wall - this.last.wall) - (now.steady - this.last.steady)) > APART;
  }

  // Counted on by the steady clock alone, where nothing is unsure.
  count(now) {
    this.beat = { ...this.beat, age: this.age(now), wall: now.wall };
    this.last = now;
  }

  // The pairs that the engine is asked with.
  pairs(now) {
    const found = [["now", text(now.wall / 1000)]];
    if (!this.beat) return found;
    found.push(["seen", text(this.beat.age)], ["seen_at", text(this.beat.wall / 1000)], ...this.beat.carried);
    if (!this.last) return found;
    const watched = this.last.hides === now.hides && !now.hidden && !this.last.hidden;
    return [...found, ["elapsed", text(this.age(now))], ["watched", watched ? "yes" : "no"]];
  }

  // What the engine said to that. now: as it was asked
  told(now, lines) {
    const passed = lines.find(({ name }) => name === "passed")?.value;
    if (passed === undefined) return;
    const carried = lines.filter(({ name }) => name.startsWith("keep_")).map(({ name, part }) => [name.slice(5), part]);
    this.beat = { age: passed, wall: now.wall, carried };
    this.last = now;
  }

  // What another tab, or this page before, kept of the same: time never goes back behind it.
  atLeast(beat) {
    if (!beat || (this.beat && beat.age <= this.age() + 1)) return;
    this.beat = beat;
    this.last = null;
  }
}

// When and by how much the clocks here change after a moment [ms], as the engine reads it: the first change only.
const HOUR = 3_600_000;
const FAR = 32 * 24 * HOUR;
const ahead = (ms) => -new Date(ms).getTimezoneOffset(); // min
const known = new Map();

export const zones = (from) => {
  const key = `${from} ${ahead(from)} ${ahead(from + FAR)}`; // a phone that was carried into another zone
  if (!known.has(key)) known.set(key, zonesFrom(from));
  return known.get(key);
};

const zonesFrom = (from) => {
  const zone = ahead(from);
  const found = [["zone", String(zone)]];
  let before = from;
  while (before < from + FAR && ahead(before + 6 * HOUR) === zone) before += 6 * HOUR;
  if (before >= from + FAR) return found;
  let after = before + 6 * HOUR;
  while (after - before > 500) {
    const middle = (before + after) / 2;
    if (ahead(middle) === zone) before = middle;
    else after = middle;
  }
  return [...found, ["zone_next", String(Math.round(after / 1000))], ["zone_then", String(ahead(after))]];
};
