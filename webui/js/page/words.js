// Words: a sentence of the page's own, by its key. The build puts the sentence there: t("page-close").
import { sentencesOf } from "./sentences.js";

// How this phone writes dates in the page's language, before what is usual in that language.
export const locales = () => {
  const { lang } = document.documentElement;
  return [...navigator.languages.filter((one) => one.startsWith(lang)), lang];
};

export const t = sentencesOf(() => document.documentElement.lang);

// A number and its unit stay on one line, and so does a sum of two.
export const bound = (text) => {
  const held = text.replace(/(\d) (?=[^\d\s])/g, "$1\u00a0");
  return held.split("+").length === 2 ? held.replace(/\s\+\s/, "\u00a0+\u00a0") : held;
};

// An element says this. Where it said so before it stays untouched, and is not laid out or painted anew.
export const write = (element, text) => {
  if (element.textContent !== text) element.textContent = text;
};
