// A key stands whole over the foot or is not seen: half of one is missed with a wet glove. What the foot would cut is covered
// until the page is scrolled, and nothing moves.
const HAIR = 2; // px; so much of a key is its edge, of which nothing is seen
const MOST = 128; // px; where keys stand side by side, each beginning where another ends, they are left as they are

const KEYS = "a[class], button, summary, select, input";

// Where the key begins that an edge cuts; only what the edge goes through is looked at: a boat has five hundred keys.
const cutAt = (place, edge) => {
  const inSight = place.matches("details:not([open])") ? place.querySelectorAll(":scope > summary") : place.children;
  for (const one of inSight) {
    const { top, bottom, height } = one.getBoundingClientRect();
    const isCut = top < edge - HAIR && bottom > edge + HAIR;
    if (isCut && one.matches(KEYS)) return top;
    const found = isCut || (!height && getComputedStyle(one).display === "contents") ? cutAt(one, edge) : null;
    if (found !== null) return found;
  }
  return null;
};

export const cover = () => {
  const foot = document.querySelector("[data-foot]");
  if (window.scrollY > 0) { // each step of a finger that scrolls asks
    foot.removeAttribute("style"); // without a box nothing is seen to jump
    return;
  }
  const { top } = foot.getBoundingClientRect();
  const main = document.querySelector("[data-main]");
  let edge = top;
  for (let cut; (cut = cutAt(main, edge)) !== null;) edge = cut;
  if (edge === top || top - edge > MOST) foot.removeAttribute("style");
  else foot.style.setProperty("--cut", `${top - edge}px`);
};

new ResizeObserver(cover).observe(document.body);
for (const name of ["scroll", "resize"]) addEventListener(name, cover);
