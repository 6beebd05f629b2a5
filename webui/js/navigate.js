// From screen to screen without losing the engine: the next page's own HTML takes the place of this one's.
const PARTS = ["[data-main]", ".top", ".screens"];

const go = async (url, show, arrive = () => {}) => {
  const response = await fetch(url);
  const next = new DOMParser().parseFromString(await response.text(), "text/html");
  const { screen, build } = next.documentElement.dataset;
  if (!response.ok || !screen || build !== document.documentElement.dataset.build) throw new Error("not this build");
  arrive(); // first the address: the new links are relative to it
  for (const part of PARTS) document.querySelector(part).replaceWith(next.querySelector(part));
  document.documentElement.dataset.screen = screen;
  document.title = next.title;
  window.scrollTo(0, 0);
  show();
};

export const startNavigation = (show) => {
  for (const link of document.querySelectorAll("head link")) link.setAttribute("href", link.href);
  document.addEventListener("click", async (event) => {
    const link = event.target.closest?.(".screens a, .standing a, .brand");
    if (!link || event.defaultPrevented || event.button || event.ctrlKey || event.metaKey || event.shiftKey) return;
    event.preventDefault();
    const { href } = link; // relative links mean something else once the address has changed
    await go(href, show, () => history.pushState(null, "", href)).catch(() => location.assign(href));
  });
  window.addEventListener("popstate", () => go(location.href, show).catch(() => location.reload()));
};
