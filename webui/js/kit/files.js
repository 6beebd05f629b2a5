// A file of what stands on the screen: made by the engine, without a server, and handed to the phone. And a boat's file back.
import { download } from "../phone/download.js";
import { ask } from "../engine/engine.js";
import { notice, unanswered } from "../page/notice.js";
import { units } from "../page/settings.js";
import { t } from "../page/words.js";

const LARGEST = 1_000_000; // bytes of a boat's file; sixty joints are a hundredth of it
const AT_ONCE = 100; // batches of the log in one question
const COMMA = ","; // the decimal mark in half of the world: a spreadsheet there takes no other

const two = (count) => String(count).padStart(2, "0");
// A day here, as 2026-06-01.
export const dayOf = (time) => `${time.getFullYear()}-${two(time.getMonth() + 1)}-${two(time.getDate())}`;

const asked = (file, more) => ({
  file, day: dayOf(new Date()), now: Date.now() / 1000, units: units(), build: document.documentElement.dataset.build,
  decimal: (1.5).toLocaleString().includes(COMMA) ? COMMA : ".", ...more,
});

const give = ({ refused, name, text, type }) => {
  if (refused) notice("file", refused);
  else download(`covemix-${dayOf(new Date())}-${name}`, text, type);
};

// file: as the engine names it, with its screen or move in front
export const hand = async (file, pairs, day = "") => {
  const got = await ask(asked(file, { pairs, ...(day && { day }) })).catch(unanswered);
  if (got) give(got);
};

// rows: [when, typed] of each batch
export const handLog = async (screen, rows) => {
  const pieces = [];
  for (let at = 0; !at || at < rows.length; at += AT_ONCE) {
    const got = await ask(asked(`${screen}.${screen}.csv`, { rows: rows.slice(at, at + AT_ONCE) })).catch(unanswered);
    if (!got) return;
    pieces.push(got);
  }
  const [first, ...others] = pieces;
  give({ ...first, text: first.text + others.map(({ text }) => text.slice(text.indexOf("\r\n") + 2)).join("") });
};

// The pairs of a boat's file; null, and told, where it holds none.
export const readBoat = async (screen, file) => {
  let found = null;
  try {
    if (file.size < LARGEST) found = JSON.parse(await file.text());
  } catch { /* told below */ }
  const link = found?.format === `covemix-${screen}` && Array.isArray(found.link) && found.link;
  if (!link || !link.every((pair) => Array.isArray(pair) && pair.length === 2 && pair.every((text) => typeof text === "string"))) {
    notice("file", t("files-page.no-boat"));
    return null;
  }
  const got = await ask({ brought: screen, pairs: link, length: 0 }).catch(unanswered);
  if (got?.refused) notice("file", got.refused);
  return got && !got.refused ? got.pairs : null;
};
