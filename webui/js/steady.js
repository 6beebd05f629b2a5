// How old a pot is by a clock that nobody sets. It counts beside the phone's own, which can be changed; the engine is
// told both, and the earlier alarm wins.
const known = new Map(); // id -> { age: s, at: ms of the steady clock }

const wall = (pot) => (Date.now() - pot.started) / 1000;
const note = (pot, age) => known.set(pot.id, { age, at: performance.now() });

const counted = (pot) => {
  const { age, at } = known.get(pot.id);
  return age + (performance.now() - at) / 1000;
};

// s, or null just after the page was opened: only the phone's clock tells then. What was seen before it closed counts.
export const age = (pot) => {
  if (known.has(pot.id)) return counted(pot);
  const seen = pot.seen ?? 0;
  note(pot, Math.max(wall(pot), seen));
  return wall(pot) < seen ? seen : null;
};

// A phone that slept may have stopped its steady clock too: what it lost is made up from the phone's own.
export const woke = (pots) => {
  for (const pot of pots) if (known.has(pot.id)) note(pot, Math.max(wall(pot), counted(pot)));
};
