"""Compare tools, lines: what is said of each tool that is here, the best first."""
from ..catalogue.measuring import STROKE_DEVIATION
from ..forms.types import Found, Values
from ..mix.ratio_error_lines import aimed_at, within
from ..words.lines import MORE, WARN, Line, line, words
from ..words.messages import fact, message, quantity
from ..words.numbers import UP
from .by_stick_lines import EACH_ERROR

LABELS = {"scale": "tools-way.scale", "syringes": "tools-way.syringes", "graduated": "tools-way.graduated",
          "stick": "tools-way.stick", "pumps": "tools-way.pumps"}
EACH = "tools-counts.marks"
# way: what its figures count
ROUGH = {"scale": "tools-counts.scale", "syringes": EACH, "graduated": EACH,
         "stick": message("stick-each-mark", error=EACH_ERROR),
         "pumps": message("tools-counts.pumps", deviation=fact("%", STROKE_DEVIATION))}
NO_VOLUMES = "tools-unfit.volumes"
UNFIT = {"scale": "tools-unfit.scale", "syringes": NO_VOLUMES, "pumps": NO_VOLUMES,
         "graduated": "tools-unfit.graduated"}


def say(found: Found, values: Values) -> list[Line]:
    """The best way first, then each with its figure and its smallest batch in ratio.

    found: compare_tools.CompareResult
    """
    best, wanted = found.standings[0], aimed_at(found.wanted, values)
    lines = [line("best_way", "tools-best", best.error, "",
                  message("tools-best.text", tool=LABELS[best.way], within=within(best.error)),
                  rough=message("tools-best.rough", wanted=wanted))]
    if found.none_holds:
        lines.append(words("no_way", "tools-none-holds", message(
            "tools-none-holds.text", limit=quantity(found.limit, "%", places=1)), rank=WARN))
    for one in found.standings:
        if one.least is None:
            text = message("tools-here.none", within=within(one.error), wanted=wanted)
        else:
            least = quantity(one.least, "g" if one.unit == "kg" else "mL", UP)
            text = message("tools-here", within=within(one.error), least=least)
        lines.append(line("way_" + one.way, LABELS[one.way], one.error, "", text, rough=ROUGH[one.way],
                          rank=MORE))
    for way in found.unfit:
        lines.append(words("unfit_" + way, LABELS[way], UNFIT[way], rank=MORE))
    return lines
