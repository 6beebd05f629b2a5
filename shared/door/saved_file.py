"""Saved file: a file of what stands on a screen, made where it stands: without a server, and of the same program."""
import json

from ..boat import boat_lines
from ..boat.cut_drawing import cut_figures
from ..files import calendar, drawn, table_rows, tables
from ..forms import inputs, links
from ..forms.clock_times import clock_said
from ..forms.memo import Memo
from ..forms.types import Found, Given, Said, Values
from ..kit import log
from ..kit.log_lines import seam, what
from ..mix.label_words import parts_said
from ..seam.joint_lines import CALLED
from ..surface import sheathing
from ..surface.sheathing_lines import WAYS
from ..words.languages import Reader
from ..words.messages import message
from ..words.messages import unit as unit_said
from ..words.numbers import DOWN, NEAREST, UP, shown
from ..words.texts import said
from ..words.units import from_si, unit_for
from ..words.written import reader
from . import handover, moves

BOAT = "covemix-boat"  # what a file says that holds a boat
# endings, and what a file of it is
TYPES = {"csv": "text/csv", "svg": "image/svg+xml", "dxf": "image/vnd.dxf", "ics": "text/calendar",
         "json": "application/json"}
CLOCK = "clock"  # a time of the day
# of a table: its move, rows, and of each column (name of the row, heading, unit or "", decimals, to which side)
TABLES = {
    "shopping": (table_rows.shopping, (
        ("item", "file-item", "", 0, ""), ("count", "boat-joint-copies", "", 0, UP),
        ("mass", "file-mass", "kg", 3, UP), ("length", "boat-joint-length", "m", 2, UP),
        ("width", "joint-layer-width", "mm", 1, NEAREST), ("areal_weight", "joint-layer-weight", "g/m2", 1, NEAREST))),
    "cuts": (table_rows.cuts, (
        ("piece", "file-piece", "", 0, ""), ("material", "kind-roll-of", "", 0, ""),
        ("width", "joint-layer-width", "mm", 1, NEAREST), ("areal_weight", "joint-layer-weight", "g/m2", 1, NEAREST),
        ("length", "boat-joint-length", "m", 3, UP), ("stock", "file-stock", "", 0, ""),
        ("joint", "boat-joint", "", 0, ""), ("face", "file-face", "", 0, ""))),
    "batches": (table_rows.of_day, (
        ("batch", "file-batch", "", 0, ""), ("crew", "plan-crew", "", 0, ""),
        ("start", "file-start", CLOCK, 0, NEAREST),
        ("end", "file-end", CLOCK, 0, UP), ("latest_start", "plan-latest", CLOCK, 0, DOWN),
        ("length", "boat-joint-length", "m", 2, NEAREST), ("air_temperature", "log-temperature", "degC", 1, NEAREST),
        ("done", "file-done", "", 0, ""), ("day", "file-day", "", 0, NEAREST), ("surface", "surface-face", "", 0, ""),
        ("coat", "file-coat", "", 0, ""), ("pot_count", "surface-pots", "", 0, ""),
        ("pot_mass", "file-mass", "kg", 3, UP))),
}


def filed(asked: dict, memo: "Memo | None" = None, language: str = "en") -> dict:
    """{"file": "boat.shopping.csv", "pairs", ...} -> {"name", "text", "type"}, or {"refused": why not}.

    decimal: mark of the country's numbers; day: as 2026-06-01; now: [s] from 1970 on; rows: of the log, [when, typed]
    Of a table made for a bench: what is bought or cut is rounded up, so that there is enough.
    """
    move, name, ending = asked["file"].split(".")
    if "rows" in asked:
        return _told(name, ending, _log(asked, memo, language))
    tree = links.tree(asked["pairs"])
    values, errors = inputs.read(moves.module(move).INPUTS, tree, memo)
    answer = moves.answer(move, tree, memo, language, (values, errors))
    if answer["errors"]:
        return {"refused": answer["errors"][0]["message"]}
    who = reader(values["units"], language)
    if ending == "json":
        declared = moves.screen_inputs(move)
        going = handover.going(declared, handover.in_words_of_tools(declared, links.pairs(declared, tree)))
        return _told(name, ending, json.dumps({"format": BOAT, "link": handover.sealed(going, asked["build"])}))
    asked_of = moves.module(move)
    found = getattr(asked_of, "reckoned", asked_of.reckon)(values)
    if ending == "svg":
        figures = cut_sheets(found, who) if name == "cuts" else answer["figures"]
        return _told(name, ending, drawn.svg(figures)) if figures else {"refused": said("log-empty", who)}
    if ending == "csv":
        return _told(name, ending, _table(name, found, values, who, asked["decimal"]))
    if ending == "dxf":
        return _told(name, ending, drawn.dxf(found.height, [one[:3] for one in found.templates]))
    if move == "cure" and values["mixed_at"] is None:
        return {"refused": said("file-mixed-at", who)}
    day = calendar.day_of(asked["day"])
    if day is None:
        return {"refused": said("file-no-day", who)}
    events = calendar.KINDS[move](day, found, answer, who, values)
    return _told(name, ending, calendar.calendar(events, asked["now"])) if events else {
        "refused": said("log-empty", who)}


def cut_sheets(found: Found, who: Reader) -> list:
    """All that a boat's list cuts, drawn at true size. found: `boat.BoatResult`"""
    return moves.in_text(cut_figures(found.cuts, True), who)


def _told(name: str, ending: str, text: str) -> dict:
    return {"name": name + "." + ending, "text": text, "type": TYPES[ending]}


def _table(name: str, found: Found, values: Values, who: Reader, decimal: str) -> str:
    make, columns = TABLES[name]
    names = parts_said(values["system"])
    return tables.csv(_heads([column[1:3] for column in columns], who),
                      [[_cell(row.get(column[0]), column, names, who) for column in columns] for row in make(found)],
                      decimal)


def _heads(columns: list, who: Reader) -> list:
    found = []
    for label, unit in columns:
        in_unit = unit and unit != CLOCK
        found.append(said(message("file-head", name=label, unit=unit_said(unit)) if in_unit else label, who))
    return found


def _cell(value: Given, column: tuple, names: "list | tuple", who: Reader) -> Given:
    name, _, unit, places, toward = column
    if name == "areal_weight" and not value:  # peel ply has none that counts
        return None
    if name == "crew":
        return value + 1
    if value is None or value is True or value is False:
        return value
    if unit == CLOCK:
        return said(clock_said(value, "24", toward, False), who)
    if unit:
        return float(shown(from_si(value, unit_for(unit, who.units)), places, toward))
    if toward:
        return int(shown(value, 0, toward))
    return said(_called(name, value, names), who) if name in ("item", "material", "face", "stock") else value


def _called(name: str, value: str, names: "list | tuple") -> Said:
    """What a program calls something, as people do."""
    if name == "face":
        return CALLED.get(value) or WAYS[value == sheathing.ACROSS]
    if name == "stock":
        return "boat-remnant" if value == "remnant" else "file-stock.roll"
    if value.startswith("part_"):
        return names[table_rows.LETTERS.index(value[-1])]
    return boat_lines.CALLED.get(value) or boat_lines.BOUGHT[value][0]


def _log(asked: dict, memo: "Memo | None", language: str) -> str:
    """Batches of the log, each as it was typed; what cannot be read stays as it stands there."""
    who, fields = reader(asked["units"], language), [one for one in log.INPUTS if not one.unseen]
    table = []
    for when, of_batch in asked["rows"]:
        tree = dict(of_batch, units=asked["units"], units_typed=of_batch.get("units", "metric"))
        values, errors = inputs.read(log.INPUTS, tree, memo)
        wrong = [error.field for error in errors]
        row = [when, said(what(values), who) if "what" not in wrong else of_batch.get("what")]
        for one in fields[1:]:
            value, unit = values.get(one.name), getattr(one, "unit", None)
            if one.name in wrong:
                value = of_batch.get(one.name)
            elif one.name == "seam":
                value = said(seam(values), who)
            elif value is not None and one.options:
                value = said(dict([option[:2] for option in one.options])[value], who)
            elif value is not None and unit:
                value = float(shown(from_si(value, unit_for(unit, who.units)), 3))
            row.append(value)
        table.append(row)
    heads = _heads([("log-page.when", "")] + [(one.label, getattr(one, "unit", "")) for one in fields], who)
    return tables.csv(heads, table, asked["decimal"])
