"""Ways: the module of each way of measuring, and what its readings must be."""
from ..equations.cups import full_volume
from ..forms.errors import InputError
from ..forms.late import late
from ..mix import ratio
from ..words.numbers import DOWN, to_step
from . import by_scale
from .measured_out import FIELDS, follow, levels_of, readings, whole_levels

SLACK = 1 + 1e-9  # computed volumes differ in their last bits between runtimes


def way_of(name):
    """The module of a way of measuring; imported when it is first asked, so that a phone starts with what it needs."""
    if name == "scale":
        return by_scale
    return late({"pumps": "by_pumps", "stick": "by_stick"}.get(name, "by_marks"))


def check(values):
    """Readings that cannot be, and tools that do not fit the label."""
    batch = ratio.mix(values)
    way_of(values["way"]).check(values, batch)
    if values["way"] != "scale":
        check_readings(values, batch.volumes)


def check_readings(values, wanted):
    """Readings come in order, and in one cup they grow."""
    group, field, grows = FIELDS[values["way"]]
    rows, before = values[group] or [], 0.0
    for place, row in enumerate(rows):
        path = "{}.{}.{}".format(group, place, field)
        if row is None or row[field] is None:
            if any([later is not None and later[field] is not None for later in rows[place:]]):
                raise InputError(path, "Type this part before the later ones")
            break
        if place >= len(wanted):
            raise InputError(path, "The label has only {} parts".format(len(wanted)))
        if grows and row[field] <= before:
            raise InputError(path, "In one cup the levels rise: this one must be more than the one before it")
        before = row[field]
    done = readings(values)
    if done and grows:
        _check_room(values, wanted, done, "{}.{}.{}".format(group, len(done) - 1, field))


def _check_room(values, wanted, done, path):
    """What is in the cup, and what must follow it, stays below the rim or the highest mark."""
    if values["way"] == "stick":
        cup = values["cup"]
        top, most, what = cup["height"], full_volume(cup), "the rim of this cup"
    else:
        if late("by_marks").told_in_cup(values):  # never refused, however its figures are rounded
            return
        cup, top, what = None, values["graduated"]["holds"], "the highest mark of this cup"
        most = to_step(top, values["graduated"]["step"], DOWN)
    if done[-1] > top * SLACK:
        raise InputError(path, "That is above " + what)
    volumes = follow(wanted, levels_of(done, cup))
    if sum(volumes) <= most * SLACK and cup is None and len(done) < len(wanted):
        volumes = whole_levels(wanted, levels_of(done), values["graduated"]["step"]).volumes
    elif len(done) == len(wanted):
        most = max(most, top)
    if sum(volumes) > most * SLACK:
        raise InputError(path, "With so much in it the rest would stand above " + what + ": tip it all into a larger "
                         "cup and go on there, or weigh the rest")
