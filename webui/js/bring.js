// What a link brings: looked at by the engine, shown before it replaces anything; with nothing to replace it simply stands.
import { ask } from "./engine.js";
import { fill, pairs as typedIn } from "./form.js";
import { atFirst, recall, remember } from "./memory.js";
import { dismiss, notice } from "./notice.js";
import { offerUndo } from "./undo.js";

const MOST = 9000; // characters; the engine says no to far less, and has to be sent only this much to say it

// Asks about any query string: {pairs, refused, words}.
export const look = (screen, search) => ask({
  brought: screen, pairs: [...new URLSearchParams(search.slice(0, MOST))], length: search.length,
});

export const bring = async (screen, form, changed) => {
  const { search } = location;
  const kept = recall(screen);
  if (search) history.replaceState(null, "", location.pathname);
  const stands = kept ?? atFirst(screen);
  if (stands) fill(form, stands);
  dismiss("link");
  if (search.length < 2) return;
  const seen = await look(screen, search).catch(() => null);
  if (!seen) return; // no engine: the server has filled the form, and looked at the link itself
  const { pairs, refused, words } = seen;
  if (refused) {
    notice("link", refused);
  } else if (kept?.length || form.dataset.typed) { // typed while the engine looked: that is not overwritten either
    const before = typedIn(form);
    const use = () => {
      fill(form, pairs);
      changed();
      document.getElementById("main").focus();
      offerUndo(form, "link", "The link's values stand here now.", () => { fill(form, before); changed(); });
    };
    notice("link", `A link brings: ${words}.`, [["Use these", use]], "Keep mine").querySelector("button:last-child").focus();
  } else if (pairs.length) {
    fill(form, pairs);
    remember(screen, pairs);
    changed();
  }
};
