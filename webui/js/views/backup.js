// The part of Kit that writes everything to a file and reads it back.
import { Refused, counted, current, readBackup, restore, saveFile } from "../backup.js";
import { notice } from "../notice.js";

export const startBackup = (main) => {
  const preview = main.querySelector("[data-preview]");
  const words = main.querySelector("[data-preview-words]");
  const error = main.querySelector("[data-import-error]");
  const file = main.querySelector("[data-import]");
  let waiting = null;

  main.querySelector("[data-export]").addEventListener("click", saveFile);

  const leave = () => { waiting = null; preview.hidden = true; file.value = ""; };

  file.addEventListener("change", async () => {
    error.hidden = preview.hidden = true;
    if (!file.files.length) return;
    try {
      waiting = await readBackup(file.files[0]);
      const mine = await current();
      if (!mine) return leave();
      words.textContent = `The file holds ${counted(waiting)}. They would replace ${counted(mine)} on this phone.`;
      preview.hidden = false;
    } catch (problem) {
      error.textContent = problem instanceof Refused ? problem.message : "This file could not be read. Nothing was changed.";
      error.hidden = false;
      leave();
    }
  });

  main.querySelector("[data-replace]").addEventListener("click", async () => {
    const before = await current();
    if (!before || !(await restore(waiting))) return;
    leave();
    const { kit, log, pots } = before;
    notice("import", "All of the file is here now.", [["Undo", () => restore({ kit, log, pots })]]);
  });
  main.querySelector("[data-leave-it]").addEventListener("click", leave);
};
