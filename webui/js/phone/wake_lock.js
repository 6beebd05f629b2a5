// Keeps the screen on while hands are busy; the lock is lost whenever the page is hidden, and asked again when it is back.
let wanted = false;
let lock = null;

const ask = async () => {
  if (!wanted || lock || document.visibilityState !== "visible" || !navigator.wakeLock) return;
  try {
    lock = await navigator.wakeLock.request("screen");
    lock.addEventListener("release", () => { lock = null; });
    if (!wanted) lock.release();
  } catch { /* low battery: the phone decides */ }
};

document.addEventListener("visibilitychange", ask);
document.addEventListener("click", ask); // some phones grant it to a tap only

export const stayAwake = () => { wanted = true; return ask(); };
export const maySleep = () => { wanted = false; lock?.release(); };

// A button that keeps the screen on; hidden where the browser cannot.
export const keepAwake = (button, press) => {
  if (!("wakeLock" in navigator)) return;
  button.hidden = false;
  press(button, wanted);
  button.addEventListener("click", () => {
    if (wanted) maySleep();
    else stayAwake();
    press(button, wanted);
  });
};
