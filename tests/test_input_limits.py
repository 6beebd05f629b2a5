"""What may be typed, and what stands where nothing is, are held by a second table: `input_limits.csv`.

A limit that moves, a default, a choice that goes or changes its place, changes what every builder may type or is
answered with. Who means it changes the table too, by hand; the failure names the rows.
"""
import csv
import io
from pathlib import Path

from covemix.shared.door import moves
from covemix.shared.forms.choices import Choice
from covemix.shared.forms.quantities import Amount
from covemix.shared.forms.rows import Group, Pick
from covemix.shared.things.records_shed import RECORDS

TABLE = Path(__file__).with_name("input_limits.csv")


def rows_of(inputs, prefix):
    """(path of an input, what may stand in it, what does where nothing is typed), also of things and rows."""
    for item in inputs:
        path = f"{prefix}.{item.name}"
        default, told = getattr(item, "default", None), item.may_be()
        if "low" in told:
            low = f"{'above ' if getattr(item, 'above', False) else ''}{told['low']:g}"
            whole = " whole" if getattr(item, "whole", False) else ""
            yield path, f"{low} to {told['high']:g} {told['unit']}{whole}".strip(), str(default)
        elif isinstance(item, Choice):
            yield path, " ".join(option[0] or "-" for option in item.options), str(default)
        elif isinstance(item, Amount):
            kinds = ", ".join(f"{key} in {' '.join(units)}" for key, _, units in item.options)
            yield path, f"above 0 to {item.high:g} as typed: {kinds}", str(item.default)
        elif isinstance(item, Group):
            yield path, f"{item.least} to {item.most} rows", f"{len(default)} rows"
            yield from rows_of(item.fields, path)
        elif isinstance(item, Pick):
            yield path, f"a {item.record.name}", str(default)
        else:
            yield path, type(item).__name__, str(default)


def declared():
    """Rows of the table. What several moves ask alike stands once, under the first of them."""
    found, known = [], set()
    for name in moves.names():
        for path, *told in rows_of(moves.module(name).INPUTS, name):
            same = (path.partition(".")[2], *told)
            if same not in known:
                known.add(same)
                found.append([path, *told])
    for record in RECORDS:
        found += [list(row) for row in rows_of(record.fields, f"a {record.name}")]
    return found


def test_what_may_be_typed_and_what_stands_is_as_the_table_has_it():
    written = io.StringIO()
    csv.writer(written, lineterminator="\n").writerows(declared())
    held, now = TABLE.read_text(encoding="utf-8").splitlines(), written.getvalue().splitlines()
    assert len(held) > 400
    assert [row for row in now if row not in held] == []
    assert [row for row in held if row not in now] == []
