// Run: a batch of a plan from the wood to the peel ply, in the view of the steps. What is left of its windows stands under
// each step: the engine says by when, the clocks here count down to it.
import { ask } from "../engine/engine.js";
import { recall, remember } from "../form/memory.js";
import { isMeasured } from "../form/declarations.js";
import { reach } from "../form/rows.js";
import { bare } from "../form/units.js";
import { ifHere, withPart } from "../offline/parts.js";
import { TYPED } from "../kit/putty_batches.js";
import { UNANSWERED, notice, unanswered } from "../page/notice.js";
import { put, remove } from "../store/store.js";
import { Watch, measured } from "../phone/clocks.js";
import { download } from "../phone/download.js";
import { Steps, clock, two } from "./steps.js";
import { bound, t } from "../page/words.js";

const POUR = "pour"; // whose tools are poured with
const OWN = ["weigh", "done"]; // steps of a pour that the run says itself
const LOOK = 20_000; // ms between two looks at what can still be saved
const BEAT = 2000; // ms from one kept count to the next
const HELP = "plan.part"; // where a piece of somebody else's run is kept
const PART = "run."; // before the names that a link of one tells of the run itself
const SEAL = ["v", "by", "end"]; // what a link is closed with
const WAY = 10; // s that the code of a piece is taken to be on its way: of what must not last too long the older age counts
const TUBS = "batches"; // whose rows teach the dose of a filler
const unsealed = (link) => link.filter(([name]) => !SEAL.includes(name));
const unitOf = (text) => text.split(/\s/).at(-1);

// What is kept of a piece, of its link.
const sent = (link) => {
  const [asks, told] = [false, true].map((own) => unsealed(link).filter(([name]) => name.startsWith(PART) === own));
  const own = Object.fromEntries(told.map(([name, text]) => [name.slice(PART.length), text]));
  const seconds = (name) => parseFloat(own[name]);
  const ran = [];
  while (own[`ran.${ran.length}.step`]) ran.push([own[`ran.${ran.length}.step`], seconds(`ran.${ran.length}.at`), -1, true]);
  return {
    step: 0, started: 0, asks: JSON.stringify([...asks, ["part", own.part]]), ran: JSON.stringify(ran), reads: "{}",
    life: JSON.stringify({ age: seconds("ran_age") + WAY, wall: seconds("ran_wall") * 1000, carried: [] }),
    ...(own.tape === "all" && { all: "yes" }),
  };
};

export class Run extends Steps {
  /** @param {HTMLDialogElement} place @param {any} doings of the steps; asked: what the plan is asked with, air: another one was read, airAge: how long ago [s] or null, finish: it is told the last step */
  constructor(place, doings) {
    super(place, { ...doings, read: (name) => this.reads[name] ?? "", write: (name, text) => this.wrote(name, text),
      unitOf: (name) => this.tubs?.get(name.split(".")[0]) ?? this.step.small?.trim() ?? "", keep: (weighed) => this.weighed(weighed) });
    this.doings = doings;
    this.own = this.stored;
    this.at("other").addEventListener("click", () => this.turn());
    this.at("calendar").addEventListener("click", () => download("covemix.ics", this.step.ends, "text/calendar"));
    ifHere("views/knock.late.js", ({ Knock }) => { this.knock = new Knock(this); });
  }

  // what a reload goes on with: the question as it was, what was done when, and what was read of each pour
  fresh() {
    this.life = Watch.begin();
    this.tightest = null;
    return { asks: JSON.stringify(this.doings.asked()), ran: "[]", reads: "{}", life: JSON.stringify(this.life.beat) };
  }

  goOn() {
    this.life ??= new Watch(JSON.parse(this.state.life));
    super.goOn();
  }

  // A piece of somebody else's run, as its link tells it or as it was left; what runs here waits meanwhile.
  help(link) {
    this.stored = HELP;
    if (link) remember(HELP, Object.entries(sent(link)));
    this.life = null;
    this.resume();
  }

  end() {
    super.end();
    if (this.stored === this.own) return;
    this.stored = this.own;
    this.life = null;
    this.resume();
  }

  // Asks which piece of what is left is done by somebody else, and shows its link.
  async hand() {
    this.life ??= new Watch(JSON.parse(this.state.life));
    const got = await this.asked();
    if (!got) return;
    const done = this.ran.map(([step]) => step);
    const left = new Map(got.steps.filter(({ ran }) => ran?.includes(".") && !done.includes(ran))
      .map(({ ran, what }) => [Number(ran.split(".")[1]) + 1, what]));
    this.plain = await ask({ hand: "plan", pairs: JSON.parse(this.state.asks) }).catch(() => null); // without what stands there anyway
    const acts = [...left].map(([part, piece]) => [piece, () => this.share(part, piece)]);
    notice("hand", acts.length ? t("run-hand") : t("run-part.none"), acts);
  }

  share(part, piece) {
    return withPart("share/pot_link.js", ({ shareLive }) => shareLive(t("run-hand.piece", { piece }), () => this.link(part)).catch(unanswered));
  }

  // Closed by the engine as each link is: what is cut off or altered on its way is seen.
  async link(part) {
    const met = Math.max(0, this.ran.findIndex(([, , , meets]) => meets)); // what was done before bears on no window
    const ran = this.ran.slice(met).flatMap(([step, at], place) => [[`ran.${place}.step`, step], [`ran.${place}.at`, `${at.toFixed(0)} s`]]);
    const told = [["part", part], ...ran, ["ran_age", `${this.age.toFixed(0)} s`], ["ran_wall", (Date.now() / 1000).toFixed(0)],
      ["tape", this.state.all ? "all" : "fits"]];
    const asks = this.plain ? unsealed(this.plain.link) : JSON.parse(this.state.asks);
    const { link } = await ask({ seal: [...asks, ...told.map(([name, text]) => [PART + name, `${text}`])], build: document.documentElement.dataset.build });
    return link;
  }

  get reads() { return JSON.parse(this.state.reads); }

  get ran() { return JSON.parse(this.state.ran); }

  get age() { return this.life.age(); }

  wrote(name, text) {
    const asks = JSON.parse(this.state.asks);
    const own = asks.find(([one]) => one === name);
    if (own && text) { // the air
      own[1] = text;
      this.state.asks = JSON.stringify(asks);
      this.doings.air(name, text);
    }
    this.state.reads = JSON.stringify({ ...this.reads, [name]: text });
  }

  question() {
    const now = new Date();
    const own = [["running", "yes"], ["clock", `${now.getHours()}:${two(now.getMinutes())}`], ["ran_age", `${this.age.toFixed(1)} s`], ["ran_wall", (now.getTime() / 1000).toFixed(0)]];
    const old = this.doings.airAge();
    if (old !== null) own.push(["air_age", `${old.toFixed(0)} s`]);
    if (this.state.all) own.push(["tape", "all"]);
    this.ran.forEach(([step, at], place) => own.push([`ran.${place}.step`, step], [`ran.${place}.at`, `${at.toFixed(1)} s`]));
    return [...JSON.parse(this.state.asks).filter(([name]) => !own.some(([other]) => other === name)), ...own];
  }

  // the steps of the seam, with those of each pour in its place
  async answered() {
    const asks = this.age;
    const got = await ask({ move: "run", pairs: this.question() });
    if (got.errors.length) return got;
    const poured = await Promise.all(got.steps.map((one) => (one.pours.length ? this.poured(one) : { errors: [], steps: [one] })));
    this.windowOf(got.lines, asks);
    const steps = poured.flatMap(({ steps: own }) => own);
    const tub = poured.find(({ keeps }) => keeps);
    const last = steps.at(-1);
    if (tub && last.pairs && !this.state.weighed) last.keeps = tub.keeps;
    this.tub = tub;
    this.tubs = last.keeps.length ? new Map([[TUBS, unitOf(tub.keeps[1][1])]]) : null;
    return { errors: poured.flatMap(({ errors }) => errors), steps };
  }

  async poured({ ran, what, pours }) {
    const own = `${ran}/`;
    const top = (name) => name.split(".")[0];
    const given = new Set(pours.map(([name]) => top(name)));
    const tools = (recall(POUR) ?? []).filter(([name]) => !given.has(top(name)) && !isMeasured(POUR, name));
    const read = Object.entries(this.reads).filter(([name, text]) => name.startsWith(own) && text).map(([name, text]) => [name.slice(own.length), text]);
    const asks = [...tools, ...pours];
    const { errors, steps = [] } = await ask({ move: "pouring", pairs: [...asks, ...read] });
    return {
      asks,
      keeps: steps.find(({ keeps }) => keeps.length)?.keeps,
      errors: errors.map((error) => ({ ...error, field: own + error.field })),
      steps: steps.filter(({ name }) => !OWN.includes(name))
        .map((step) => ({ ...step, what, other: "", ends: "", ran: step.meets ? ran : "", field: step.field && own + step.field, lead: [], keeps: [] })),
    };
  }

  // The tub was weighed before and after: the log and Pour keep it, and the dose that follows is told.
  async weighed({ filler, ...entry }) {
    const { asks } = this.tub;
    for (const [name, text] of Object.entries(entry)) if (text && bare({ value: text })) entry[name] = `${text.trim()} ${unitOf(entry.mixed)}`;
    const place = reach(TUBS, asks.map(([name]) => name));
    const row = Object.entries(entry).map(([name, text]) => [`${TUBS}.${place}.${name}`, text]);
    const got = await ask({ move: "thicken", pairs: [...asks, ...row] }).catch(() => null);
    if (!got || got.errors.length) return { wrong: got?.errors[0].message ?? UNANSWERED };
    const id = await put("log", { ...entry, filler: filler || TYPED, kind: "putty", when: Date.now() });
    if (id === undefined) return { wrong: t("pour-unkept") };
    const before = recall(POUR);
    remember(POUR, [...before ?? [], ...row]);
    const dose = got.lines.find(({ name }) => name === "dose");
    this.state.weighed = t("card-line.rough", { line: t("card-line", dose), rough: dose.rough });
    return { undo: async () => {
      await remove("log", id);
      remember(POUR, before);
      delete this.state.weighed;
    } };
  }

  // the window that runs, by the engine's lines
  windowOf(lines, at) {
    const line = (name) => lines.find((one) => one.name === name);
    const window = line("window");
    this.tightest = window && { by: at + window.value, lasts: line("window_lasts").value, rank: window.rank };
    this.at("limit").textContent = window?.label ?? "";
    this.at("state").textContent = window?.rough ?? "";
    this.at("saved").textContent = bound(line("saved")?.text ?? "");
    this.looked = at;
    this.drawWindow();
  }

  drawWindow() {
    const box = this.at("window");
    box.hidden = !this.tightest;
    if (!this.tightest) return;
    const left = Math.max(0, this.tightest.by - this.age);
    box.dataset.rank = this.tightest.rank;
    this.at("left").textContent = clock(Math.floor(left));
    this.at("bar").max = this.tightest.lasts;
    this.at("bar").value = left;
  }

  paint() {
    if (this.step.pairs && this.state.weighed) this.doubt = this.state.weighed;
    super.paint();
    const { what, other, ends, pairs } = this.step;
    this.at("what").textContent = what;
    this.at("other").hidden = !other;
    this.at("other").textContent = other;
    this.at("calendar").hidden = !ends.length;
    this.at("log").hidden = true; // it is kept by itself
    this.knock?.show();
    if (pairs && !this.state.kept) {
      this.state.kept = "yes";
      this.doings.finish(this.step);
    }
  }

  // What is done is kept with its time before the next step is shown. A contact that was tapped too soon still counts.
  async go(by, on) {
    const { ran } = this.state;
    const { step } = this;
    const at = this.state.step;
    let told = this.ran;
    if (by > 0 && step.ran) told.push([step.ran, this.age, at, step.meets]);
    if (by < 0) delete this.state.all;
    if (by < 0) told = told.filter(([, , place, meets]) => meets || place < at + by);
    this.state.ran = JSON.stringify(told);
    if (await super.go(by, on)) return true;
    this.state.ran = ran;
    return false;
  }

  // all of the tape after all: the other answer of a step that asks
  turn() {
    if (this.busy || this.resting) return;
    this.state.all = "yes";
    this.go(1);
  }

  tick() {
    super.tick();
    if (!this.steps || !this.place.open) return;
    const now = measured();
    if (this.life.unsure(now)) this.older(now);
    else if (now.steady - this.life.last.steady >= BEAT) {
      this.life.count(now);
      this.keepLife();
    }
    this.drawWindow();
    if (this.tightest && this.age - this.looked > LOOK / 1000 && !this.busy && !this.looking) this.look();
  }

  keepLife() {
    this.state.life = JSON.stringify(this.life.beat);
    remember(this.stored, Object.entries(this.state));
  }

  // no tap is lost while it looks
  async look() {
    this.looking = true;
    const asks = this.age;
    const got = await ask({ move: "run", pairs: this.question() }).catch(() => null).finally(() => { this.looking = false; });
    if (!got || got.errors.length || this.busy) return;
    this.windowOf(got.lines, asks);
  }

  // The clocks disagree, or the page was away: of what must not last too long the older age counts.
  async older(now) {
    if (this.aging) return;
    this.aging = true;
    const got = await ask({ move: "timer", pairs: [["lasts", "1 min"], ["bound", "most"], ...this.life.pairs(now)] }).catch(() => null).finally(() => { this.aging = false; });
    if (!got || got.errors.length) return; // the next tick asks again
    this.life.told(now, got.lines);
    this.keepLife();
    this.look();
  }
}
