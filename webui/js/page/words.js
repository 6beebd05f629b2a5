// Words: a sentence of the page's own, by its key. The build puts the sentence there: t("page-close").
import { sentencesOf } from "./sentences.js";

// How this phone writes dates in the page's language, before what is usual in that language.
export const locales = () => {
  const { lang } = document.documentElement;
  return [...navigator.languages.filter((one) => one.startsWith(lang)), lang];
};

export const t = sentencesOf(() => document.documentElement.lang);
