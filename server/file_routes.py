"""File routes: `/api/<move>/<file>`: a table as CSV, a drawing as SVG, spreaders as DXF, a day as iCalendar.

The ending of the file says which; without one, the `Accept` of the request does.
"""
import json
import time
from typing import Annotated, Any

from covemix.shared.door import moves, saved_file
from covemix.shared.files import calendar, drawn, tables
from covemix.shared.forms import links
from covemix.shared.forms.inputs import UNITS_INPUT, read
from covemix.shared.words.languages import LANGUAGES
from covemix.shared.words.texts import said
from covemix.shared.words.units import METRIC, SYSTEMS
from covemix.shared.words.written import reader
from fastapi import APIRouter, Path, Request
from fastapi.concurrency import run_in_threadpool
from fastapi.exceptions import RequestValidationError
from pydantic import BaseModel, ValidationError
from starlette.exceptions import HTTPException
from starlette.responses import Response

from .api import (
    MOST_TOLD,
    NO_SUCH,
    NOT_JSON,
    REFUSALS,
    Reply,
    as_sent,
    asked,
    doubled,
    refusal,
    refusals,
    sealed,
    spoken,
    too_many,
    worked_out,
)
from .data import SHAPES
from .data_names import COUNT, FLAG, KEY, NAMES, TEXT
from .language import of_program
from .models import RefusalModel, request_models
from .thread_memo import thread_memo
from .typed import Taken, switched_on

TYPES = {"csv": "text/csv", "svg": "image/svg+xml", "dxf": "image/vnd.dxf", "ics": "text/calendar",
         "json": "application/json"}
LOG = ("log", "log", "csv")  # the move, the name and the ending of what a phone keeps and a program sends
CUTS = ("boat", "cuts")  # all that is cut, drawn at true size
ENTRIES, WHEN = "entries", "when"
DAY = "date"  # beside the inputs of a move: the day of a calendar
ABOUT = ("`<table>.csv` for each table of the move's data, `<drawing>.svg` for each of its drawings (by its name), "
         "`boat/cuts.svg` of all that is cut at true size, `templates.dxf` of the spreader, `calendar.ics` of plan, "
         "cure (both with `date`, as 2026-06-01) and pot. The log is kept on a phone: `log/log.csv` makes its table of "
         "the batches that are sent as `entries`, an object of the log's inputs each, with `when` beside them. Numbers "
         "in a CSV have the decimal mark of `Accept-Language`.")
REFUSED: dict[int | str, dict] = {**REFUSALS, 404: {"model": RefusalModel, "description": "There is no such file"}}
FOUND: dict[int | str, dict] = {200: {"description": "The file", "content": {kind: {"schema": {"type": "string"}}
                                                                     for kind in TYPES.values()}}}
EXAMPLE = {"kind": "inside", "thickness_mm": 6}
BODY = {"required": True, "content": {"application/json": {
    "schema": {"type": "object", "description": "As of the move itself, a calendar's `date` beside it",
               "examples": [EXAMPLE]}}}}
Move = Annotated[str, Path(description="The name of a move", examples=["joint"])]
File = Annotated[str, Path(description="A name and its ending", examples=["coves.csv"])]
QUERY = [{"name": "values", "in": "query", "required": False, "style": "form", "explode": True,
          "description": "The values of a link: dotted names, typed text",
          "schema": {"type": "object", "additionalProperties": {"type": "string"}, "examples": [EXAMPLE]}}]


def router() -> APIRouter:
    """Routes for the files of every move."""
    found = APIRouter(prefix="/api", tags=["moves"])
    found.add_api_route("/{move}/{file}", of_link, methods=["GET"], operation_id="file_of_link",
                        summary="A file of a link", description=ABOUT, response_class=Response,
                        responses={**FOUND, 422: REFUSED[422], 404: REFUSED[404]},
                        openapi_extra={"parameters": QUERY})
    found.add_api_route("/{move}/{file}", of_link, methods=["HEAD"], include_in_schema=False)
    found.add_api_route("/{move}/{file}", of_body, methods=["POST"], operation_id="file", summary="A file",
                        description=ABOUT, responses={**FOUND, **REFUSED}, response_class=Response,
                        openapi_extra={"requestBody": BODY})
    return found


def of_link(move: Move, file: File, request: Request) -> Response:
    """The file for the values of a link."""
    _known(move)
    language, pairs = of_program(request), request.query_params.multi_items()
    days = [text for name, text in pairs if name == DAY]
    pairs, errors = asked(move, [pair for pair in pairs if pair[0] != DAY], language)
    if errors:
        return refusals(errors)
    tree = links.tree(pairs)
    if not sealed(request.query_params.multi_items()):
        tree = switched_on(move, tree)
    return _made(move, file, request, tree, None, days[0] if days else "")


async def of_body(move: Move, file: File, request: Request) -> Response:
    """The file for an object."""
    _known(move)
    body = await request.body()
    if not request.headers.get("content-type", "").startswith("application/json"):
        return refusal("", NOT_JSON)
    return await run_in_threadpool(_of_body, move, file, request, body)


def _of_body(move: str, file: str, request: Request, body: bytes) -> Response:
    try:
        sent = json.loads(body)
    except (ValueError, RecursionError):
        return refusal("", NOT_JSON)
    if not isinstance(sent, dict) or too_many(body):
        return refusal("", "a JSON object of the move's inputs is expected")
    if doubled(body):
        return refusal(doubled(body)[:80], "given twice in one object")
    if (move, *_parted(file, request)) == LOG:
        return _log(sent, of_program(request))
    day = sent.pop(DAY, "")
    taken = _taken(move, sent)
    return _made(move, file, request, switched_on(move, taken.tree), taken, day)


def _taken(move: str, sent: dict, *where: "str | int") -> Taken:
    """What an object asks of a move. where: it stands in the body"""
    try:
        typed: BaseModel = _models()[move].model_validate_json(json.dumps(sent))
    except ValidationError as wrong:
        told = [{**one, "loc": ("body", *where, *one["loc"])} for one in wrong.errors()]
        raise RequestValidationError(told) from None
    taken_from = typed.model_dump(exclude_none=True)
    return Taken((UNITS_INPUT, *moves.module(move).INPUTS), taken_from, taken_from.get("units", METRIC))


def _log(sent: dict, language: str) -> Response:
    """The table that the log's screen makes, of the batches that a program sends."""
    units, entries = sent.get("units", METRIC), sent.get(ENTRIES)
    strange = sorted(set(sent) - {"units", ENTRIES})
    if strange:
        return refusal(strange[0][:80], NO_SUCH.format("input"))
    if units not in SYSTEMS:
        return Reply({"errors": [{"field": "units", "message": "choose one of: " + ", ".join(SYSTEMS),
                                  "allowed": list(SYSTEMS)}], "lines": []}, status_code=422)
    if not isinstance(entries, list) or not all(isinstance(one, dict) for one in entries):
        return refusal(ENTRIES, "a list of batches is expected here, an object of the log's inputs each")
    rows, errors = [], []
    for place, entry in enumerate(entries):
        own, when = f"{ENTRIES}.{place}.", entry.get(WHEN, "")
        taken = _taken(LOG[0], {name: value for name, value in entry.items() if name != WHEN}, ENTRIES, place)
        wrong = taken.errors or _unread(taken)
        if not isinstance(when, str):
            wrong = [{"field": WHEN, "message": "a text is expected here"}, *wrong]
        errors += [{**one, "field": own + one["field"]} for one in wrong]
        rows.append([when, taken.tree])
    if errors:
        return spoken(refusals(errors[:MOST_TOLD]), language)
    made = saved_file.filed({"file": ".".join(LOG), "rows": rows, "units": units,
                        "decimal": LANGUAGES[language].decimal}, thread_memo(), language)
    return _named(made["text"], "-".join(LOG[:2]) + "." + LOG[2], LOG[2], language)


def _unread(taken: Taken) -> list[dict]:
    """What the log cannot read of a batch: on a phone it stays as it was typed, a program is told."""
    inputs = moves.module(LOG[0]).INPUTS
    values, errors = read(inputs, taken.tree, thread_memo())
    who = reader(values["units"])
    return [as_sent({"field": one.field, "message": said(one.message, who)}, taken.sent, [UNITS_INPUT, *inputs])
            for one in errors]


MODELS: dict[str, type[BaseModel]] = {}


def _models() -> dict[str, type[BaseModel]]:
    if not MODELS:
        MODELS.update(request_models())
    return MODELS


def _known(move: str) -> None:
    if move not in moves.names():
        raise HTTPException(404)


def _made(move: str, file: str, request: Request, tree: dict, taken: Taken | None, day: Any) -> Response:
    language = of_program(request)
    name, ending = _parted(file, request)
    if not _is_there(move, name, ending):
        raise HTTPException(404)
    days = None
    if ending == "ics" and move in calendar.NEEDS_DAY:
        days = calendar.day_of(day) if isinstance(day, str) else None
        if days is None:
            return refusal(DAY, "say the day, as 2026-06-01")
    answer, values, errors = worked_out(move, tree, language, taken)
    if errors:
        return spoken(refusals(errors), language)
    if ending == "ics" and move == "cure" and values["mixed_at"] is None:
        return refusal("mixed_at", "say when it was mixed, as 14:30")
    made = _file(move, name, ending, answer, values, language, days)
    if made is None:
        raise HTTPException(404)
    return _named(made, f"{move}-{name}.{ending}", ending, language)


def _parted(file: str, request: Request) -> tuple[str, str]:
    """The name and the ending of a file, as its address or `Accept` says."""
    name, _, ending = file.rpartition(".")
    return (name, ending) if name else (file, _wanted(request.headers.get("accept", "")))


def _is_there(move: str, name: str, ending: str) -> bool:
    if ending in ("csv", "json"):
        return name in SHAPES[move][1]
    if ending == "ics":
        return name == "calendar" and move in calendar.KINDS
    if ending == "dxf":
        return (move, name) == ("spreader", "templates")
    return ending == "svg"


def _file(move: str, name: str, ending: str, answer: dict, values: dict, language: str, day: int | None) -> str | None:
    if ending == "csv":
        columns = SHAPES[move][1][name].split()
        rows = [[row[column] for column in columns] for row in answer["data"][name]]
        return tables.csv([heading(column) for column in columns], rows, LANGUAGES[language].decimal)
    if ending == "json":
        return json.dumps({name: answer["data"][name]}, ensure_ascii=False)
    asked_of = moves.module(move)
    if ending == "svg":
        drawings = [one for one in answer["figures"] if one["name"] == name]
        if (move, name) == CUTS:
            drawings = saved_file.cut_sheets(asked_of.reckoned(values), reader(values["units"], language))
        return drawn.svg(drawings) if drawings else None
    found = getattr(asked_of, "reckoned", asked_of.reckon)(values)
    if ending == "dxf":
        return drawn.dxf(found.height, [one[:3] for one in found.templates])
    who = reader(values["units"], language)
    return calendar.calendar(calendar.KINDS[move](day or 0, found, answer, who, values), time.time())


def heading(name: str) -> str:
    """A column's name and its unit.

    >>> heading("mass"), heading("item")
    ('mass [kg]', 'item')
    """
    unit = NAMES[name].unit
    return name if unit in (TEXT, KEY, FLAG, COUNT) else f"{name} [{unit}]"


def _wanted(accept: str) -> str:
    """The ending of the first kind that an Accept header names.

    >>> _wanted("text/csv;q=0.9"), _wanted("image/svg+xml, */*"), _wanted("*/*")
    ('csv', 'svg', 'json')
    """
    for one in accept.split(","):
        kind = one.partition(";")[0].strip().lower()
        for ending, own in TYPES.items():
            if kind == own:
                return ending
    return "json"


def _named(text: str, name: str, ending: str, language: str) -> Response:
    if ending == "json":
        return spoken(Reply(json.loads(text)), language)
    kind = TYPES[ending] + ("; charset=utf-8" if ending in ("csv", "ics") else "")
    return Response(text.encode(), media_type=kind, headers={
        "Content-Disposition": f'attachment; filename="{name}"', "Content-Language": language,
        "Vary": "Accept, Accept-Language"})
