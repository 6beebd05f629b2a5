// The page for programs: it is large, and only few read it. This phone keeps it once it was opened, and leads to no other before.
import { notice } from "../page/notice.js";
import { t } from "../page/words.js";

export const open = async (href) => {
  const found = await fetch(href).catch(() => null);
  if (!found?.ok) {
    notice("unfetched", t("part-unfetched"));
    return;
  }
  if (navigator.serviceWorker?.controller) {
    const cache = await caches.open(`covemix-${document.documentElement.dataset.build}`);
    await cache.put(href, found).catch(() => {}); // the phone is full: it is read all the same
  }
  location.assign(href);
};
