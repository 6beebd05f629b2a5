"""By scale: the running readings on one scale, corrected by what it really showed."""
from ..equations.weighing import COVERAGE, corrected, ratio_error, running, smallest_batch, worst_uncertainty
from ..forms.errors import InputError
from ..forms.memo import once
from ..mix import ratio
from ..mix.ratio_error import ROUGH_AIM, aim, off_by, percent, poured_line, tolerance
from ..words.lines import ANSWER, BESIDE, MORE, WARN, line, spans, words
from ..words.numbers import DOWN, NEAREST, UP, shown, to_step
from ..words.units import from_si, sign, told

NOT_AGAIN = "do not zero again: this is all in the cup"


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


def check(values, batch):
    """Weights must be known, and the readings must be able to follow each other."""
    if not batch.masses:
        raise InputError("system.densities", "Densities: " + ratio.no_densities(values["system"], "volume")
                         + " A scale needs them.")
    _check_readings(values, len(batch.names))


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


def on_display(values):
    """What the scale must show after each part: (masses in ratio [kg], readings [kg], their lines)."""
    return once(values, "by_scale", lambda: _reckoned(values))


def _reckoned(values):
    batch, step, unit = ratio.mix(values), values["scale"]["step"], values["scale"]["step_unit"]
    actual = actual_readings(values)
    rezeroed = values["zeroing"] == "each"
    masses, cumulated = poured_masses(values), running(batch.masses, step, actual, rezeroed)
    readings = tuple([to_step(reading, step) for reading in (_parts_of(cumulated, False) if rezeroed else cumulated)])
    return masses, readings, [_scale_line(values, batch, place, reading, actual, unit, span)
                              for place, (reading, span) in enumerate(zip(readings, spans(masses)))]


def answer(values):
    """The readings in the order of pouring, then how far they can be trusted."""
    batch, step, units = ratio.mix(values), values["scale"]["step"], values["units"]
    unit = values["scale"]["step_unit"]
    rezeroed = values["zeroing"] == "each"
    masses, readings, told_readings = on_display(values)
    lines = [words("tare", "Cup on the scale", "zero it before each part" if rezeroed else
                   "zero it once and not again; add each part until it shows this much in all", part="tool", rank=MORE)]
    lines.extend(told_readings)
    lines.extend(_scale_warnings(values, masses, readings, step))
    rounded = _parts_of(readings, rezeroed)
    if min(rounded) > 0:
        if not [one for one in lines if one.name == "poured"]:  # that line says what is poured, rounding and all
            error = ratio_error(rounded, batch.masses)
            lines.append(line("rounding", "Off ratio by rounding", error, "", percent(error), rank=MORE,
                              rough="what the scale's step alone brings; "
                              + off_by(batch.names, rounded, batch.masses)))
        spread = COVERAGE * worst_uncertainty(masses, step, rezeroed)
        lines.append(line("spread", "The scale holds the ratio within", spread, "",
                          "±" + shown(spread * 100, 1, UP) + "%",
                          rough="in about 95 of 100 pours, from its step of " + on_scale(step, unit, values)
                          + " alone"))
    wanted = tolerance(values)
    least = smallest_batch(batch.masses, step, wanted, rezeroed)
    lines.append(line("smallest", "Smallest honest batch", least, "kg", told(least, "g", units, UP), rank=BESIDE,
                      rough="rounded up, for " + aim(wanted) + " by reading alone, rounding comes on top"
                            + ("" if values["tolerance"] or values["system"]["tolerance"] else "; " + ROUGH_AIM)))
    if sum(masses) < least * (1 - 1e-9):
        lines.append(words("too_small", "Too small for this scale", "Below " + told(least, "g", units, UP)
                           + " this scale cannot hold the ratio. Mix more, or take a finer scale.", rank=WARN))
    return lines


def poured_masses(values):
    """The parts [kg] that all else is reckoned with: as planned, or as they follow from what the scale really showed.

    What was typed just as it was told changes nothing that follows, until all of it is poured.
    """
    masses, actual = ratio.mix(values).masses, actual_readings(values)
    if len(actual) < len(masses):
        step = values["scale"]["step"]
        told = running(masses, step, (), values.get("zeroing") == "each")
        if all([abs(reading - one) <= step / 1000 for reading, one in zip(actual, told)]):
            return masses
    return corrected(masses, actual)


def _scale_line(values, batch, place, reading, actual, unit, span):
    names = batch.names
    done = place < len(actual)
    rezeroed = values["zeroing"] == "each"
    verb = " poured" if done else (", from zero, until it shows" if rezeroed else ", until it shows")
    rough = ""
    if done:
        planned = batch.masses[place] if rezeroed else sum(batch.masses[:place + 1])
        rough = "as you read it; planned " + weighed(planned, values)
    else:
        said = ["follows what was really poured"] if actual else []
        rough = "; ".join(said + ([NOT_AGAIN] if place and not rezeroed else []))
    return line("reading_" + "abcde"[place], names[place] + verb, reading, "kg", on_scale(reading, unit, values),
                rough=rough, part="abcde"[place], rank=BESIDE if done else ANSWER, span=span)


def on_scale(mass: float, unit: str, values) -> str:
    """A reading as the scale shows it: in the unit of its step and with the decimals of its step."""
    step = from_si(values["scale"]["step"], unit)
    places = 0
    while places < 4 and abs(float(shown(step, places)) - step) > 1e-6 * step:
        places += 1
    return shown(from_si(mass, unit), places) + " " + sign(unit)


def weighed(mass: float, values, toward=NEAREST) -> str:
    """What is weighed, to three figures: in the unit that the scale shows, or where none is asked in the user's."""
    scale = values.get("scale")
    return told(mass, scale["step_unit"], toward=toward) if scale else told(mass, "g", values["units"], toward)


def to_add(mass: float, values, toward=NEAREST, where="") -> str:
    """What is to be added, as the scale shows it; where that would be nothing, how much it is and that it cannot.

    where: said behind what the scale shows
    """
    step = values["scale"]["step"]
    shows = to_step(mass, step, toward)
    if shows < step / 2:
        return weighed(mass, values) + ", less than the scale shows"
    return on_scale(shows, values["scale"]["step_unit"], values) + where


def _parts_of(readings, rezeroed):
    if rezeroed:
        return readings
    return tuple([after - before for before, after in zip((0.0,) + tuple(readings), readings)])


def _scale_warnings(values, masses, readings, step):
    lines = []
    most = values["scale"]["most"]
    if most and sum(masses) > most:
        lines.append(words("over_scale", "More than the scale weighs", "The mix alone is "
                           + weighed(sum(masses), values) + ", the scale ends at "
                           + weighed(most, values, DOWN) + ". Weigh in two cups.", rank=WARN))
    return lines + _poured(values, masses, len(actual_readings(values)))


def _poured(values, masses, done):
    """How far off the parts are that are poured; with some still to come only where that is too far to go on."""
    if done < 2:
        return []
    batch = ratio.mix(values)
    found = poured_line(values, batch.names, masses[:done], batch.masses[:done])
    return [found] if done == len(masses) or found.rank == WARN else []
