"""Trial lines: how a test cup goes, what can hurt, and what it says of the minutes of its system."""
from ..catalogue.containers import TOO_HOT
from ..catalogue.starts import BATCH
from ..catalogue.trials import UP_TO
from ..forms.late import late
from ..forms.types import Found, Values
from ..words.lines import ANSWER, ASK, MORE, SAY, WARN, Line, line, words
from ..words.numbers import DOWN, UP, shown
from ..words.units import braces, told
from .heat_lines import minutes

HOW = (
    ("Place", "Outdoors, on bare ground, in the shade, out of the wind. Nothing near it that burns."),
    ("Mix", "Weigh it by the label, no more than {}. The watch starts with the first stir."),
    ("Thermometer", "Never used for food again. Its tip in the middle, held by a stick. Wipe it before the mix sets."),
    ("Read it", "The rise, the hottest, some while it cools. Or only when it pulls strings."),
)
HOT = ("Gloves and goggles. Never in the hand. From {} on leave it where it stands, nobody over it: it can smoke, burn "
       "skin and catch fire. Keep upwind. The product's data sheet comes first.")


def say(found: "Found | None", values: Values) -> list[Line]:
    """found: `trial.TrialResult`, None where nothing was seen"""
    lines, rank = [], MORE
    if found is None:
        rank = SAY
    elif not found.sure:
        lines.append(words("not_sure", "Not sure yet", "Thick " + _span(found.thick) + " after mixing: too wide to "
                           "count on. Type more readings, best where it climbs, or when it pulls strings.", rank=ASK))
    else:
        lines = _found(found, values)
    lines.append(words("hot", "The cup gets hot", HOT.format(braces("degC", TOO_HOT)), rank=WARN))
    most = told(values["mass"], "g", values["units"])
    return lines + [words("how_" + str(place + 1), label, text.format(most), rank=rank)
                    for place, (label, text) in enumerate(HOW)]


def _found(found: Found, values: Values) -> list[Line]:
    units, cup, usual = values["units"], found.cup, found.usual
    lines = [line("usable", "Usable for, this cup", cup.usable.time, "s", minutes(cup.usable.time), rank=ANSWER,
                  rough="nine times in ten " + _span(cup[1:]) + "; " + shown(cup.usable.share * 100) + "% of the time "
                        "until it is thick")]
    rough = _span(usual[1:])
    if found.before:
        rough += "; without the test " + minutes(found.before.time)
    if UP_TO * values["mass"] < BATCH:
        rough += "; far more than was tested: rougher"
    lines.append(line("usual", told(BATCH, "g", units) + " in a cup", usual.usable.time, "s",
                      minutes(usual.usable.time), rough=rough))
    if found.quicker:
        lines.append(line("quicker", "Cures", found.quicker[0], "", _times(found.quicker[0], found.quicker[1]),
                          rough="as fast as it was estimated before"))
    if found.tells_loss:
        lines.append(line("loss", "Sheds heat", found.loss[0], "", _times(found.loss[1], found.loss[2]),
                          rough="as fast as estimated; the less, the hotter"))
    else:
        lines.append(words("loss", "Sheds heat", "as estimated", rough="readings while it cools tell it"))
    return lines


def leads(found: "Found | None", values: Values) -> list[dict]:
    """To keep it. found: as for `say`"""
    if found is None or not found.sure:
        return []
    text = late("trials").trials_text(found.rows)
    if values["system"]["trials"] == text:
        return []
    return [{"label": "Keep it with this system", "screen": "trial", "pairs": [["system.trials", text]]}]


def _span(times: tuple) -> str:
    return "from " + minutes(times[0]) + " to " + minutes(times[1])


def _times(one: float, other: float) -> str:
    up = UP if one > other else DOWN
    return shown(one, 2, up) + " to " + shown(other, 2, DOWN if one > other else UP) + " times"
