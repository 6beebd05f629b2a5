// What a link brings stands in a view of its own: it is shown and answered, and nothing that this phone keeps changes until
// somebody says so. The address stays, so that a reload, the way back and a page without signal show it again.
import { EngineMissing, ask } from "../engine/engine.js";
import { fill, pairs as typedIn } from "../form/form.js";
import { atFirst, recall } from "../form/memory.js";
import { wantsRows } from "../form/rows.js";
import { dismiss, notice } from "../page/notice.js";
import { offerUndo } from "../form/undo.js";
import { saidHere } from "../form/units.js";
import { choose, chosen, lend, units } from "../page/settings.js";
import { t } from "../page/words.js";

const MOST = 9000; // characters; the engine says no to far less, and has to be sent only this much to say it
const NOT_LOOKED_AT = t("link-not-looked-at");
const exported = "files" in document.documentElement.dataset;

// Asks about any query string: {pairs, refused, words}.
export const look = (screen, search) => ask({
  brought: screen, pairs: [...new URLSearchParams(search.slice(0, MOST))], length: search.length, chosen: chosen("units"),
});

// An address that the server answers, whatever this phone keeps of the page.
export const ofServer = (path, pairs) => `${path}?${new URLSearchParams([...pairs.filter(([name]) => name !== "as"), ["as", "page"]])}`;

export const isLink = (form) => "link" in form.dataset;

// where the figures are from is no part of what is compared
const key = (form) => JSON.stringify(typedIn(form).filter(([name]) => !saidHere(form.elements.namedItem(name))));

// again: what the form shows now is asked; changed: and kept
// eslint-disable-next-line max-lines-per-function -- One function: a link is looked at in steps, and each needs what the one before found
export const bring = async (screen, main, { again, changed }) => {
  const form = main.querySelector("[data-form]");
  const { search } = location;
  const kept = recall(screen);
  const home = kept ?? atFirst(screen);
  if (search.length < 2) {
    lend();
    dismiss("link");
    if (home || wantsRows(form)) fill(form, home ?? []);
    return;
  }
  const given = [...new URLSearchParams(search.slice(0, MOST))];
  const anew = !chosen("units");
  if (anew) lend(new Map(given).get("units"));
  const answered = !("unanswered" in main.dataset); // by the server, with the link's values in its form
  const edited = Array.isArray(history.state?.typed) ? history.state.typed : null; // in this view, before a reload

  // whether these values are what is kept anyway; leaves them in the form
  const isMine = (values) => {
    if (!kept) return false;
    fill(form, kept);
    const mine = key(form);
    fill(form, values);
    return key(form) === mine;
  };
  const drop = () => {
    delete form.dataset.link;
    try {
      history.replaceState(null, "", location.pathname);
    } catch { /* too often: a reload offers it once more */ }
  };
  const leave = () => {
    drop();
    lend();
    fill(form, home ?? []);
    again();
  };
  const use = () => {
    drop();
    if (anew) choose("units", units());
    changed();
    form.dispatchEvent(new Event("taken"));
    document.getElementById("main").focus();
    offerUndo(form, "link", t("link-used"), () => {
      if (anew) {
        choose("units", "");
        lend();
      }
      fill(form, home ?? []);
      changed();
    });
  };
  const offer = (words, made = "") => notice("link", `${words ? t("link-shows", { words }) : t("link-shows.this")}${made && ` ${made}`}`,
    [[t("link-use"), use]], t("link-keep-mine"), leave).querySelector("button:last-child").focus();

  form.dataset.link = "";
  form.addEventListener("accept", use);
  if (answered) {
    const served = typedIn(form);
    if (isMine(served)) delete form.dataset.link;
  } else {
    fill(form, edited ?? given);
  }
  let seen = null;
  try {
    seen = await look(screen, search);
  } catch (error) {
    if (!form.isConnected || !isLink(form)) return;
    if (answered) { // as the server did; where it refused the link, it has said so itself
      if (document.querySelector("[data-notice=link]")) leave();
      else offer("");
    } else if (!exported && error instanceof EngineMissing && !given.some(([name]) => name === "as")) {
      location.replace(ofServer(location.pathname, given));
    } else {
      leave();
      notice("link", NOT_LOOKED_AT, [[t("link-try-again"), () => location.assign(location.pathname + search)]]);
    }
    return;
  }
  if (!form.isConnected || !isLink(form)) return;
  dismiss("link");
  dismiss("made"); // the server's own word of it
  const { pairs, refused, words, made } = seen;
  if (refused || !pairs.length) {
    leave();
    if (refused) notice("link", refused);
    return;
  }
  if (!form.dataset.typed) { // typed while the engine looked: that is not overwritten
    if (isMine(pairs) && !edited) {
      leave();
      return;
    }
    fill(form, edited ?? pairs);
  }
  offer(words, made);
};
