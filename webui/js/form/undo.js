// The way back from what was just done. It ends with the next edit of what it would put back, so that it never throws
// away what was entered since.
import { pairs } from "./form.js";
import { notice } from "../page/notice.js";
import { read, whenChanged } from "../store/store.js";
import { t } from "../page/words.js";

let offered = []; // {box, form, stands}: what the form held when it was offered; form: null for the next one that is shown

const text = (form) => JSON.stringify(pairs(form));

// Offered after the deed. form: the one the deed wrote in, or null where its screen is only about to be shown.
// beyond: it takes back its own deed and nothing else, so it outlives edits, but not the screen.
export const offerUndo = (form, name, words, undo, { beyond = false } = {}) => {
  const box = notice(name, words, [[t("page-undo"), undo]]);
  offered = offered.filter((one) => one.box.isConnected);
  offered.push({ box, form, stands: form && text(form), beyond });
  return box;
};

// A form was edited.
export const edited = (form) => {
  for (const one of offered) {
    if (one.form === form && !one.beyond && one.box.isConnected && one.stands !== text(form)) one.box.remove();
  }
};

// A screen is shown: what belongs to the form before it is over.
export const shown = (form) => {
  for (const one of offered) {
    if (!one.form) Object.assign(one, { form, stands: text(form) });
    else if (one.form !== form) one.box.remove();
  }
};

// Of a row that was just put into the store: over as soon as somebody changes it, in this tab or another. acts: others,
// that stand before it.
export const offerRowUndo = async (store, id, name, words, undo, acts = []) => {
  const box = notice(name, words, [...acts, [t("page-undo"), undo]]);
  const row = async () => JSON.stringify((await read(store).catch(() => [])).find((one) => one.id === id));
  const before = await row();
  whenChanged(async () => { if (box.isConnected && (await row()) !== before) box.remove(); });
};
