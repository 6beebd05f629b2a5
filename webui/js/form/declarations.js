// What the declarations say of each screen, also of one that is not shown, by the inputs' names. The server puts `DECLARED`
// in front of this file: {screen: {picks: {input: kind of thing}, measured, anew}}.
const top = (name) => name.split(".")[0];

// [[input, the kind of thing it picks]]: what is chosen for all screens.
export const picked = (screen) => Object.entries(DECLARED[screen]?.picks ?? {});

// What was really measured belongs to one pour: with another amount, another system or another way it is another pour.
export const isMeasured = (screen, name) => Boolean(DECLARED[screen]?.measured?.includes(top(name)));
export const startsAnew = (screen, name) => Boolean(DECLARED[screen]?.anew?.includes(top(name)));
