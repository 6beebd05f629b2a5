// Says so where the page's scripts did not come whole, and fetches again what was kept of half of one.
import { texts } from "./engine/bundle.js";
import { unpacked } from "./engine/unpack.js";
import { t } from "./page/words.js";

const root = new URL("../../../", import.meta.url);
const TRIED = "covemix.fetched.again";

/** @param {string[]} entry */
const isScript = ([path]) => /\.m?js$/.test(path);

// The scripts of the screen's own view, as the bundle has them: [[path, text]].
const ofView = async (bundle, unpacker) => {
  const named = new Set([...document.querySelectorAll("link[rel=modulepreload]")].map(({ href }) => href));
  const got = async (path) => (await fetch(new URL(path, root))).arrayBuffer();
  const bytes = await unpacked(new Uint8Array(await got(bundle)), got(unpacker));
  return texts(bytes, "scripts").filter(([path]) => named.has(new URL(path, root).href))
    .map(([path, text]) => [path, new TextDecoder().decode(text)]);
};

// Which scripts are not what this build says they are, after each was asked of the host itself.
const damaged = async () => {
  const [first] = (await (await fetch(new URL("sw.js", root), { cache: "no-cache" })).text()).split("\n", 1);
  /** @type {{sums: Record<string, string>, bundle: string, unpacker: string}} */
  const { sums, bundle, unpacker } = JSON.parse(first.slice(first.indexOf("{"), -1));
  /** @type {(path: string, more?: RequestInit) => Promise<Response>} */
  const asked = (path, more) => fetch(new URL(path, root), { cache: "reload", ...more });
  const looked = await Promise.all([
    ...Object.entries(sums).filter(isScript).map(([path, sum]) => (
      asked(path, { integrity: `sha256-${sum}` }).then(({ ok }) => (ok ? "" : path), () => path))),
    ...(await ofView(bundle, unpacker).catch(() => [])).map(([path, whole]) => (
      asked(path).then((response) => response.text()).then((text) => (text === whole ? "" : path), () => path))),
  ]);
  return looked.filter(Boolean).map((path) => path.split("/").pop());
};

const say = (names) => {
  const box = document.createElement("div");
  box.className = "notice";
  box.dataset.notice = "half";
  const words = document.createElement("p");
  words.className = "notice-text";
  words.textContent = names.length
    ? t("page-not-whole.of", { names: names.reduce((one, more) => t("page-list", { one, more })) }) : t("page-not-whole");
  box.append(words);
  document.querySelector("[data-notices]").prepend(box);
};

// Half a script that this browser kept is fetched again, once; what the host itself has by half is said, and a view comes
// whole from the bundle as soon as this phone keeps that.
const mend = async () => {
  const names = await damaged().catch(() => []);
  const tried = sessionStorage.getItem(TRIED);
  const again = () => {
    sessionStorage.setItem(TRIED, "yes");
    location.reload();
  };
  if (!names.length && !tried) again();
  else say(names);
  if (!tried) navigator.serviceWorker?.addEventListener("controllerchange", again);
};

const look = () => import("./main.js").then(({ shown }) => shown.then()).catch(mend); // it has run by now, or cannot; half of it has none
if (document.readyState === "loading") document.addEventListener("DOMContentLoaded", look);
else look();
