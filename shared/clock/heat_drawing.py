"""Heat drawing: the temperature of a pot over time, and of the same mix in a tray, from the integrator's own points."""
from ..catalogue.containers import CONTAINERS
from ..catalogue.pots import MOST_PEAK
from ..drawing.shapes import area, figure, note, path
from ..forms.types import Found, Function, Said
from ..words.messages import figure_of, message, number, quantity, sentences, typed
from ..words.numbers import DOWN, UP, shown, to_step
from ..words.units import from_si, to_si, unit_for

NAMES = dict([(row[0], row[1]) for row in CONTAINERS])
WIDTH, HEIGHT = 320, 200
LEFT, RIGHT, TOP, BOTTOM = 36, 8, 12, 28
MOST = MOST_PEAK  # the drawing ends here
TICKS = (5, 10, 15, 20, 30, 60, 120, 240, 480, 720, 1440, 2880, 5760, 11520)  # min


def curves(kind: str, run: Found, tray: "Found | None", usable: float, units: str, seen: "list | tuple" = ()) -> dict:
    """kind: of CONTAINERS; run, tray: integrate.Run, tray None where there is none; usable: [s], as told.

    seen: (time [s], temperature [K]) that were read beside it
    """
    end = min(run.points[-1][0], max(2.5 * usable, 1.6 * run.peak_time))
    points, tray_points = _within(run.points, end), _within(tray.points, end) if tray else ()
    # a warm mix cools in a tray below its pot
    low = min([temp for _, temp in points] + [temp for _, temp in tray_points])
    floor = to_step(low - 273.15 - 2, 10.0, DOWN) + 273.15
    hottest = max([temp for _, temp in points] + [temp for _, temp in tray_points] + [floor + 30])
    top = min(MOST, hottest + 5)
    across, up = (WIDTH - LEFT - RIGHT) / end, (HEIGHT - TOP - BOTTOM) / (top - floor)
    base = HEIGHT - BOTTOM

    def spot(time: float, temp: float) -> "tuple[float, float]":
        return LEFT + time * across, base - (min(temp, top) - floor) * up

    shapes = []
    edge = LEFT + min(usable, end) * across
    shapes.append(area("usable", ((LEFT, TOP), (edge, TOP), (edge, base), (LEFT, base))))
    shapes.append(path("axis", ((LEFT, TOP), (LEFT, base), (WIDTH - RIGHT, base))))
    shapes.extend(_times(end, across, base))
    shapes.extend(_temperatures(floor, top, spot, units))
    if tray_points:
        shapes.append(path("tray", [spot(time, temp) for time, temp in tray_points]))
    shapes.append(path("pot", [spot(time, temp) for time, temp in points]))
    shapes.append(_named("name", spot(run.peak_time, run.peak), NAMES[kind], base))
    if tray_points:
        shapes.append(_named("name", spot(*tray_points[-1]), "heat-curve-tray", base))
    shapes.append(note("name", LEFT + 4, TOP + 10, "heat-curve-usable", "start"))
    for time, temp in seen:
        x, y = spot(time, temp)
        if time <= end:
            shapes.append(note("name", x, y + 4, typed("×")))
    return figure("heat", "heat-curve", WIDTH, HEIGHT, shapes, _told(run, tray, usable))


def _within(points: list, end: float) -> "list[tuple[float, float]]":
    """(time, temperature) of the points up to `end`, the last one on it."""
    found, before = [], points[0]
    for point in points:
        if point[0] > end:
            part = (end - before[0]) / (point[0] - before[0])
            found.append((end, before[1] + part * (point[1] - before[1])))
            break
        found.append((point[0], point[1]))
        before = point
    return found


def _named(role: str, spot: tuple, text: Said, base: float) -> dict:
    """A curve's name beside its top, inside the frame and above the time axis."""
    x, y = spot
    left = x > WIDTH / 2
    return note(role, x - 4 if left else x + 4, min(max(y + (12 if y < TOP + 20 else -4), TOP + 20), base - 4), text,
                "end" if left else "start")


def _times(end: float, across: float, base: float) -> list:
    step = TICKS[-1]
    for tick in reversed(TICKS):
        if end / (tick * 60) <= 5.5:
            step = tick
    shapes, time = [], 0
    while time * 60 <= end:
        figured = quantity(time * 60, "h", places=0) if step >= 60 else quantity(time * 60, "min", places=0)
        # the unit stands once: behind the first of the minutes, behind all of the hours but the first
        text = figured if (time == 0) == (step < 60) else figure_of(figured)
        shapes.append(note("tick", LEFT + time * 60 * across, base + 14, text))
        time += step
    return shapes


def _temperatures(floor: float, top: float, spot: Function, units: str) -> list:
    unit = unit_for("degC", units)
    low, high = from_si(floor, unit), from_si(top, unit)
    step = 5.0
    for wider in (10.0, 20.0, 50.0, 100.0):
        if (high - low) / step > 5.5:
            step = wider
    shapes, degrees = [], to_step(low, step, UP)
    while degrees <= high:
        _, y = spot(0, to_si(degrees, unit))
        text = message("heat-curve-degrees", degrees=number(shown(degrees, 0)))
        shapes.append(note("tick", LEFT - 4, y + 4, text, "end"))
        degrees += step
    return shapes


def _told(run: Found, tray: "Found | None", usable: float) -> Said:
    pot = message("heat-curve.told", usable=number(shown(usable / 60, 0, DOWN)),
                  hottest=number(shown(run.peak_time / 60, 0)), peak=_peak(run))
    return sentences([pot, message("heat-curve.tray-told", peak=_peak(tray)) if tray else ""])


def _peak(run: Found) -> Said:
    most = quantity(min(run.peak, MOST), "degC", places=0)
    return (message("heat-curve-peak.about", peak=most) if run.peak <= MOST else
            message("heat-curve-peak.over", peak=most))
