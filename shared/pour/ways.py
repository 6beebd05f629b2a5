"""Ways: the modules of each way of measuring, and what its readings must be."""
from ..equations.cups import full_volume
from ..equations.rounding import DOWN, to_step
from ..forms.errors import InputError
from ..forms.late import late
from ..forms.memo import once
from ..forms.types import Found, Module, Said, Values
from ..mix import ratio, ratio_doubt, ratio_doubt_lines
from ..words.messages import message
from . import by_scale, by_scale_lines
from .measured_out import FIELDS, follow, levels_of, readings, whole_levels

SLACK = 1 + 1e-9  # computed volumes differ in their last bits between runtimes


def module_of(way: str) -> str:
    """The name of the module of a way of measuring; with "_lines" behind it that of what is said of it.

    >>> module_of("stick"), module_of("syringes")
    ('by_stick', 'by_marks')
    """
    return {"scale": "by_scale", "pumps": "by_pumps", "stick": "by_stick"}.get(way, "by_marks")


def way_of(way: str) -> Module:
    """The module of a way of measuring; imported when it is first asked, so that a phone starts with what it needs."""
    return by_scale if way == "scale" else late(module_of(way))


def reckoned(values: Values) -> Found:
    """What the tool of the chosen way must show, and how far it can be trusted, once for one question: a ScaleResult,
    PumpsResult, SyringesResult, CupResult or StickResult."""
    return once(values, "way", lambda: way_of(values["way"]).reckon(values))


def say(found: Found, values: Values) -> list:
    """The same in lines. found: as `reckoned` gives it"""
    lines = by_scale_lines if values["way"] == "scale" else late(module_of(values["way"]) + "_lines")
    basis = ratio_doubt.basis_of(values["way"])
    doubt = ratio_doubt.doubt(values["system"], basis)
    return lines.say(found, values) + ratio_doubt_lines.beside(doubt, basis)


def written(found: Found, values: Values) -> list[Said]:
    """What the tool must show for each part, a figure each, for the ear and the log. found: as `reckoned` gives it"""
    lines = by_scale_lines if values["way"] == "scale" else late(module_of(values["way"]) + "_lines")
    return lines.written(found, values)


def check(values: Values) -> None:
    """Readings that cannot be, and tools that do not fit the label."""
    batch = ratio.mix(values)
    way_of(values["way"]).check(values, batch)
    ratio_doubt_lines.check(values["system"], values["way"])
    if values["way"] != "scale":
        check_readings(values, batch.volumes)


def check_readings(values: Values, wanted: tuple[float, ...]) -> None:
    """Readings come in order, and in one cup they grow."""
    group, field, grows = FIELDS[values["way"]]
    rows, before = values[group] or [], 0.0
    for place, row in enumerate(rows):
        path = "{}.{}.{}".format(group, place, field)
        if row is None or row[field] is None:
            if any([later is not None and later[field] is not None for later in rows[place:]]):
                raise InputError(path, "measure-order")
            break
        if place >= len(wanted):
            raise InputError(path, message("measure-parts", count=len(wanted)))
        if grows and row[field] <= before:
            raise InputError(path, "measure-rises")
        before = row[field]
    done = readings(values)
    if done and grows:
        _check_room(values, wanted, done, "{}.{}.{}".format(group, len(done) - 1, field))


def _check_room(values: Values, wanted: tuple[float, ...], done: tuple[float, ...], path: str) -> None:
    """What is in the cup, and what must follow it, stays below the rim or the highest mark."""
    if values["way"] == "stick":
        cup = values["cup"]
        top, most, edge = cup["height"], full_volume(cup), "rim"
    else:
        if late("by_marks").told_in_cup(values):  # never refused, however its figures are rounded
            return
        cup, top, edge = None, values["graduated"]["holds"], "mark"
        most = to_step(top, values["graduated"]["step"], DOWN)
    if done[-1] > top * SLACK:
        raise InputError(path, message("measure-above", edge=edge))
    volumes = follow(wanted, levels_of(done, cup))
    if sum(volumes) <= most * SLACK and cup is None and len(done) < len(wanted):
        volumes = whole_levels(wanted, levels_of(done), values["graduated"]["step"]).volumes
    elif len(done) == len(wanted):
        most = max(most, top)
    if sum(volumes) > most * SLACK:
        raise InputError(path, message("measure-too-full", edge=edge))
