"""Trial lines: how a test cup goes, what can hurt, and what it says of the minutes of its system."""
from ..catalogue.containers import TOO_HOT
from ..catalogue.starts import BATCH
from ..catalogue.trials import UP_TO
from ..forms.late import late
from ..forms.types import Found, Said, Values
from ..words.lines import ANSWER, ASK, MORE, SAY, WARN, Line, line, words
from ..words.messages import fact, message, noted, number, quantity
from ..words.numbers import DOWN, UP, shown
from .heat_lines import minutes


def say(found: "Found | None", values: Values) -> list[Line]:
    """found: `trial.TrialResult`, None where nothing was seen"""
    lines, rank = [], MORE
    if found is None:
        rank = SAY
    elif not found.sure:
        least, most = _ends(found.thick)
        lines.append(words("not_sure", "trial-not-sure", message("trial-not-sure.text", least=least, most=most),
                           rank=ASK))
    else:
        lines = _found(found, values)
    lines.append(words("hot", "trial-hot", message("trial-hot.text", hot=fact("degC", TOO_HOT)), rank=WARN))
    how = (("trial-place", "trial-place.text"),
           ("trial-mix", message("trial-mix.text", most=quantity(values["mass"], "g"))),
           ("trial-thermometer", "trial-thermometer.text"), ("trial-read", "trial-read.text"))
    return lines + [words("how_" + str(place + 1), label, text, rank=rank) for place, (label, text) in enumerate(how)]


def _found(found: Found, values: Values) -> list[Line]:
    cup, usual = found.cup, found.usual
    least, most = _ends(cup[1:])
    lines = [line("usable", "trial-usable", cup.usable.time, "s", minutes(cup.usable.time), rank=ANSWER,
                  rough=message("trial-usable.rough", least=least, most=most,
                                share=number(shown(cup.usable.share * 100))))]
    least, most = _ends(usual[1:])
    rough = [message("trial-usual.rough", least=least, most=most)]
    if found.before:
        rough.append(message("trial-usual.before", time=minutes(found.before.time)))
    if UP_TO * values["mass"] < BATCH:
        rough.append("trial-usual.far")
    lines.append(line("usual", message("trial-usual", mass=quantity(BATCH, "g")), usual.usable.time, "s",
                      minutes(usual.usable.time), rough=noted(rough)))
    if found.quicker:
        lines.append(line("quicker", "trial-cures", found.quicker[0], "", _times(found.quicker[0], found.quicker[1]),
                          rough="trial-cures.rough"))
    if found.tells_loss:
        lines.append(line("loss", "trial-sheds", found.loss[0], "", _times(found.loss[1], found.loss[2]),
                          rough="trial-sheds.rough"))
    else:
        lines.append(words("loss", "trial-sheds", "trial-sheds.usual", rough="trial-sheds.usual-rough"))
    return lines


def leads(found: "Found | None", values: Values) -> list[dict]:
    """To keep it. found: as for `say`"""
    if found is None or not found.sure:
        return []
    text = late("trials").trials_text(found.rows)
    if values["system"]["trials"] == text:
        return []
    return [{"label": "trial-keep", "screen": "trial", "pairs": [["system.trials", text]]}]


def _ends(times: tuple) -> tuple[Said, Said]:
    return minutes(times[0]), minutes(times[1])


def _times(one: float, other: float) -> Said:
    up = UP if one > other else DOWN
    return message("trial-times", one=number(shown(one, 2, up)),
                   other=number(shown(other, 2, DOWN if one > other else UP)))
