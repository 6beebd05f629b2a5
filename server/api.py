"""The API: one route per move, POST for programs and GET for links, one shape for every refusal."""
import contextlib
import json
from collections.abc import Callable, Coroutine, Iterable
from difflib import get_close_matches
from functools import cache
from typing import Annotated, Any

from covemix.shared.boat import boat_limits
from covemix.shared.door import handover, moves
from covemix.shared.forms import links
from covemix.shared.forms.inputs import UNITS_INPUT, read
from covemix.shared.words.texts import said
from covemix.shared.words.units import METRIC
from covemix.shared.words.written import reader
from fastapi import APIRouter, Depends, FastAPI, Query, Request
from fastapi.concurrency import run_in_threadpool
from fastapi.exceptions import RequestValidationError
from fastapi.responses import JSONResponse
from fastapi.routing import APIRoute
from pydantic import BaseModel
from pydantic_core import PydanticSerializationError, to_json
from starlette.exceptions import HTTPException
from starlette.responses import Response

from .data import data
from .headers import ASK_FIRST, HEADERS
from .language import FIRST, of_program
from .models import MovesModel, RefusalModel, answer_model, query_parameters, request_models
from .thread_memo import thread_memo
from .typed import Taken, allowed_at, bare, named, of_link, switched_on

MOST_BODY = 262_144  # bytes: a boat of sixty joints is a tenth of it
TOO_MUCH = b'{"errors":[{"field":"","message":"That is too much to take in at once."}],"lines":[]}'
NO_JSON = (b"NaN", b"Infinity")  # a number that JSON has no word for, or a text that names one
NOT_JSON = "the body is not JSON"
NO_SUCH = "there is no {} of that name here"
SHORT = 8192  # bytes: so little is read and refused in no time
# moves that a short body never keeps for longer than Python keeps a thread before another's turn (5 ms): answered where
# they come in, they wait for no second turn beside heavy ones
QUICK = ("ratio", "dew")
MOST_NAMED, MOST_TOLD, LONGEST = 3, 20, 80  # unknown names quoted; refusals told; characters of a name
ABOUT = ("The mixing maths of an epoxy seam. Send text with its unit under a plain name (`thickness`: `6 mm`), a bare "
         "number only under a name that says its unit (`thickness_mm`: 6). What comes back: lines for people, and "
         "under `data` the same as named values in SI.")
ABOUT_MOVES = "One question each: POST takes an object, GET the values of a link."
Units = Annotated[str, Query(description="The units in which limits and defaults are told: metric or us",
                             examples=[METRIC])]
TOO_MANY = (f"More than {boat_limits.grouped(links.MOST_PAIRS)} names and values are typed here. Send only those that "
            "/api/moves lists")
REFUSALS: dict[int | str, dict] = {
    413: {"model": RefusalModel, "description": "The body is too large"},
    422: {"model": RefusalModel, "description": "What the fields can correct"},
}


async def in_language(request: Request) -> str:
    """The language of an answer; what is no coroutine is asked in a thread of its own and costs as much as a move."""
    return of_program(request)


Asked = Annotated[str, Depends(in_language)]


class Reply(JSONResponse):
    """JSON as UTF-8, whatever a refusal quotes: half a surrogate pair comes in by an escape and has no UTF-8."""

    def render(self, content: Any) -> bytes:
        with contextlib.suppress(PydanticSerializationError):
            found = to_json(content)  # a quarter of the time of the library's own
            if not any(word in found for word in NO_JSON):
                return found
        return json.dumps(content, ensure_ascii=False, allow_nan=False, separators=(",", ":")).encode(errors="replace")


class MoveRoute(APIRoute):
    """A route whose long bodies are counted in a thread before the framework reads them: it answers every name that
    it does not know, one by one, while all others wait."""

    def get_route_handler(self) -> Callable[[Request], Coroutine[Any, Any, Response]]:
        answer = super().get_route_handler()

        async def counted(request: Request) -> Response:
            body = await request.body()
            if len(body) > SHORT and await run_in_threadpool(too_many, body):
                return refusal("", TOO_MANY)
            twice = doubled(body) if len(body) <= SHORT else await run_in_threadpool(doubled, body)
            if twice:
                return refusal(twice[:LONGEST], "given twice in one object")
            return await answer(request)

        return counted


def too_many(body: bytes) -> bool:
    """Whether a body holds more names and values than any screen asks; what is no JSON is told by the framework."""
    try:
        left = [json.loads(body)]
    except (ValueError, RecursionError):
        return False
    count = 0
    while left and count <= links.MOST_PAIRS:
        one = left.pop()
        inner = one.values() if isinstance(one, dict) else one if isinstance(one, list) else ()
        count += len(inner)
        left.extend(each for each in inner if isinstance(each, (dict, list)))
    return count > links.MOST_PAIRS


def doubled(body: bytes) -> str:
    """A name that an object of a body has twice, "" where none has: JSON would take the last and drop the others.

    >>> doubled(b'{"amount_g": 100, "amount_g": 200}'), doubled(b'{"a": {"b": 1}, "c": {"b": 1}}')
    ('amount_g', '')
    """
    found = []

    def once_each(pairs: list) -> dict:
        whole = dict(pairs)
        if len(whole) < len(pairs):
            found.append(next(name for name, _ in pairs if sum(name == other for other, _ in pairs) > 1))
        return whole

    try:
        json.loads(body, object_pairs_hook=once_each)
    except (ValueError, RecursionError):
        return ""  # told by the framework
    return found[0] if found else ""


def router() -> APIRouter:
    """Routes for every move the engine knows."""
    found = APIRouter(prefix="/api", tags=["moves"], route_class=MoveRoute)
    found.add_api_route("/moves", all_moves, methods=["GET"], operation_id="moves", responses={422: REFUSALS[422]},
                        response_model=MovesModel,
                        summary="All moves and their inputs, from the declarations that the forms are made of")
    for name, model in request_models().items():
        move = moves.move(name)
        label, purpose = said(move.label, reader()), said(move.purpose, reader())
        found.add_api_route(
            f"/{name}", _post(name, model), methods=["POST"], operation_id=name, summary=purpose,
            response_model=answer_model(name), responses=REFUSALS)
        from_link = _get(name)
        found.add_api_route(
            f"/{name}", from_link, methods=["GET"], operation_id=f"{name}_link", summary=f"{label}, from a link",
            response_model=answer_model(name), responses={422: REFUSALS[422]},
            openapi_extra={"parameters": query_parameters(moves.module(name).INPUTS)})
        found.add_api_route(f"/{name}", from_link, methods=["HEAD"], include_in_schema=False)
    found.add_api_route("/moves", all_moves, methods=["HEAD"], include_in_schema=False)
    return found


def all_moves(language: Asked, units: Units = METRIC) -> Reply:
    """What every move asks, with units and limits in the user's system."""
    if units not in ("metric", "us"):
        return refusal("units", "Units: choose one of: metric, us")
    return spoken(Reply({"moves": [moves.about(name, reader(units, language)) for name in moves.names()]}), language)


def _post(name: str, model: type[BaseModel]) -> Callable[..., Coroutine[Any, Any, Reply]]:
    inputs = (UNITS_INPUT, *moves.module(name).INPUTS)

    def told(typed: BaseModel, language: str) -> Reply:
        body = typed.model_dump(exclude_none=True)
        taken = Taken(inputs, body, body.get("units", METRIC))
        return answered(name, switched_on(name, taken.tree), language, taken)

    async def endpoint(typed: model, language: Asked, request: Request) -> Reply:  # type: ignore[valid-type]
        if name in QUICK and len(await request.body()) <= SHORT:
            return told(typed, language)
        return await run_in_threadpool(told, typed, language)

    endpoint.__doc__ = moves.module(name).__doc__
    return endpoint


def _get(name: str) -> Callable[..., Reply]:
    def endpoint(request: Request, language: Asked) -> Reply:
        typed = request.query_params.multi_items()
        pairs, errors = asked(name, typed, language)
        if errors:
            return refusals(errors)
        tree = links.tree(pairs)
        if not sealed(typed):  # a link of a screen asks all of its moves, and says which of them it wants
            tree = switched_on(name, tree)
        return answered(name, tree, language, how_read=bare(link_inputs(name), pairs, language))

    endpoint.__doc__ = (f"The answer of {name} for the values of a link: dotted names, typed text. A number that says "
                        "no unit is read as the form reads it, and `understood` tells how.")
    return endpoint


def sealed(pairs: Iterable) -> bool:
    """Whether pairs are those of a link that a page made."""
    return any(name == "v" for name, _ in pairs)


def asked(name: str, pairs: list, language: str = FIRST) -> tuple[list, list]:
    """What a link asks of a move: (pairs under today's names, errors), each unknown or doubled name an error at it.

    A link of a screen asks all the moves of that screen: what the others of them read is no error here.
    """
    if sum(len(one) + len(text) + 2 for one, text in pairs) > links.LONGEST_LINK or len(pairs) > links.MOST_PAIRS:
        return [], [{"field": "", "message": said(handover.TOO_LONG, reader(language=language))}]
    why = handover.broken_seal(pairs)
    if why:
        return [], [{"field": "", "message": said(why, reader(language=language))}]
    inputs = link_inputs(name)
    plain, errors = of_link(inputs, [pair for pair in pairs if pair[0] not in handover.OF_THE_LINK])
    known, strange, twice = handover.sorted_out(inputs, plain)
    errors += [{"field": one, "message": NO_SUCH.format("input" if text is None else "choice"),
                **(names_like(inputs, one) if text is None else allowed_at([UNITS_INPUT, *inputs], one))}
               for one, text in strange[:handover.MOST_NAMED]]
    errors += [{"field": one, "message": "given twice, and not alike"} for one in twice[:handover.MOST_NAMED]]
    return handover.as_typed(inputs, known, pairs), errors


def names_like(inputs: list, unknown: str) -> dict:
    """The names of a link that are most like one that nobody knows."""
    known = [name for item in inputs for name, _ in item.parameters(item.name)]
    known += [name for item in inputs for name in named(item)]
    found = get_close_matches(unknown, known, handover.MOST_NAMED)
    return {"allowed": found} if found else {}


@cache
def link_inputs(name: str) -> list:
    """The inputs that a link for a move may name: its own, and those of the screens that ask it."""
    found = list(moves.module(name).INPUTS)
    for screen, own in moves.SCREENS:
        if name in own:
            found += [item for item in moves.screen_inputs(screen) if item.name not in {one.name for one in found}]
    return found


def answered(name: str, tree: dict, language: str, taken: Taken | None = None,
             how_read: Iterable = ()) -> Reply:
    """A move's answer in a language, with 422 where fields can be put right.

    taken: how the tree was taken, where a program sent it; how_read: [name, reading] of each number without a unit
    """
    answer, _, errors = worked_out(name, tree, language, taken)
    if errors:
        return spoken(refusals(errors), language)
    told = {name for name, _ in answer["understood"]}
    answer["understood"] += [one for one in how_read if one[0] not in told]
    return spoken(Reply(answer), language)


def worked_out(name: str, tree: dict, language: str, taken: Taken | None = None) -> tuple[dict, dict, list[dict]]:
    """(answer with its data, the values that were read, refusals): of the answer nothing where something is refused."""
    inputs = [UNITS_INPUT, *link_inputs(name)]
    if taken and taken.errors:
        wrong = [{**allowed_at(inputs, one["field"]), **one} for one in taken.errors]
        wrong += _read_wrongly(name, taken, inputs, language)
        return {}, {}, in_order(inputs, wrong)
    memo = thread_memo()
    values, errors = read(moves.module(name).INPUTS, tree, memo)
    answer = moves.answer(name, tree, memo, language, (values, errors))
    if answer["errors"]:
        sent = taken.sent if taken else {}
        return {}, {}, [as_sent(error, sent, inputs) for error in answer["errors"]]
    numbers = taken.numbers if taken else ()
    answer["understood"] = [one for one in answer["understood"] if one[0] not in numbers]
    answer["data"] = data(name, values, reader(values["units"], language))
    return answer, values, []


def as_sent(error: dict, sent: dict[str, str], inputs: list) -> dict:
    """A refusal of the engine at the name that was sent, with what is allowed there. sent: of `Taken`"""
    field = sent.get(error["field"], error["field"])
    return {"field": field, "message": error["message"], **allowed_at(inputs, field)}


def _read_wrongly(name: str, taken: Taken, inputs: list, language: str) -> list[dict]:
    """What the engine cannot read of what was taken, told beside what was not."""
    values, errors = read(moves.module(name).INPUTS, taken.tree)
    who, refused = reader(values["units"], language), {error["field"] for error in taken.errors}
    found = [as_sent({"field": error.field, "message": said(error.message, who)}, taken.sent, inputs)
             for error in errors]
    return [error for error in found if error["field"] not in refused]


def in_order(inputs: list, errors: list[dict]) -> list[dict]:
    """Refusals in the order of the form."""
    place = {name: count for count, item in enumerate(inputs)
             for name in (item.name, *item.extra_names(), *named(item))}
    return sorted(errors, key=lambda error: place.get(error["field"].partition(".")[0], len(place)))


def spoken(reply: Reply, language: str) -> Reply:
    """A reply that says which language it is in, and that another request gets another."""
    reply.headers.update({"Content-Language": language, "Vary": "Accept-Language"})
    return reply


def refusal(field: str, message: str, status: int = 422) -> Reply:
    """A refusal in the one shape."""
    return refusals([{"field": field, "message": message}], status)


def refusals(errors: list[dict], status: int = 422) -> Reply:
    """Several refusals in the one shape."""
    return Reply({"errors": errors, "lines": []}, status_code=status)


def add_handlers(app: FastAPI) -> None:
    """Refusals of the framework in the shape of ours; an exception's text is never shown."""

    @app.exception_handler(RequestValidationError)
    async def misshaped(request: Request, error: RequestValidationError) -> Reply:
        name = request.url.path.rpartition("/")[2]
        told = _told(error.errors(), link_inputs(name) if name in moves.names() else [])
        return Reply({"errors": told, "lines": []}, status_code=422)

    @app.exception_handler(HTTPException)
    async def refused(request: Request, error: HTTPException) -> Reply:
        if error.status_code == 400:  # the framework's word for a body that is no text, or too deep to read
            return refusal("", NOT_JSON)
        words = {404: "There is nothing here.", 405: "That is not how this address is asked."}
        answer = refusal("", words.get(error.status_code, "That did not work."), error.status_code)
        answer.headers.update(error.headers or {})
        return answer

    @app.exception_handler(Exception)
    async def our_bug(request: Request, error: Exception) -> Reply:
        answer = refusal("", "Something went wrong here; it is not your input. Please try again.", 500)
        answer.headers.update({**HEADERS, "Cache-Control": ASK_FIRST})  # made outside of all that adds them
        return answer


def _told(errors: Iterable, inputs: list) -> list[dict]:
    """Refusals, the unknown names in one sentence: a body may hold hundreds of them."""
    unknown = [one for one in errors if one["type"] == "extra_forbidden"]
    several = len(unknown) > MOST_NAMED
    found = [{"field": _path(one), "message": _in_words(one),
              **(names_like(inputs, _path(one)) if one["type"] == "extra_forbidden" and not several else {})}
             for one in errors
             if not (several and one["type"] == "extra_forbidden")]
    if several:
        names = ", ".join(_path(one) for one in unknown[:MOST_NAMED])
        found.insert(0, {"field": _path(unknown[0]), "message": f"there are no inputs of these names here: {names} and "
                         f"{boat_limits.grouped(len(unknown) - MOST_NAMED)} more"})
    return found[:MOST_TOLD]


def _path(error: dict) -> str:
    where = () if error["type"] == "json_invalid" else error["loc"]  # which would be a place in the text
    steps = (str(step) for step in where[1:])
    return ".".join(step for step in steps if not step[:1].isupper() and step not in ("str", "float"))[:LONGEST]


def _in_words(error: dict) -> str:
    kinds = {
        "extra_forbidden": NO_SUCH.format("input"),
        "json_invalid": NOT_JSON,
        "missing": "a JSON object is expected",
        "too_long": "too many rows",
    }
    return kinds.get(error["type"], "a number, a text or the right kind of object is expected here")
