// Words: a sentence of the page's own, by its key. The build puts the sentence there: t("page-close").
import { sentencesOf } from "./sentences.js";

export const t = sentencesOf(() => document.documentElement.lang);
