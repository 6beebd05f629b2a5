"""Coats lines: what is said of coats. found: a `coats.CoatsResult`"""
from ..catalogue.losses import BY_KEY as REMEMBERED
from ..catalogue.surfaces import BY_KEY
from ..clock.cure_lines import STEP
from ..forms.clock_times import clock_said
from ..forms.types import Found, Said, Values
from ..things.lowest_temperature import lowest_said
from ..words.lines import ANSWER, MORE, SAY, Line, line, words
from ..words.messages import fact, message, quantity
from ..words.numbers import DOWN, UP, to_step
from .surface_lines import area_line, pot_lines, thin, warning, weight


def say(found: Found, values: Values) -> list[Line]:
    """What hurts first, then what to mix, the clock, the film, and what it is made of."""
    count = int(values["coats"])
    lines = _warnings(found, values)
    lines.append(line("mix", "coats-mix", found.mix, "kg", quantity(found.mix, "g", UP), rank=ANSWER,
                      rough=message("coats-mix.rough", first=_range(REMEMBERED["first_coat"]),
                                    later=_range(BY_KEY["later_coat"]))))
    lines.append(line("first", "coats-first-mix", found.first, "kg", quantity(found.first, "g", UP), rank=ANSWER,
                      rough="coats-first-mix.rough"))
    if count > 1:
        lines.append(line("later", "coats-later-mix", found.later, "kg", quantity(found.later, "g", UP), rank=ANSWER))
    lines.extend(pot_lines(found.pots, "surface-pots"))
    lines.extend(_clock(found, values, count))
    lines.append(line("film", "coats-film", found.film, "m", thin(found.film), rough="coats-film.rough"))
    if found.heaviest is not None:
        lines.append(line("heaviest", "coats-heaviest", found.heaviest, "kg/m2",
                          quantity(found.heaviest, "g/m2", DOWN), rough="coats-heaviest.rough"))
    if count < 3 and values["wood"] == "bare":
        lines.append(words("three", "coats-three", "coats-three.text", rank=SAY))
    lines.append(line("stays", "surface-stays", found.on_wood, "kg", weight(found.on_wood),
                      rough="surface-stays.rough"))
    if found.whole:
        lines.append(line("whole", "coats-whole", found.whole, "m", thin(found.whole, DOWN), rank=MORE,
                          rough="coats-whole.rough"))
    lines.append(area_line(found.area))
    if found.edge:
        lines.append(line("edge", "coats-edge", found.edge, "m2", quantity(found.edge, "m2", UP), rank=MORE))
    lines.append(line("left", "coats-left", found.left, "kg", quantity(found.left, "g", UP), rank=MORE,
                      rough="coats-left.rough"))
    lines.append(line("lasts", "coats-lasts", found.lasts, "s", quantity(found.lasts, "min", UP, 0), rank=MORE,
                      rough="coats-lasts.rough"))
    lines.append(words("rising", "coats-rising", "coats-rising.text", rank=SAY))
    return lines


def _range(row: Found) -> Said:
    return fact("g/m2", row.low, row.high)


def _warnings(found: Found, values: Values) -> list[Line]:
    lines = []
    if found.runs:
        lines.append(warning("runs", "coats-runs", message("coats-runs.text", heaviest=quantity(
            found.heaviest, "g/m2", DOWN))))
    if found.cold:
        lines.append(warning("cold", "coats-cold", message("coats-cold.text", lowest=lowest_said(values["system"]))))
    if [1 for _, latest in found.starts if latest is None]:
        lines.append(warning("sand_between", "coats-sand", "coats-sand.text"))
    return lines


def _clock(found: Found, values: Values, count: int) -> list[Line]:
    """When each coat may start."""
    if not found.starts:
        return [words("no_window", "coats-no-window", "coats-no-window.text", rank=SAY)]
    lines = []
    if count > 1:
        lines.append(line("today", "coats-today", found.today, "", message("coats-today.text", today=found.today,
                                                                          count=count), rough="coats-today.rough"))
    for place, (earliest, latest) in enumerate(found.starts):
        if not place:
            continue
        begins = clock_said(to_step(earliest, STEP, UP), values["hours"], UP)
        text = message("coats-start.sand", earliest=begins) if latest is None or to_step(latest, STEP, DOWN) < to_step(
            earliest, STEP, UP) else message("coats-start.text", earliest=begins, latest=clock_said(
                to_step(latest, STEP, DOWN), values["hours"], DOWN))
        lines.append(line("start_" + str(place + 1), message("coats-start", place=place + 1), earliest, "s", text,
                          rough="coats-start.rough" if place == 1 else ""))
    return lines
