"""Work rates: how fast these hands are along a seam: typed, the crew's own, learned from own batches, or remembered."""
from collections import namedtuple

from ..catalogue.rates import HANDS, RATES
from ..forms.types import Said
from ..words.messages import along, figure_of, listed, message, noted, row, unit
from .learned_rates import read_learned
from .records_shed import PEOPLE

TYPED, CREW, OWN, REMEMBERED = "typed", "crew", "own", "remembered"
SHORT = {"place": "pace-place", "tool": "pace-tool", "clean": "pace-clean", "wet": "pace-wet", "lay": "pace-lay",
         "roll": "pace-roll", "peel": "pace-peel"}

# name: of RATES; rate [m/s] as the plan counts it; whence: TYPED ..; learned: `Learned` where it is from own batches
Pace = namedtuple("Pace", ("name", "rate", "whence", "learned"))


def factors(rows: tuple) -> "dict[str, float]":
    """How quick each of HANDS or of POSITIONS is, of the first of them.

    >>> factors(HANDS)["practised"]
    1.0
    """
    return dict([(row[0], row[2]) for row in rows])


def paces(values: dict) -> list:
    """How fast each step goes, downhand and for one person: typed in the plan, the crew's own, learned, remembered."""
    crew = values["crew"]
    own = read_learned(crew["learned"]) if crew["learned"] else {}
    hand = factors(HANDS)[values["hand"]]
    found = []
    for name, _, usual, _, _, _ in RATES:
        typed, kept = values[name + "_rate"], crew[name]
        if typed:
            found.append(Pace(name, typed, TYPED, None))
        elif kept and not PEOPLE.from_memory(crew, name):
            found.append(Pace(name, kept, CREW, None))
        elif name in own:
            found.append(Pace(name, own[name].rate, OWN, own[name]))
        else:
            found.append(Pace(name, usual / 60 * hand, REMEMBERED, None))
    return found


def told(found: "list[Pace]") -> "tuple[Said, Said]":
    """(rates in the order of the work, where each is from), as they are said."""
    each = listed([row([SHORT[one.name], _short(one.rate)], " ") for one in found], "plain")
    said = []
    for one in found:
        if one.learned:
            said.append(message("pace-learned", pace=SHORT[one.name], count=one.learned.count,
                                low=_short(one.learned.low), high=_short(one.learned.high)))
    for whence in (TYPED, CREW, REMEMBERED):
        names = [SHORT[one.name] for one in found if one.whence == whence]
        if names:
            paces = listed(names, "plain") if len(names) < len(found) else "pace-all"
            said.append(message("pace-whence", paces=paces, whence=whence))
    return row([each, unit("m/min")], " "), noted(said)


def _short(rate: float) -> Said:
    """A rate [m/s] by the minute, without its unit."""
    return figure_of(along(rate * 60))
