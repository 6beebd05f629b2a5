// What the declarations say of each screen, also of one that is not shown, by the inputs' names. The server puts `DECLARED`
// in front of this file: {screen: {picks: {input: kind of thing}, beside: {such an input: what is told of its thing}, measured, anew}}.
const top = (name) => name.split(".")[0];

// [[input, the kind of thing it picks]]: what is chosen for all screens.
export const picked = (screen) => Object.entries(DECLARED[screen]?.picks ?? {});

// [[such an input, [what else of the screen is told of its thing and of no other]]].
export const toldBeside = (screen) => Object.entries(DECLARED[screen]?.beside ?? {});

// What was really measured belongs to one pour: with another amount, another system or another way it is another pour.
export const isMeasured = (screen, name) => Boolean(DECLARED[screen]?.measured?.includes(top(name)));
export const startsAnew = (screen, name) => Boolean(DECLARED[screen]?.anew?.includes(top(name)));
