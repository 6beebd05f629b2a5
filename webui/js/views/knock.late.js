// Knock: the next step of a run by a double knock on the bench, for hands that cannot tap. Off until it is asked for and tried,
// and never on a step that measures, asks or starts a clock: there a tap is the step.
import { STILL, feel } from "../phone/knocks.late.js";
import { t } from "../page/words.js";

const SILENT = 2000; // ms without a sample after which there is no sensor

// What a hand must see and tap: a figure to measure, a clock that starts, a question, a warning, the end.
const needsHand = (step) => !step.ran || step.measures || step.field || step.seconds || step.meets || step.other || step.pairs
  || step.rank === "warn";

// what can still be saved of a window is read first
const isLate = (run) => !run.at("window").hidden && run.at("window").dataset.rank === "warn";

const made = (tag, className, name) => {
  const one = Object.assign(document.createElement(tag), { className });
  one.dataset.steps = name;
  return one;
};

export class Knock {
  on = false;
  tried = 0; // how strong the knocks were that were tried on this bench
  felt = STILL;

  constructor(run) {
    this.run = run;
    this.row = made("p", "steps-row", "knocks");
    this.key = made("button", "button", "double");
    this.key.type = "button";
    this.said = made("span", "hint", "knocked");
    this.said.setAttribute("role", "status");
    this.row.append(this.key, this.said);
    run.place.querySelector(".steps-keys").before(this.row);
    this.key.addEventListener("click", () => (this.on ? this.end() : this.begin()));
    run.place.addEventListener("close", () => this.end());
    this.hear = (event) => this.take(event);
    this.end();
    if (run.steps) this.show();
  }

  // another step: what was knocked before is not for it
  show() {
    this.felt = STILL;
    this.row.hidden = needsHand(this.run.step);
  }

  tell(words) {
    this.key.textContent = this.on ? t("knock-on") : t("knock-off");
    this.said.textContent = words;
  }

  // in the tap itself: some phones ask only there
  async begin() {
    const sensor = /** @type {any} */ (window.DeviceMotionEvent);
    const answer = await (sensor?.requestPermission?.() ?? Promise.resolve("granted")).catch(() => "denied");
    if (!sensor || answer !== "granted") return this.tell(sensor ? t("knock-refused") : t("knock-none"));
    this.on = true;
    this.felt = STILL;
    window.addEventListener("devicemotion", this.hear);
    this.tell(t("knock-try"));
    this.silent = setTimeout(() => { if (this.felt === STILL) this.end(t("knock-none")); }, SILENT);
  }

  end(words = "") {
    clearTimeout(this.silent);
    window.removeEventListener("devicemotion", this.hear);
    this.on = false;
    this.tried = 0;
    this.tell(words);
  }

  take({ timeStamp, acceleration, accelerationIncludingGravity }) {
    const { x, y, z } = accelerationIncludingGravity ?? acceleration ?? {};
    if (![x, y, z].every(Number.isFinite)) return;
    clearTimeout(this.silent);
    this.felt = feel(this.felt, { at: timeStamp, x, y, z }, this.tried);
    if (!this.felt.felt) return;
    if (this.tried) {
      if (!needsHand(this.run.step) && !isLate(this.run)) this.run.next();
      return;
    }
    this.tried = this.felt.felt;
    this.tell(t("knock-felt"));
  }
}
