// A link that is scanned from another screen or from paper. Where the browser reads no codes, a reader is fetched.
import { get } from "../offline/parts.js";
import { t } from "../page/words.js";

// tell: says what is wrong; follow: goes where a link leads, or resolves to why not
const scan = async (sheet, tell, follow) => {
  const video = sheet.querySelector("[data-video]");
  const { BarcodeDetector } = "BarcodeDetector" in window ? window : await get("share/decoder.js", null).catch(() => ({}));
  if (!BarcodeDetector) {
    tell(t("part-unfetched"));
    return;
  }
  const detector = new BarcodeDetector({ formats: ["qr_code"] });
  let stream;
  try {
    stream = await navigator.mediaDevices.getUserMedia({ video: { facingMode: "environment" } });
  } catch {
    tell(t("paste-no-camera"));
    return;
  }
  const stop = () => { for (const track of stream.getTracks()) track.stop(); video.hidden = true; };
  sheet.addEventListener("close", stop, { once: true });
  video.hidden = false;
  video.srcObject = stream;
  await video.play();
  while (!video.hidden) {
    const [found] = await detector.detect(video).catch(() => []);
    if (found) {
      stop();
      tell(await follow(found.rawValue));
    }
    await new Promise(requestAnimationFrame);
  }
};

export const offer = (sheet, tell, follow) => {
  const button = sheet.querySelector("[data-scan]");
  button.hidden = false;
  sheet.querySelector("[data-scan-elsewhere]").hidden = true;
  button.addEventListener("click", () => scan(sheet, tell, follow));
};
