"""Heat figure: the temperature of a pot over time, and of the same mix in a tray, from the integrator's own points."""
from .figures import area, figure, note, path
from .numbers import DOWN, shown, to_step
from .units import told

WIDTH, HEIGHT = 320, 200
LEFT, RIGHT, TOP, BOTTOM = 36, 8, 12, 28
MOST = 473.15  # K; the drawing ends here, a real pot smokes long before
TICKS = (5, 10, 15, 20, 30, 60, 120, 240, 480, 720, 1440, 2880, 5760, 11520)  # min


def curves(run, tray, usable, units):
    """run, tray: integrate.Run, tray None where there is none; usable: [s], the shorter of both estimates."""
    points, tray_points = run.points, tray.points if tray else ()
    end = points[-1][0]
    low = min([temp for _, temp, _ in points])
    floor = to_step(low - 273.15 - 2, 10.0, DOWN) + 273.15
    hottest = max([temp for _, temp, _ in points] + [temp for _, temp, _ in tray_points] + [floor + 30])
    top = min(MOST, hottest + 5)
    across, up = (WIDTH - LEFT - RIGHT) / end, (HEIGHT - TOP - BOTTOM) / (top - floor)
    base = HEIGHT - BOTTOM

    def spot(time, temp):
        return LEFT + time * across, base - (min(temp, top) - floor) * up

    shapes = []
    edge = LEFT + min(usable, end) * across
    shapes.append(area("usable", ((LEFT, TOP), (edge, TOP), (edge, base), (LEFT, base))))
    shapes.append(path("axis", ((LEFT, TOP), (LEFT, base), (WIDTH - RIGHT, base))))
    shapes.extend(_times(end, across, base))
    shapes.extend(_temperatures(floor, top, spot, units))
    if tray_points:
        shapes.append(path("tray", [spot(time, temp) for time, temp, _ in tray_points if time <= end * 1.0001]))
    shapes.append(path("pot", [spot(time, temp) for time, temp, _ in points]))
    return figure("heat", "Temperature over time", WIDTH, HEIGHT, shapes, _told(run, tray, usable, units))


def _times(end, across, base):
    step = TICKS[-1]
    for tick in reversed(TICKS):
        if end / (tick * 60) <= 5.5:
            step = tick
    shapes, time = [], 0
    while time * 60 <= end:
        text = shown(time / 60, 0) + " h" if step >= 60 else str(time)
        if time == 0:
            text = "0" if step >= 60 else "0 min"
        shapes.append(note("tick", LEFT + time * 60 * across, base + 14, text))
        time += step
    return shapes


def _temperatures(floor, top, spot, units):
    step = 10
    for wider in (20, 40):
        if (top - floor) / step > 5:
            step = wider
    shapes, temp = [], floor
    while temp <= top:
        _, y = spot(0, temp)
        degrees = told(temp, "degC", units, places=0).partition(" ")[0] + "°"
        shapes.append(note("tick", LEFT - 4, y + 4, degrees, "end"))
        temp += step
    return shapes


def _told(run, tray, usable, units):
    text = "The mix is usable for the first " + shown(usable / 60, 0, DOWN) + " minutes, shaded. "
    text += "It is hottest " + shown(run.peak_time / 60, 0) + " minutes after mixing, at about " + (
        told(min(run.peak, MOST), "degC", units, places=0)) + "."
    if tray:
        text += " In the tray it reaches " + told(min(tray.peak, MOST), "degC", units, places=0) + "."
    return text
