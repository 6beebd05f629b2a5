"""Measure: from the parts of a mix to what the tool on the bench must show."""
from . import ratio
from .errors import InputError
from .inputs import Choice, Group, Number, Pick
from .lines import ANSWER, ASK, BESIDE, MORE, WARN, line, spans, words
from .numbers import DOWN, UP, shown
from .pumping import best_strokes, smallest_strokes, top_up
from .records import SCALE
from .units import from_si, sign, told
from .weighing import COVERAGE, corrected, ratio_error, running, smallest_batch, worst_uncertainty

AIM, STOP = 0.02, 0.05  # of the hardener, from memory; the label's own figure goes before them
ROUGH_AIM = "aim at 2%, stop at 5%: from memory, the label goes first"
ON_SCALE = (("way", ("scale",)),)
TOLERANCE_FOLD = "How exact"

INPUTS = ratio.INPUTS + (
    Pick("scale", "Scale", SCALE, default="1g", fold="Scale", help="With pumps: only for the top-up."),
    Choice("zeroing", "The scale is set to zero", (
        ("once", "once, with the empty cup on it"), ("each", "again before each part")), fold=TOLERANCE_FOLD,
        when=ON_SCALE),
    Number("tolerance", "Ratio error wanted", unit="%", low=0, high=20, above=True, optional=True, fold=TOLERANCE_FOLD,
           help="Left empty: the label's, or 2 % (from memory)."),
    Group("readings", "What the scale really showed", (
        Number("shown", "After this part", unit="g", low=0, high=200000, above=True, optional=True),
    ), most=5, gaps=True, rows=2, when=ON_SCALE, each="After part", fold="What it really showed"),
)


def tolerance(values) -> float:
    """The ratio error to aim for [-]: typed, else the label's, else what is remembered."""
    return values["tolerance"] or values["system"]["tolerance"] or AIM


def actual_readings(values):
    """Running readings that were typed [kg], in the order of pouring, as far as they go without a gap."""
    found = []
    for row in values.get("readings") or []:
        if row is None or row["shown"] is None:
            break
        found.append(row["shown"])
    if values.get("zeroing") == "each":
        total, cumulated = 0.0, []
        for reading in found:
            total += reading
            cumulated.append(total)
        return tuple(cumulated)
    return tuple(found)


def check(values):
    """Readings that cannot be, and tools that do not fit the label."""
    batch = ratio.mix(values)
    if values["way"] == "scale":
        if not batch.masses:
            raise InputError("system.densities", "Densities: " + ratio.NO_DENSITIES.format("volume", "weight")
                             + " A scale needs them.")
        _check_readings(values, len(batch.names))
    if values["way"] == "pumps":
        found = ratio.basis(values["system"])
        if not found.volume_parts:
            raise InputError("system.densities", "Densities: " + ratio.NO_DENSITIES.format("weight", "volume")
                             + " Pumps need them.")
        strokes = ratio.strokes_volumes(values["pumps"], found.densities)
        if len(strokes) != len(batch.names):
            raise InputError("pumps.strokes", "Pumps: the label has {} parts, here are {} pumps".format(
                len(batch.names), len(strokes)))


def _check_readings(values, count):
    rows, before = values["readings"] or [], 0.0
    for place, row in enumerate(rows):
        field = "readings.{}.shown".format(place)
        if row is None or row["shown"] is None:
            if any([later is not None and later["shown"] is not None for later in rows[place:]]):
                raise InputError(field, "Type this reading before the later ones")
            return
        if place >= count:
            raise InputError(field, "The label has only {} parts".format(count))
        if values["zeroing"] == "once" and row["shown"] <= before:
            raise InputError(field, "With the cup tared once the readings grow: this one must be more than the one "
                                    "before it")
        before = row["shown"]


CHECKS = (ratio.check, check)


def answer(values):
    """The readings or strokes in the order of pouring, then how far they can be trusted."""
    if values["way"] == "pumps":
        return _by_pumps(values)
    return _by_scale(values)


def _by_scale(values):
    batch, step, units = ratio.mix(values), values["scale"]["step"], values["units"]
    unit = values["scale"]["step_unit"]
    actual = actual_readings(values)
    rezeroed = values["zeroing"] == "each"
    masses = corrected(batch.masses, actual)
    readings = running(masses, step) if not rezeroed else tuple([running((m,), step)[0] for m in masses])
    lines = [words("tare", "Cup on the scale", "set it to 0", part="tool", rank=MORE)]
    for place, (reading, span) in enumerate(zip(readings, spans(masses))):
        lines.append(_scale_line(values, batch, place, reading, actual, unit, span))
    lines.extend(_scale_warnings(values, masses, readings, step))
    rounded = _parts_of(readings, rezeroed)
    if min(rounded) > 0:
        error = ratio_error(rounded, batch.masses)
        lines.append(line("rounding", "Off ratio by rounding", error, "", _percent(error), rank=MORE,
                          rough="what the scale's step alone brings; below 0: short of hardener"))
        spread = COVERAGE * worst_uncertainty(masses, step, rezeroed)
        lines.append(line("spread", "The scale holds the ratio within", spread, "",
                          "±" + shown(spread * 100, 1, UP) + "%",
                          rough="in about 95 of 100 pours (k = 2), from its step of " + on_scale(step, unit, values)
                          + " alone"))
    wanted = tolerance(values)
    least = smallest_batch(batch.masses, step, wanted, rezeroed)
    lines.append(line("smallest", "Smallest honest batch", least, "kg", told(least, "g", units, UP), rank=BESIDE,
                      rough="rounded up, for ±" + shown(wanted * 100, 1) + "%"
                            + ("" if values["tolerance"] or values["system"]["tolerance"] else "; " + ROUGH_AIM)))
    if batch.mass < least * (1 - 1e-9):
        lines.append(words("too_small", "Too small for this scale", "Below " + told(least, "g", units, UP)
                           + " this scale cannot hold the ratio. Mix more, or take a finer scale.", rank=WARN))
    return lines


def _scale_line(values, batch, place, reading, actual, unit, span):
    names, units = batch.names, values["units"]
    done = place < len(actual)
    rezeroed = values["zeroing"] == "each"
    verb = " poured" if done else (", from zero, until it shows" if rezeroed else ", until it shows")
    rough = ""
    if done:
        rough = "as you read it; planned " + told(batch.masses[place], "g", units)
    elif actual:
        rough = "follows what was really poured"
    return line("reading_" + "abcde"[place], names[place] + verb, reading, "kg", on_scale(reading, unit, values),
                rough=rough, part="abcde"[place], rank=BESIDE if done else ANSWER, span=span)


def on_scale(mass: float, unit: str, values) -> str:
    """A reading as the scale shows it: in the unit of its step and with the decimals of its step."""
    step = from_si(values["scale"]["step"], unit)
    places = 0
    while places < 4 and abs(float(shown(step, places)) - step) > 1e-6 * step:
        places += 1
    return shown(from_si(mass, unit), places) + " " + sign(unit)


def _parts_of(readings, rezeroed):
    if rezeroed:
        return readings
    return tuple([after - before for before, after in zip((0.0,) + tuple(readings), readings)])


def _scale_warnings(values, masses, readings, step):
    lines = []
    most = values["scale"]["most"]
    if most and sum(masses) > most:
        lines.append(words("over_scale", "More than the scale weighs", "The mix alone is "
                           + told(sum(masses), "g", values["units"]) + ", the scale ends at "
                           + told(most, "g", values["units"], DOWN) + ". Weigh in two cups.", rank=WARN))
    actual = actual_readings(values)
    if len(actual) == len(masses):
        error = ratio_error(masses, ratio.mix(values).masses)
        wanted = tolerance(values)
        off = abs(error) > wanted + 1e-9
        lines.append(line("poured", "Poured: off ratio by", error, "", _percent(error), rank=WARN if off else BESIDE,
                          rough=("beyond ±" if off else "within ±") + shown(wanted * 100, 1)
                          + "%; below 0: short of hardener"))
    return lines


def _by_pumps(values):
    batch, units = ratio.mix(values), values["units"]
    found = ratio.basis(values["system"])
    strokes = ratio.strokes_volumes(values["pumps"], found.densities)
    wanted = tolerance(values)
    best = best_strokes(batch.volumes, strokes, wanted)
    lines = []
    for place, (count, span) in enumerate(zip(best.counts, spans(best.volumes))):
        lines.append(line("strokes_" + "abcde"[place], batch.names[place], count, "",
                          str(count) + (" stroke" if count == 1 else " strokes"),
                          rough=told(best.volumes[place], "mL", units), part="abcde"[place], rank=ANSWER, span=span))
    volume = sum(best.volumes)
    lines.append(line("pumped", "Pumped, in all", volume, "m3", _both(volume, batch.density, units), part="mix",
                      rough="wanted " + told(batch.volume, "mL", units)))
    off = abs(best.error) > wanted + 1e-9
    lines.append(line("strokes_error", "Off ratio by whole strokes", best.error, "", _percent(best.error),
                      rank=WARN if off else BESIDE,
                      rough="more than ±" + shown(wanted * 100, 1) + "%: top up as below, or mix another amount"
                      if off else "below 0: short of hardener; full, even strokes taken for granted"))
    lines.extend(_top_up(values, batch, best, found))
    least = smallest_strokes(found.volume_parts, strokes, wanted)
    if least is None:
        lines.append(words("smallest", "Smallest honest batch", "none with these pumps", rank=ASK,
                           rough="up to 60 strokes no whole numbers come within ±" + shown(wanted * 100, 1)
                                 + "%. Were the strokes measured? Top up on a scale, or weigh."))
    else:
        least_volume = sum(least.volumes)
        lines.append(line("smallest", "Smallest honest batch", least_volume, "m3",
                          " : ".join([str(count) for count in least.counts]) + " strokes, "
                          + told(least_volume, "mL", units, UP), rank=MORE,
                          rough="for ±" + shown(wanted * 100, 1) + "% with these pumps; rounded up"))
    return lines


def _both(volume, density, units):
    text = told(volume, "mL", units)
    return text + " · " + told(volume * density, "g", units) if density else text


def _top_up(values, batch, best, found):
    lines = []
    for place, lack in enumerate(top_up(best.volumes, found.volume_parts)):
        if lack <= 1e-9 * sum(best.volumes):
            continue
        text = told(lack, "mL", values["units"])
        if found.densities:
            text = on_scale(lack * found.densities[place], values["scale"]["step_unit"], values) + " on the scale"
        lines.append(line("top_up_" + "abcde"[place], "Exactly in ratio: add " + batch.names[place].lower(), lack, "m3",
                          text, part="abcde"[place], rough="after the strokes above"))
    return lines


def _percent(error):
    text = shown(error * 100, 1)
    return (text if text.startswith("-") else "+" + text if float(text) else text) + "%"
