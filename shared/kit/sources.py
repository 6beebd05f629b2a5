"""Sources: every figure and statement of the catalogue in one table, with its mark and where it comes from."""
from collections import namedtuple

from ..catalogue.marks import COMMON, JUDGED, MEMORY, PUBLISHED
from ..forms.inputs import Choice, Text
from ..forms.types import Values
from ..things.records_shed import RECORDS
from .catalogue_tables import MODULES, catalogue, mark_at, tables
from .sources_lines import say, sift  # noqa: F401  the door asks for it

ALL = "all"

INPUTS = (
    Choice("mark", "sources-mark", (
        (ALL, "sources-mark.all"), (PUBLISHED, "sources-mark.published"), (COMMON, "sources-mark.common-practice"),
        (MEMORY, "sources-mark.from-memory"), (JUDGED, "sources-mark.own-judgement"))),
    Text("find", "sources-find", help="sources-find.help"),
)
CHECKS = ()

# place: in the catalogue; module, table: where the row stands; row; labels, columns: which of its columns name it, and
# which are told; record: the kind of thing whose row it is, or None; mark; source: key of catalogue.sources, or ""
Fact = namedtuple("Fact", ("place", "module", "table", "row", "labels", "columns", "record", "mark", "source"))


def facts() -> "list[Fact]":
    """Every row of the catalogue that states something, in its order."""
    found: list = []
    for name in MODULES:
        for table, rows, labels, columns in tables(catalogue(name)):
            kind = [one for one in RECORDS if one.rows is rows]
            record = kind[0] if kind else None
            for row in rows:
                place = mark_at(row)
                source = row[place + 1] if place + 1 < len(row) and isinstance(row[place + 1], str) else ""
                found.append(Fact(len(found), name, table, row, labels, columns, record, row[place], source))
    return found


def reckon(values: Values) -> "list[Fact]":
    """The facts of the mark that is looked for."""
    return [one for one in facts() if values["mark"] in (ALL, one.mark)]


def answer(values: Values) -> list:
    """One line for each fact that is looked for, in the order of the catalogue."""
    return say(reckon(values), values)
