"""`make bench`: measures everything and writes docs/BENCH.md, docs/WEIGHT.md and three sentences of the README."""
import os
import platform
import re
import sys
from importlib.metadata import version

from covemix.server.build import HOUSE

from . import api, crowd, line, phone, stock, weight
from .table import table

REPORT, README = HOUSE / "docs" / "BENCH.md", HOUSE / "README.md"
PLACE = re.compile(r"(<!-- bench -->\n).*?(<!-- /bench -->)", re.S)
HEAD = """# How quick, how light

Written by `make bench`. Every figure is a ratio: the thing and what it is held against are measured in turn in one run,
on one machine, so that the machine falls out. A ratio is the median over the pairs, the middle half of them behind it.
"""
WIRE = "## Over the wire on a first visit"
CROWD = "## A crowd"
LINE = "## A first visit over a slow line"
BUSILY = ", on a machine busy with other things"
BUSY = ("**On a machine this busy ratios spread, and what is slowed waits for its turn anyway: measure again.**",)


def main(only: str = "") -> None:
    """Everything; or what crosses the wire and what is shipped alone (`python -m bench wire`): that takes a minute, and
    no busy machine moves it; or the crowd alone (`python -m bench crowd`)."""
    if only != "crowd":
        weight.main()
    if only == "crowd":
        page = REPORT.read_text(encoding="utf-8").partition("\n" + CROWD)[0] + "\n"
        page += crowd_section(crowd.measured() + stock.measured(), line.measured())
    elif only == "wire":
        page = REPORT.read_text(encoding="utf-8")
        before, _, rest = page.partition(WIRE)
        page = before + "\n".join(wire_section(phone.wire_alone())) + "\n## Heavy" + rest.partition("\n## Heavy")[2]
    else:
        before = os.getloadavg()[0]
        rows = [("A route of the API", *row) for row in api.measured()]
        found = phone.measured()
        page = report(rows, found, (before, os.getloadavg()[0])) + "\n"
        page += crowd_section(crowd.measured() + stock.measured(), line.measured())
    REPORT.write_text(page, encoding="utf-8")
    text = README.read_text(encoding="utf-8")
    README.write_text(PLACE.sub(lambda place: place[1] + in_short(page) + place[2], text), encoding="utf-8")
    print(in_short(page))


def wire_section(sent) -> tuple[str, ...]:
    """What crosses the wire on a first visit. sent: [(kind, requests, bytes as sent)]"""
    whole = sum(size for _, _, size in sent)
    return (WIRE, "", table(("", "requests", "bytes as sent", "share"), [
        (kind, str(count), f"{size:,}", f"{100 * size / whole:.0f} %") for kind, count, size in sent]),
        f"{whole:,} bytes in all, counted by the server, until the page says that it is kept; without headers.", "")


def crowd_section(rows: list[tuple[str, str, str]], visit: list[tuple[str, str, str]]) -> str:
    """Servers beside many, and a phone far away. rows: of `crowd` and of `stock`; visit: of `line`"""
    return "\n".join((
        CROWD, "", table(("", "held against", "times as much"), rows),
        f"`covemix serve` over the wire, load {os.getloadavg()[0]:.1f} at the end, {os.cpu_count()} cores.",
        "The load is pinned to the second core, the server to the first for p99, and to none for the rest: two",
        "processes share a core with their load here, so they cannot reach twice as much. Memory is what the process",
        "has written of its own.", "",
        LINE, "", table(("", "held against", "times as long"), visit),
        "1.6 Mbit/s and 150 ms a round trip, by Chromium's network emulation, the visits one after the other.", ""))


def report(rows, found, load) -> str:
    """The whole page."""
    what, against, start = found["start"]
    keys = [(name, against, f"{ratio}; {frame}") for name, against, ratio, frame in found["keys"]]
    moves = [(name, *(str(by_rate[rate]) for rate in (1, 4))) for name, by_rate in found["moves"]]
    openings = [(f"{rate}x", *map(str, ratios)) for rate, ratios in found["offline"].items()]
    return "\n".join((
        HEAD, how(found, load),
        "## What stands still without it", "",
        table(("", "held against", "times as long"), [
            (what, against, str(start)), *keys, *((what, against, str(ratio)) for _, what, against, ratio in rows)]),
        "The engine's start is MicroPython with the engine's modules put in place and the first of them imported.",
        "A press is a real one, from the browser's own stamp of it to the new figure: the browser writes the digit,",
        "the page reads the form, the engine answers in its worker, the lines are laid out. By hand it is one",
        "multiplication and one line of text. To a worker and back is one field whose worker only returns the digit; a",
        "browser may hold back what a worker posts until it has painted, and does when presses come fast. A frame is a",
        "sixtieth of a second; of its two figures the first is the median, and 19 of 20 presses stay within the other.",
        "To its whole answer: until nothing of the page changes any more, all that folds away being open.",
        "",
        *wire_section(found["wire"]),
        "## Heavy moves", "",
        table(("", "at full speed", "slowed to a quarter"), moves),
        "Held against the move `ratio` at full speed, both asked as the page asks. The last row is a loop of",
        "JavaScript against itself at full speed, so it should read 1 and 4.", "",
        "## Opening without signal", "",
        table(("slowed", "times a bare MicroPython's start at full speed", "from a picture of its memory"), openings),
        "From the opening of the kept page, the server being gone, to the first figure from the engine. A phone makes",
        "the picture once for a build, ten seconds after a start; until then modules are compiled when asked for.",
        "",
    ))


def how(found, load) -> str:
    """How it was measured, in one paragraph."""
    calm = "a calm machine" if max(load) < 2 else "a machine busy with other things"
    return "\n".join((
        f"Measured on {calm}: load {load[0]:.1f} before and {load[1]:.1f} after, {os.cpu_count()} cores,",
        f"Python {platform.python_version()}, FastAPI {version('fastapi')}, Chromium {found['browser']}.",
        "A slowed page is one whose process stands still for the rest of every four milliseconds, workers too: the",
        "browser's own slowing reaches only the page's thread, and the engine has another. The rest of the browser",
        "keeps its speed.",
        *BUSY * (max(load) >= 2), ""))


def in_short(page) -> str:
    """Three plain sentences for the README, of the page's own figures; each ratio with its spread."""
    pour = re.search(r"A key press on Pour \|[^|]*\| [^;|]*; (\d+) % and (\d+) % of a frame", page)
    *moves, last = (f"{move} takes {ratio}" for move, ratio in re.findall(
        r"`POST /api/([\w ]+)` \|[^|]*\| ([^|]*) \|", page))
    opening = re.search(r"^\| 1x \| ([^|]*) \|", page, re.M)
    sent = re.search(r"^([\d,]+) bytes in all", page, re.M)
    busy = BUSY[0] in page
    return "\n".join((
        f"On Pour a new figure appears {pour[1]} % of a frame after a key press, and 19 of 20 within {pour[2]} %.",
        f"A first visit is {int(sent[1].replace(',', '')) / 1000:.0f} kB, and the first answer without signal takes "
        f"{opening[1]} times",
        "as long as a bare interpreter's start.",
        f"On the server {', '.join(moves)} and {last}",
        "times as long as an empty endpoint",
        f"(in brackets the middle half of what was measured{BUSILY * busy}).", ""))


if __name__ == "__main__":
    main(*sys.argv[1:])
