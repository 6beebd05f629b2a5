// Sentences: what the build puts in the place of a key into a text. A sentence is a text with values in
// braces, or null and pieces: such texts, and [name of a value, {case: sentence}]. The service worker has this file in front of it too.

/** language: gives the name of the language whose plurals count. @param {() => string} language */
export const sentencesOf = (language) => {
  let plurals;
  const filled = (text, values) => text.replace(/\{(\w+)\}/g, (_, name) => values[name]);
  const chosen = ([name, cases], values) => {
    plurals ??= new Intl.PluralRules(language());
    const value = values[name];
    return cases[`=${value}`] ?? cases[typeof value === "number" ? plurals.select(value) : value] ?? cases.other;
  };
  const joined = (sentence, values) => (typeof sentence === "string" ? filled(sentence, values)
    : sentence.slice(1).map((piece) => joined(typeof piece === "string" ? piece : chosen(piece, values), values)).join(""));

  /** @param {any} key of `shared/words/en.ftl` @param {Record<string, any>} values texts as they are, or counts @returns {string} */
  return (key, values = {}) => joined(key, values);
};
