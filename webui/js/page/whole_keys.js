// A key stands whole over the foot or is not seen: half of one is missed with a wet glove. What the foot would cut is covered
// until the page is scrolled, and nothing moves.
const HAIR = 2; // px; so much of a key is its edge, of which nothing is seen
const MOST = 128; // px; where keys stand side by side, each beginning where another ends, they are left as they are

export const cover = () => {
  const foot = document.querySelector("[data-foot]");
  if (window.scrollY > 0) { // each step of a finger that scrolls asks
    foot.removeAttribute("style"); // without a box nothing is seen to jump
    return;
  }
  const { top } = foot.getBoundingClientRect();
  const keys = [...document.querySelectorAll("main :is(a[class], button, summary, select, input)")]
    .filter((one) => one.checkVisibility?.() ?? true).map((one) => one.getBoundingClientRect());
  let edge = top;
  for (let cut; (cut = keys.find((one) => one.top < edge - HAIR && one.bottom > edge + HAIR));) edge = cut.top;
  if (edge === top || top - edge > MOST) foot.removeAttribute("style");
  else foot.style.setProperty("--cut", `${top - edge}px`);
};

new ResizeObserver(cover).observe(document.body);
for (const name of ["scroll", "resize"]) addEventListener(name, cover);
