// The part of Kit that writes everything to a file and reads it back.
import { Refused, backup, counted, readBackup, restore } from "../backup.js";
import { download, today } from "../download.js";
import { notice } from "../notice.js";

export const startBackup = (main) => {
  const preview = main.querySelector("[data-preview]");
  const words = main.querySelector("[data-preview-words]");
  const error = main.querySelector("[data-import-error]");
  const file = main.querySelector("[data-import]");
  let waiting = null;

  main.querySelector("[data-export]").addEventListener("click", async () => {
    const copy = await backup().catch(() => null);
    error.textContent = copy ? "" : "What is kept here could not be read just now: no copy was made.";
    error.hidden = Boolean(copy);
    if (copy) download(`covemix-${today()}.json`, JSON.stringify(copy, null, 1), "application/json");
  });

  const leave = () => { waiting = null; preview.hidden = true; file.value = ""; };

  file.addEventListener("change", async () => {
    error.hidden = preview.hidden = true;
    if (!file.files.length) return;
    try {
      waiting = await readBackup(file.files[0]);
      words.textContent = `The file holds ${counted(waiting)}. They would replace ${counted(await backup())} on this phone.`;
      preview.hidden = false;
    } catch (problem) {
      error.textContent = problem instanceof Refused ? problem.message : "This file could not be read. Nothing was changed.";
      error.hidden = false;
      leave();
    }
  });

  main.querySelector("[data-replace]").addEventListener("click", async () => {
    const before = await backup().catch(() => null);
    if (!before || !(await restore(waiting))) return;
    leave();
    const { kit, log, pots } = before;
    notice("import", "All of the file is here now.", [["Undo", () => restore({ kit, log, pots })]]);
  });
  main.querySelector("[data-leave-it]").addEventListener("click", leave);
};
