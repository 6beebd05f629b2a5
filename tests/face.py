"""The face of the figures as a page shows it, for tests in each engine."""
from covemix.server.build import FACES as FOLDER
from covemix.server.build import FIGURES
from fontTools.ttLib import TTFont
from house import HOUSE, build

PATH = build().base + FIGURES
# bodies of functions: whether the service worker keeps it, in the end
KEPT = f"""const kept = () => caches.match(new URL("{PATH}", document.baseURI));
const wait = () => new Promise((next) => {{ setTimeout(next, 50); }});
for (let tries = 0; tries < 200 && !(await kept()); tries += 1) await wait();
return Boolean(await kept());"""
# what faces this page has
FACES = "return [...document.fonts].map(({ family, weight, status }) => `${family} ${weight} ${status}`)"
BOLD = "Figures 600 900 loaded"
# how wide ten figures are by it at 1000 px
WIDE = """const probe = document.createElement("span");
probe.style.cssText = "position: absolute; white-space: nowrap; font: 700 1000px Figures";
probe.textContent = "0123456789";
document.body.append(probe);
const { width } = probe.getBoundingClientRect();
probe.remove();
return width;"""
# the face that the first figure asks for first
FIRST = """return getComputedStyle(document.querySelector("main .line-text")).fontFamily.split(",")[0]"""


def width() -> float:
    """Of ten figures at 1000 px, by the file's own table."""
    with TTFont(HOUSE / "webui" / FOLDER / "bold.woff2") as file:
        signs, advances = file.getBestCmap(), file["hmtx"]
        return sum(advances[signs[ord(sign)]][0] for sign in "0123456789") / file["head"].unitsPerEm * 1000
