"""Table rows: what a boat takes to buy and to cut and the batches of a day, as named values in SI."""
from ..equations.civil_date import DAY
from ..equations.types import Like

LETTERS = "abcde"  # of the parts of a mix: a is the resin
BY_METRE = {"backing": "length"}  # of what else is bought, all the rest by the piece: as `boat_lines.BOUGHT`


def lists(found: Like) -> list:
    """(material, one list of a width). found: a `boat.BoatResult`"""
    return [(of, one) for of, lists in found.cuts for one in lists]


def shopping(found: Like) -> list:
    """What is bought: an item each, by mass, by length or by count."""
    rows = [{"item": "part_" + LETTERS[place], "mass": mass} for place, mass in enumerate(found.parts or ())]
    if found.mixed.filler > 0:
        rows.append({"item": "filler", "mass": found.mixed.filler})
    for material, one in lists(found):
        rows.append({"item": material, "length": sum(one[3]) / 1000, "count": one[4].rolls, "width": one[0],
                     "areal_weight": one[1]})
    light = sum([one.light for one in found.phases])
    rows += [{"item": "light_filler", "mass": light}] if light else []
    return rows + [{"item": key, BY_METRE.get(key, "count"): many} for key, many in found.bought if many]


def called(row: dict) -> str:
    """A joint by its name, or by its place in the list."""
    return row["name"] or str(row["place"] + 1)


def cuts(found: Like) -> list:
    """Each piece that is cut, from what, in the order of the cut."""
    rows = []
    for material, one in lists(found):
        width, areal, pieces, lengths, cutting = one[:5]
        for cut in cutting.cuts:
            for place in cut.pieces:
                number, row, face = pieces[place][:3]
                rows.append({"material": material, "width": width, "areal_weight": areal, "stock": cut.stock,
                             "stock_place": cut.place, "stock_length": cut.length / 1000, "piece": number,
                             "joint": called(row), "face": face, "length": lengths[place] / 1000})
    return rows


def batches(found: Like) -> list:
    """The batches of a day. found: a `plan_found.Found`"""
    return [{"batch": one.batch.number, "crew": one.batch.crew, "start": one.batch.start, "end": one.end,
             "latest_start": one.latest, "done": one.batch.finished, "length": one.length,
             "too_late": one.refused is not None, "air_temperature": one.details and one.details.air}
            for one in found.batches]


def layers(found: Like) -> list:
    """The coats of a day. found: a `plan_found.Found`"""
    return [{"crew": 0, "surface": one.row["name"] or one.row["place"] + 1, "coat": one.number, "start": one.starts[0],
             "end": one.end, "latest_start": one.latest, "done": one.finished, "pot_count": one.pots.count,
             "pot_mass": one.pots.mass} for one in found.layers]


def of_day(found: Like) -> list:
    """Batches, then coats, each with its day, from 1."""
    return [dict(row, day=row["start"] // DAY + 1) for row in batches(found) + layers(found)]
