// Sentences: what the build puts in the place of a key into a text. A sentence is a text, or null and pieces: plain text, [name of a
// value], [name, {case: text or pieces}]. The service worker has this file in front of it too.

/** language: gives the name of the language whose plurals count. @param {() => string} language */
export const sentencesOf = (language) => {
  let plurals;
  const placed = ([name, cases], values) => {
    if (!cases) return values[name];
    plurals ??= new Intl.PluralRules(language());
    const value = values[name];
    return joined(cases[`=${value}`] ?? cases[value] ?? (typeof value === "number" ? cases[plurals.select(value)] : null) ?? cases.other, values);
  };
  const joined = (sentence, values) => (typeof sentence === "string" ? sentence
    : sentence.slice(1).map((piece) => (typeof piece === "string" ? piece : placed(piece, values))).join(""));

  /** @param {any} key of `shared/words/en.ftl` @param {Record<string, any>} values texts as they are, or counts @returns {string} */
  return (key, values = {}) => joined(key, values);
};
