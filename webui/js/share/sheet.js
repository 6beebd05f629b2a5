// The sheet that hands things over: link, code, message, paper. All of it is made before the tap that sends it.
import { drawCode } from "./qr_code.js";
import { ask } from "../engine/engine.js";
import { unanswered } from "../page/notice.js";
import { layCard } from "./card.js";
import { startPasting } from "./paste.js";
import { ifHere } from "../offline/parts.js";
import { t } from "../page/words.js";

let numbered = null; // once it is here
let asked = null;
let begun = false;
let made = null;
const sheet = () => document.querySelector("[data-sheet]");
const part = (name) => sheet().querySelector(`[data-${name}]`);

const say = (text) => { part("said").textContent = text; };

const make = async () => {
  const { link, card, text, short } = await ask({
    hand: asked.screen, pairs: asked.pairs, build: document.documentElement.dataset.build,
  });
  const url = new URL(location.href);
  url.hash = "";
  url.search = new URLSearchParams(link).toString();
  made = { url: url.href, card, short, text: `${text}\n${url.href}` };
  part("link").value = made.url;
};

const draw = () => {
  const plain = sheet().querySelector("[name=carries]:checked").value === "words";
  const code = drawCode(plain ? made.short : made.url, plain ? made.short : t("share-code", { link: made.url }));
  part("code").replaceChildren(code ?? t("share-too-much"));
  part("words").hidden = !plain;
  part("words").textContent = made.short;
};

export const open = async (what) => {
  asked = what;
  begin();
  say("");
  made = null;
  part("pasted").value = "";
  part("paste-error").hidden = true;
  sheet().showModal();
  try {
    await make();
    draw();
    ifHere("share/numbered.late.js", (got) => { numbered = got; got.offer(sheet(), asked.screen); });
  } catch {
    say(t("share-unmade"));
  }
};

// To be copied by hand: words keep their lines.
const mark = (text) => {
  const [link, words] = [part("link"), part("words")];
  if (text === link.value) {
    link.focus();
    link.select();
    return;
  }
  words.textContent = text;
  words.hidden = false;
  window.getSelection().selectAllChildren(words);
};

const copy = async (text, done) => {
  try {
    await navigator.clipboard.writeText(text);
    say(done);
  } catch { // plain http, or refused
    mark(text);
    say(t("share-copy-marked"));
  }
};

const send = () => navigator.share({ title: document.title, text: made.card.title, url: made.url })
  .catch((error) => { if (error.name !== "AbortError") copy(made.url, t("share-copied")); });

const print = (copies = null) => {
  layCard(made.card, made.url);
  copies?.lay();
  window.print();
};

export const printNow = async (what) => {
  asked = what;
  if (await make().then(() => true, unanswered)) print();
};

const ACTS = {
  send,
  "copy-link": () => copy(made.url, t("share-copied.link")),
  "copy-text": () => copy(made.text, t("share-copied.words")),
  print: () => { sheet().close(); print(numbered); },
};

const begin = () => {
  if (begun) return;
  begun = true;
  part("act=send").hidden = !navigator.share;
  sheet().addEventListener("change", (event) => { if (event.target.name === "carries" && made) draw(); });
  sheet().addEventListener("click", (event) => {
    if (event.target === sheet() || event.target.closest("[data-to]")) sheet().close(); // beside it, or to first aid
    const act = event.target.closest("[data-act]")?.dataset.act;
    if (act && made) ACTS[act]();
  });
  startPasting(sheet());
};
