// What was really taken belongs to one pour: with another amount, another system or another way it is another pour.
const TAKEN = /^(readings|counted|drawn|levels|heights)\./;
const DECIDES = /^(amount|amount_is|system|way|system\..+)$/;

export const isTaken = (name) => TAKEN.test(name);
export const startsAnew = (name) => DECIDES.test(name);
