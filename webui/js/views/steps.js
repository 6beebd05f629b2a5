// Step by step: one step at a time, read from two metres; a tap anywhere is the next step. The engine says what each step is.
import { beep } from "../phone/alarm.js";
import { maySleep, stayAwake } from "../phone/wake_lock.js";
import { ask } from "../engine/engine.js";
import { ruled } from "../answer/figure.js";
import { UNANSWERED, notice } from "../page/notice.js";
import { recall, remember } from "../form/memory.js";
import { Watch, measured } from "../phone/clocks.js";
import { canSay, hush, prime, reads, say } from "../phone/speech.js";
import { bare } from "../form/units.js";
import { bound, t } from "../page/words.js";

const TICK = 250; // ms
const BEAT = 2000; // ms from one kept count of a running clock to the next
const REST = 700; // ms after a tap in which the next one is the same shaking glove
const SOON = 280; // ms until a step that a tap has left is marked: most answers are there before
const WORKING = t("steps-working");
const LONG = 4; // letters of a figure from which on it is set smaller

export const two = (count) => String(count).padStart(2, "0");
export const clock = (seconds) => `${Math.floor(seconds / 60)}:${two(seconds % 60)}`;

/**
 * @typedef {object} Doings what the form does for the steps
 * @property {string} at where it is kept while it goes on
 * @property {(name: string) => string} read a field of the form by its name
 * @property {(name: string, text: string) => void} write
 * @property {(name: string) => string} unitOf the unit beside it
 * @property {() => [string, string][]} [pairs] what is typed
 * @property {(lead: any) => void} mend leaves with some fields filled in
 * @property {(typed: any) => any} keep a putty batch, to {wrong: why not} or {undo}
 * @property {(typed: any) => any} log the whole pour, to "" or why not
 * @property {(logged?: boolean) => void} done the last step is over, and whether the pour is in the log
 * @property {(at: {step: number, all: number} | null) => void} waits it was left at a step; null: nothing waits
 */
export class Steps {
  // step, started, rung, beat, typed, mended, left: what a reload goes on with, all text but the first three
  /** @type {any} */ state = {};

  /** @param {HTMLDialogElement} place @param {Doings} doings */
  constructor(place, { at, read, write, unitOf, pairs, mend, keep, log, done, waits }) {
    this.place = place;
    this.stored = at;
    this.read = read;
    this.write = write;
    this.unitOf = unitOf;
    this.pairs = pairs;
    this.mend = mend;
    this.keep = keep;
    this.log = log;
    this.done = done;
    this.waits = waits;
    this.at = (name) => place.querySelector(`[data-steps="${name}"]`);
    this.at("tap").addEventListener("click", () => this.next());
    this.at("undo").addEventListener("click", () => this.back());
    this.at("say").addEventListener("click", () => this.speak());
    this.at("leave").addEventListener("click", () => this.leave());
    for (const name of ["aid", "hot"]) this.at(name).addEventListener("click", () => this.pause()); // the link goes on; the step waits
    this.at("mend").addEventListener("click", () => { const { lead } = this.step; this.end(); this.mend(lead); });
    this.at("actual").addEventListener("change", () => this.took());
    this.at("store")?.addEventListener("click", () => this.store());
    this.at("log").addEventListener("click", () => this.logs());
    document.addEventListener("visibilitychange", () => this.tick());
    place.addEventListener("cancel", (event) => { event.preventDefault(); this.leave(); });
    prime();
  }

  // after a reload it goes on where it was; what was left waits for a tap
  resume() {
    const kept = recall(this.stored);
    if (!kept) return;
    this.state = Object.fromEntries(kept);
    if (this.state.left) this.waits(JSON.parse(this.state.left));
    else this.goOn();
  }

  goOn() {
    const { started, beat } = this.state;
    delete this.state.left;
    this.waits(null);
    if (started) this.watch = new Watch(beat ? JSON.parse(beat) : { age: 0, wall: started, carried: [] });
    this.open();
  }

  async start() {
    this.steps = null;
    this.state = { step: 0, started: 0, ...this.fresh() };
    this.watch = null;
    this.doubt = "";
    this.kept = null;
    this.waits(null);
    await this.open();
    if (this.steps && this.place.open) this.readOut();
  }

  fresh() { return {}; }

  async open() {
    prime();
    if (!this.place.open) this.place.showModal();
    stayAwake();
    this.timer ??= setInterval(() => this.tick(), TICK);
    await this.show();
    this.at("tap").focus();
  }

  pause() {
    this.place.close();
    clearInterval(this.timer);
    this.timer = null;
    maySleep();
    hush();
  }

  // its place stays: a call, a hand for somebody, and it goes on
  leave() {
    if (!this.steps) return this.end();
    this.pause();
    const at = { step: this.steps.indexOf(this.step) + 1, all: this.steps.length };
    this.state.left = JSON.stringify(at);
    remember(this.stored, Object.entries(this.state));
    this.waits(at);
  }

  // nothing of it is left to go on with
  end() {
    if (this.place.open) this.pause();
    remember(this.stored, null);
    this.waits(null);
  }

  answered() { return ask({ move: "pouring", pairs: this.pairs() }); }

  // While the engine answers, a tap is no step; where it cannot answer, the next tap tries again.
  async asked() {
    this.busy = true;
    const late = setTimeout(() => this.behind(true), SOON);
    try {
      return await this.answered();
    } catch {
      this.at("wrong").textContent = UNANSWERED;
      this.at("wrong").hidden = false;
      return null;
    } finally {
      clearTimeout(late);
      this.behind(false);
      this.busy = false;
    }
  }

  // what stands there belongs to the tap before
  behind(yes) {
    this.place.toggleAttribute("data-behind", yes && Boolean(this.steps));
    if (this.steps) this.at("step").textContent = yes ? WORKING : this.told;
  }

  // A second tap of a shaking glove is not a second step; a reader is told by the state, not by a focus that is lost.
  rest() {
    const tap = this.at("tap");
    tap.setAttribute("aria-disabled", "true");
    clearTimeout(this.resting);
    this.resting = setTimeout(() => { tap.removeAttribute("aria-disabled"); this.resting = null; }, REST);
  }

  get step() { return this.steps[Math.min(this.state.step, this.steps.length - 1)]; }

  async show() {
    const got = await this.asked();
    if (!got) return false;
    if (got.errors.length) {
      this.end();
      notice("steps", got.errors[0].message);
      return false;
    }
    this.steps = got.steps;
    this.paint();
    remember(this.stored, Object.entries(this.state));
    return true;
  }

  paint() {
    const { step } = this;
    const place = this.steps.indexOf(step);
    const after = this.steps[place + 1];
    this.told = t("steps-step", { step: place + 1, all: this.steps.length });
    this.at("step").textContent = this.told;
    this.at("said").textContent = step.said;
    this.at("part").textContent = step.head;
    this.at("how").textContent = bound(step.how ?? "");
    this.at("under").textContent = bound([step.under, this.doubt].filter(Boolean).join(" "));
    this.at("next").textContent = after ? bound(t("steps-then", { label: after.label, figure: after.figure })) : "";
    this.at("tap").dataset.rank = step.rank;
    const rule = this.at("rule");
    rule.replaceChildren(...(step.span.length ? [ruled(step.span, step.part)] : []));
    this.at("otherwise").hidden = !step.field;
    this.at("asks").textContent = step.asks;
    this.at("actual").value = step.field && this.state.typed ? this.state.typed : "";
    this.at("unit").textContent = this.unit;
    this.at("undo").disabled = place === 0;
    this.at("say").hidden = !canSay();
    this.at("mend").hidden = !step.lead.length;
    this.at("log").hidden = !step.logs.length;
    if (this.at("putty")) this.at("putty").hidden = !step.keeps.length;
    for (const unit of this.place.querySelectorAll("[data-unit-like]")) unit.textContent = this.unitOf(unit.dataset.unitLike);
    for (const [name, text] of step.keeps) if (this.at(name)) this.at(name).value = text;
    this.figure(step.large, step.small);
    this.tick();
  }

  figure(figure = "", behind = "") {
    const box = this.at("figure");
    const unit = document.createElement("span");
    unit.className = "line-unit";
    unit.textContent = behind;
    box.replaceChildren(figure, unit);
    box.hidden = !figure && !behind;
    box.toggleAttribute("data-long", figure.length > LONG || figure.length + behind.length > LONG + 2);
  }

  // by the steady clock, and by both where it may have slept
  tick() {
    if (!this.place.isConnected) { // another screen took the place of this one
      clearInterval(this.timer);
      maySleep();
      return;
    }
    if (!this.steps || !this.place.open || !this.step.seconds || !this.watch) return;
    const now = measured();
    if (this.watch.unsure(now)) this.count(now);
    else if (now.steady - this.watch.last.steady >= BEAT) {
      this.watch.count(now);
      this.keepClock();
    }
    const left = this.step.seconds - Math.floor(this.watch.age(now));
    this.figure(left > 0 ? clock(left) : clock(0));
    if (left <= 0 && !this.state.rung) {
      this.state.rung = true;
      remember(this.stored, Object.entries(this.state));
      beep();
      this.readOut(this.steps[this.state.step + 1]?.said);
    }
  }

  keepClock() {
    this.state.beat = JSON.stringify(this.watch.beat); // a pair holds text
    remember(this.stored, Object.entries(this.state));
  }

  // The clocks disagree, or the page was away: the engine says what has passed, and what of it is in doubt.
  async count(now) {
    if (this.counting) return;
    this.counting = true;
    const { watch } = this;
    const pairs = [["lasts", `${this.step.seconds} s`], ["bound", "least"], ...watch.pairs(now)];
    const got = await ask({ move: "timer", pairs }).catch(() => null).finally(() => { this.counting = false; });
    if (!got || got.errors.length || watch !== this.watch) return; // the next tick asks again
    watch.told(now, got.lines);
    this.keepClock();
    this.doubt = got.lines.filter(({ rank }) => rank === "warn" || rank === "ask").map(({ text }) => text).join(" ");
    this.at("under").textContent = bound([this.step.under, this.doubt].filter(Boolean).join(" "));
    this.tick();
  }

  // the phone's units were switched
  turned() { if (this.place.open && !this.busy) this.show(); }

  // typed in the unit that the field is typed in
  get unit() { return this.step.field && this.unitOf(this.step.field); }

  async took() {
    const typed = this.at("actual").value;
    if (!typed.trim() || this.busy) return;
    const text = this.unit && bare({ value: typed }) ? `${typed.trim()} ${this.unit}` : typed;
    const { step } = this;
    const before = this.read(step.field);
    this.write(step.field, text);
    const got = await this.asked();
    if (!got) return;
    const wrong = got.errors.find(({ field }) => field === step.field) ?? got.errors[0];
    this.at("wrong").textContent = wrong?.message ?? "";
    this.at("wrong").hidden = !wrong;
    if (wrong) this.write(step.field, before);
    else await this.on(step, before);
  }

  // What mends a pour is gone once it is in: the next step stands in its place, or the next addition.
  on(step, before) {
    if (!step.mends) return this.go(1);
    this.state.mended = JSON.stringify([...this.mended, { at: this.state.step, field: step.field, before }]);
    return this.go(0, true);
  }

  get mended() { return JSON.parse(this.state.mended || "[]"); }

  async next() {
    if (this.busy || this.resting) return;
    if (!this.steps) { // the first question found no answer
      this.at("wrong").hidden = true;
      await this.show();
      return;
    }
    const { step } = this;
    if (step.seconds && !this.state.started) { // the first tap starts the clock
      this.watch = Watch.begin();
      this.state.started = Date.now();
      this.state.rung = false;
      this.rest();
      this.keepClock();
      this.tick();
      return;
    }
    if (this.steps.indexOf(step) === this.steps.length - 1) {
      this.end();
      return this.done(); // the next pour starts clean
    }
    if (step.field && this.at("actual").value.trim()) return this.took();
    const before = step.field && this.read(step.field);
    const fills = step.field && (step.mends || !before);
    if (fills) this.write(step.field, step.writes);
    if (!(await this.on(step, before)) && fills) this.write(step.field, before); // it is not poured while it stands there
  }

  async back() {
    if (this.busy || !this.steps) return;
    if (this.state.started) { // the tap that started the clock is a tap too
      await this.go(0);
      return;
    }
    const { mended } = this;
    const last = mended.at(-1);
    if (last && last.at === this.state.step) {
      const poured = this.read(last.field);
      this.write(last.field, last.before);
      this.state.mended = JSON.stringify(mended.slice(0, -1));
      if (await this.go(0)) return;
      this.write(last.field, poured);
      return;
    }
    const place = this.state.step - 1;
    if (this.kept?.step === place) { // the batch that was kept there is not
      await this.kept.undo();
      this.kept = null;
    }
    const { field } = this.steps[Math.min(place, this.steps.length - 1)];
    const poured = field && this.read(field);
    if (field) this.write(field, "");
    if (!(await this.go(-1))) {
      if (field) this.write(field, poured);
    } else if (poured && poured !== this.step.writes) { // what was read is not lost
      this.state.typed = poured;
      this.at("actual").value = poured;
      remember(this.stored, Object.entries(this.state));
    }
  }

  // Resolves to whether it went: without an answer the step in sight is still the one that the next tap is of.
  async go(by, on = by > 0) {
    const before = { state: { ...this.state }, watch: this.watch, doubt: this.doubt };
    this.state.step += by;
    this.state.started = 0;
    this.watch = null;
    this.doubt = "";
    delete this.state.beat;
    delete this.state.typed;
    this.at("wrong").hidden = true;
    if (!(await this.show())) {
      Object.assign(this, before);
      return false;
    }
    this.rest();
    if (on) this.readOut();
    return true;
  }

  speak() {
    if (this.steps) say(this.step.said);
  }

  // unasked only where that was chosen
  readOut(words = this.step.said) {
    if (reads()) say(words);
  }

  async logs() {
    if (this.busy) return;
    this.busy = true;
    const wrong = await this.log(this.step.logs).finally(() => { this.busy = false; });
    this.at("wrong").textContent = wrong;
    this.at("wrong").hidden = !wrong;
    if (wrong) return;
    this.end();
    this.done(true);
  }

  async store() {
    this.busy = true;
    const entry = Object.fromEntries(this.step.keeps);
    for (const field of this.at("putty").querySelectorAll("input, select")) entry[field.dataset.steps] = field.value;
    const { wrong, undo } = await this.keep(entry).finally(() => { this.busy = false; });
    this.at("wrong").textContent = wrong ?? "";
    this.at("wrong").hidden = !wrong;
    if (wrong) return;
    this.kept = { step: this.state.step, undo };
    await this.go(1);
  }
}
