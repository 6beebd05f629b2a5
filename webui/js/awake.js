// The screen kept on while a pot runs, where the browser can: asked for again whenever the page comes back.
let lock = null;
let wanted = false;

const ask = async () => {
  if (!wanted || document.hidden) return;
  lock = await navigator.wakeLock.request("screen").catch(() => null);
};

export const keepAwake = (button, press) => {
  if (!("wakeLock" in navigator)) return;
  button.hidden = false;
  press(button, wanted);
  button.addEventListener("click", () => {
    wanted = !wanted;
    press(button, wanted);
    if (wanted) ask();
    else lock?.release();
  });
};

document.addEventListener("visibilitychange", ask);
