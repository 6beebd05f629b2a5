"""Bench lines: what is said of each tool of the bench, the best first."""
from ..catalogue.measuring import STROKE_DEVIATION
from ..forms.types import Found, Values
from ..mix.ratio_error_lines import wanted_text, within
from ..words.lines import MORE, WARN, Line, line, words
from ..words.numbers import UP, bare, shown
from ..words.units import told
from .by_stick_lines import EACH_MARK

LABELS = {"scale": "Scale", "syringes": "Syringes", "graduated": "Graduated cup", "stick": "Cup and stick",
          "pumps": "Pumps"}
EACH = "here rounding and reading together, the smallest batch by each alone"
# way: what its figures count
ROUGH = {"scale": "here rounding and reading together, the smallest batch by reading alone",
         "syringes": EACH, "graduated": EACH, "stick": EACH_MARK,
         "pumps": "strokes taken to differ by " + bare(STROKE_DEVIATION * 100, 1)
                  + "% (s), from memory; the smallest batch by whole strokes alone"}
NO_VOLUMES = "not for this label: one is needed for each part, and the figures that give volumes"
UNFIT = {"scale": "not for this label: its weights would rest on densities that nobody has read closely enough",
         "syringes": NO_VOLUMES, "pumps": NO_VOLUMES, "graduated": "its marks are too coarse for this ratio"}


def say(found: Found, values: Values) -> list[Line]:
    """The best way first, then each with its figure and its smallest batch in ratio.

    found: compare_tools.CompareResult
    """
    best, wanted = found.standings[0], wanted_text(found.wanted, values)
    lines = [line("best_way", "Most accurate here", best.error, "", LABELS[best.way] + ", " + within(best.error),
                  rough="rounding and reading of this batch together; wanted " + wanted)]
    if found.none_holds:
        lines.append(words("no_way", "None holds the ratio", "No tool of this bench holds ±{}% for so small a batch. "
                           "Mix more, or take a finer tool.".format(shown(found.limit * 100, 1)), rank=WARN))
    for one in found.standings:
        if one.least is None:
            least = "no batch in ratio for " + wanted
        else:
            least = "in ratio from " + told(one.least, "g" if one.unit == "kg" else "mL", values["units"], UP)
        lines.append(line("way_" + one.way, LABELS[one.way], one.error, "", within(one.error) + " here; " + least,
                          rough=ROUGH[one.way], rank=MORE))
    for way in found.unfit:
        lines.append(words("unfit_" + way, LABELS[way], UNFIT[way], rank=MORE))
    return lines
