"""Reference: one page made from the declarations, of all that a program may send and of all that it is told."""
from collections.abc import Iterable, Iterator
from html import escape
from typing import Any

from covemix.shared.door import moves
from covemix.shared.forms.declared import Input
from covemix.shared.forms.inputs import UNITS_INPUT
from covemix.shared.things.records_shed import RECORDS
from covemix.shared.words.texts import said
from covemix.shared.words.written import reader

from . import examples
from .api import ABOUT
from .data import SHAPES
from .data_names import NAMES
from .file_routes import ABOUT as FILES
from .typed import named, units_of
from .version import VERSION

PATH = "reference/"
NUMBERS = ("Numbers are in SI and as they were reckoned. The lines of an answer round to the safe side: work by them. "
           "What is not known, or does not apply, is null; a table without rows is empty.")
HEADS = ("Name", "What it is", "Unit", "Least", "Most", "Default", "One of")


def page(base: str, policy: str = "") -> str:
    """The page as HTML. base: where the versioned files are, from the page; policy: to be written into it"""
    body = [f"<h1>Covemix {escape(VERSION)}: the API</h1>", f"<p>{escape(ABOUT)}</p>",
            "<p>POST /api/&lt;move&gt; takes an object, GET /api/&lt;move&gt;?... the values of a link. "
            '<a href="../openapi.json">OpenAPI</a></p>',
            f"<p>Files, at /api/&lt;move&gt;/&lt;file&gt;: {escape(FILES)}</p>",
            "<h2>Moves</h2><ul>", *(f'<li><a href="#{name}">{name}</a>: {_said(moves.move(name).purpose)}</li>'
                                    for name in moves.names()), "</ul>"]
    for name in moves.names():
        body += _move(name)
    body.append("<h2>Things</h2>")
    for record in RECORDS:
        body += [f'<h3 id="thing-{record.name}">{escape(record.name)}: {_said(record.label)}</h3>',
                 f"<p>Built-in rows: {escape(', '.join(row[0] for row in record.rows))}</p>",
                 *_inputs(record.fields, "")]
    body += ['<h2 id="names">Names of results</h2>', f"<p>{NUMBERS}</p>", *_table(
        ("Name", "Unit", "Meaning"), [(name, *one) for name, one in NAMES.items()], "name-")]
    own = f'<meta http-equiv="Content-Security-Policy" content="{escape(policy)}">' if policy else ""
    return (f'<!doctype html><html lang="en"><head><meta charset="utf-8">{own}<title>The API · Covemix</title>'
            '<meta name="viewport" content="width=device-width, initial-scale=1">'
            f'<link rel="stylesheet" href="{base}app.css"></head>'
            f'<body><main class="reference" id="main">{"".join(body)}</main></body></html>')


def _move(name: str) -> list[str]:
    singles, tables = SHAPES[name]
    told = [f"<li>{_names(singles)}</li>"] if singles else []
    told += [f"<li><code>{table}</code>, rows of: {_names(columns)}</li>" for table, columns in tables.items()]
    return [f'<h2 id="{name}">{name}</h2><p>{_said(moves.move(name).purpose)}</p>',
            "<h3>Is asked with</h3>", *_inputs((UNITS_INPUT, *moves.module(name).INPUTS), ""),
            "<h3>Tells as data</h3><ul>", *told, "</ul>"]


def _names(names: str) -> str:
    return ", ".join(f'<a href="#name-{name}">{name}</a>' for name in names.split())


def _inputs(inputs: Iterable[Input], before: str) -> list[str]:
    rows = list(rows_of(inputs, before))
    return _table(HEADS, rows) if rows else ["<p>Nothing.</p>"]


def rows_of(inputs: Iterable[Input], before: str = "") -> Iterator[tuple]:
    """(name, what it is, unit, least, most, default, one of) of each input, the fields of a group below it."""
    for item in inputs:
        yield _row(item, before)
        if item.repeats:
            yield from rows_of(item.inner(), f"{before}{item.name}[].")


def _row(item: Input, before: str) -> tuple[str, ...]:
    units, options = units_of(item), [option[0] for option in item.options]
    thing = getattr(item, "record", None)
    names = ", ".join([before + item.name, *(before + name for name in named(item))])
    default = "" if item.repeats or not item.default_in("metric") else str(examples.example(item))
    limits = [f"{getattr(item, end):g}" if isinstance(getattr(item, end, None), (int, float)) else ""
              for end in ("low", "high")]
    return (names, said(item.label, reader()), ", ".join(units), *limits, default,
            f"a row of {thing.name}, or its fields" if thing else ", ".join(options))


def _table(heads: Iterable[str], rows: Iterable, anchor: str = "") -> list[str]:
    def cells(row: Iterable) -> str:
        first, *rest = row
        mark = f' id="{anchor}{first}"' if anchor else ""
        return f"<tr{mark}><th scope=row>{escape(first)}" + "".join(f"<td>{escape(one)}" for one in rest)

    return ["<table><thead><tr>", *(f"<th scope=col>{one}" for one in heads), "<tbody>",
            *(cells(row) for row in rows), "</table>"]


def _said(key: Any) -> str:
    return escape(said(key, reader()))
