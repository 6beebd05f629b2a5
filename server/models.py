"""Request and answer models, made from the engine's declarations: they describe, the engine decides."""
from collections.abc import Callable, Iterable
from typing import Annotated, Any

from covemix.shared.door import moves
from covemix.shared.forms.declared import Input
from covemix.shared.forms.inputs import UNITS_INPUT, Amount, Choice, Group, Number, Parts, Pick
from covemix.shared.words.texts import said
from covemix.shared.words.units import from_si, to_si
from covemix.shared.words.written import reader
from pydantic import BaseModel, ConfigDict, Field, StrictFloat, WithJsonSchema, create_model

from . import examples
from .data import SHAPES
from .data_names import COUNT, FLAG, KEY, NAMES, TEXT
from .typed import SWITCHES, named, units_of

Typed = StrictFloat | str | list[StrictFloat | str] | None  # strict: false is no 0
FORBID = ConfigDict(extra="forbid")


# of an answer and of a step, as a page sets them; left out where empty
HEAD = Field(default="", description="The name that the label begins with")
HOW = Field(default="", description="What is to be done, the rest of the label")
LARGE = Field(default="", description="The figure that the text begins with")
SMALL = Field(default="", description="The text behind the figure, with its blank; all of it where it has none")


class FieldError(BaseModel):
    """What one field can put right."""

    field: str = Field(description="Dotted path of the input, empty where no field is to blame", examples=["amount"])
    message: str = Field(description="One sentence in the user's words", examples=["Amount: type a number above zero."])
    allowed: list[str] = Field(default=[], description="What may stand there, where that is one of a few")
    unit: str = Field(default="", description="The unit of low and high")
    low: float | None = Field(default=None, description="The least that may stand there")
    high: float | None = Field(default=None, description="The most that may stand there")


class LineModel(BaseModel):
    """One line of an answer, in the order of reading."""

    model_config = FORBID
    name: str
    label: str
    value: float | None = Field(description="SI, in `unit`; null where the line is words")
    unit: str
    text: str = Field(description="Rounded, with its unit, for people")
    rough: str = Field(description="How far off it may be, or where it comes from")
    caution: str
    part: str
    rank: str
    span: list[float] = Field(description="From and to on the rule under a large figure, percent; empty: no rule")
    head: str = HEAD
    how: str = HOW
    large: str = LARGE
    small: str = SMALL


class LeadModel(BaseModel):
    """Where an answer goes next: a screen, and what it fills in there."""

    model_config = FORBID
    label: str
    screen: str
    pairs: list[tuple[str, str]] = Field(description="Dotted name and text, as in the query of a link")
    adds: str = Field(default="", description="The group of that screen that the pairs are one more row of")


class AnswerModel(BaseModel):
    """The answer of a move. Errors and lines never come together."""

    model_config = FORBID
    errors: list[FieldError]
    lines: list[LineModel]
    figures: list[dict[str, Any]] = Field(description="Drawings as lists of shapes")
    leads: list[LeadModel] = Field(description="Where the answer goes next")
    understood: list[tuple[str, str]] = Field(
        description="Dotted name and reading of each number that could be read in two ways", examples=[
            [["batch", "1.5 g (a comma marks the decimals)"]]])


class StepModel(BaseModel):
    """One thing at a time, in figures for two metres and in words for the ear."""

    model_config = FORBID
    name: str
    label: str
    figure: str = Field(description="The large text with its unit; empty where the step is words")
    under: str
    said: str
    part: str
    span: list[float] = Field(description="From and to on the rule under the figure, percent; empty: no rule")
    seconds: float = Field(description="Of a clock that runs in this step; 0: none")
    field: str = Field(description="Dotted name of the input that takes what was really read; empty: none")
    asks: str
    rank: str
    writes: str = Field(description="What stands in that input once the step is done as told")
    meets: bool = Field(description="Whether what comes after it meets what is in the cup: time runs from its end")
    mends: bool = Field(description="Whether it brings a pour that is off back into ratio; once it is, it is gone")
    lead: list[tuple[str, str]] = Field(description="Pairs that mend it, in the form")
    keeps: list[tuple[str, str]] = Field(description="Pairs that a log entry of this step starts with")
    logs: list[tuple[str, str]] = Field(description="Pairs of the whole batch for the log, at the last step")
    head: str = HEAD
    how: str = HOW
    large: str = LARGE
    small: str = SMALL


class RunStepModel(StepModel):
    """A step of the run of a seam: what a tap on it says is done, and how what it pours is poured."""

    ran: str = Field(description="Its name where it is told to have been done; empty: that is not told")
    what: str = Field(description="The pieces of seam or the mix that it is done with")
    other: str = Field(description="What else may be done instead, as words of a button; empty: nothing")
    pours: list[tuple[str, str]] = Field(description="Pairs that its pour is asked with; empty: nothing is poured")
    ends: str = Field(description="Times to come, as a file of a calendar (RFC 5545); empty: none")
    pairs: list[tuple[str, str]] = Field(default=[], description="At the last step: pairs that tell the plan of it")


class SteppedModel(AnswerModel):
    """The answer of a move that is also told step by step."""

    steps: list[StepModel]


class RunModel(AnswerModel):
    """The answer of the run of a seam."""

    steps: list[RunStepModel]


class MovesModel(BaseModel):
    """Every move with its inputs."""

    moves: list[dict[str, Any]] = Field(description="name, label, purpose and inputs: kind, unit, limits, default")


class RefusalModel(BaseModel):
    """The one shape of a refusal."""

    model_config = FORBID
    errors: list[FieldError]
    lines: list[LineModel] = Field(description="Always empty")


def request_model(name: str, inputs: tuple[Input, ...]) -> type[BaseModel]:
    """The body of a move: every input by name as typed text, and under each name with a unit as a number."""
    return create_model(name.capitalize() + "Request", __config__=with_example(examples.BODIES[name]),
                        **fields_of((UNITS_INPUT, *inputs), name, Models(), SWITCHES.get(name, ("", ""))))


def with_example(body: dict) -> ConfigDict:
    return ConfigDict(extra="forbid", json_schema_extra={"examples": [body]})


def fields_of(inputs: Iterable[Any], owner: str, models: "Models",
              switch: tuple[str, str] = ("", "")) -> dict[str, Any]:
    """Every name that an object of these inputs may have. switch: the input that asks for it, and at what it stands"""
    fields: dict[str, Any] = {}
    for item in inputs:
        fields[item.name] = item.modelled(models, owner)
        if item.name == switch[0]:
            fields[item.name] = models.choice(item, owner, switch[1])
        for name, unit in named(item).items():
            fields[name] = models.with_unit(item, name, unit)
        for old in item.was:
            fields[old] = described(Typed, text_schema(item), f"Older name of {item.name}", deprecated=True)
        for extra in item.extra_names():
            options = [option[0] for option in item.options]
            fields[extra] = described(str | None, one_of(options), f"What {item.name} is. One of: {_options(item)}",
                                      default=options[0])
    return fields


def described(accepts: Any, schema: dict, description: str, default: Any = None,
              deprecated: bool = False) -> tuple[Any, Any]:
    """A field that its description says more narrowly than pydantic takes it: the engine refuses, in its own words.

    A default stands in the schema of its kind: beside it a generated client would send it, or ask for it.
    """
    own = schema if default in (None, "") else {**schema, "default": default}
    return (Annotated[accepts | None, WithJsonSchema(or_null(own))],
            Field(default=None, description=description, json_schema_extra=_without_null,
                  deprecated=deprecated or None))


def _without_null(found: dict) -> None:
    found.pop("default", None)


def or_null(schema: dict) -> dict:
    """A schema that takes null for what is not said."""
    examples_ = {"examples": schema["examples"]} if "examples" in schema else {}
    return {"anyOf": [schema, {"type": "null"}], **examples_}


def one_of(options: list[str], first: str = "") -> dict:
    return {"type": "string", "enum": options, "examples": [first or next(one for one in options if one)]}


def text_schema(item: Input) -> dict:
    """A text, as it is typed in the form."""
    most = item.most_letters()
    return {"type": "string", "examples": [examples.example(item)]} | ({"maxLength": most} if most else {})


def _at(value: float, own: str, unit: str) -> float:
    return value if unit == own else round(from_si(to_si(value, own), unit), 9)


class Models:
    """What an input may be modelled as; each kind of input chooses (`Input.modelled`, `number_modelled` and
    `query_modelled`). owner: whose field it is."""

    def number(self, item: Number, unit: str) -> dict:
        """The schema of a number in a unit, within the limits of its input."""
        low, high = (_at(bound, item.unit, unit) for bound in (item.low, item.high))
        return {"type": "number", "exclusiveMinimum" if item.above else "minimum": low,
                "maximum": high, "examples": [examples.number(item, unit)]}

    def numbers(self, item: Parts, unit: str) -> dict:
        """The schema of numbers in a row."""
        low, high = (_at(bound, item.unit, unit) for bound in (item.low, item.high))
        return {"type": "array", "minItems": item.least, "maxItems": item.most,
                "items": {"type": "number", "exclusiveMinimum": low, "maximum": high},
                "examples": [examples.numbers(item, unit)]}

    def positive(self, item: Amount, unit: str) -> dict:
        """The schema of an amount, whatever it is an amount of."""
        return {"type": "number", "exclusiveMinimum": 0,
                "examples": [examples.number(item) if unit in ("g", "mL") else 0.24]}

    def typed_text(self, item: Input) -> dict:
        """The schema of a text of a link."""
        return text_schema(item)

    def one_of(self, item: Input) -> dict:
        """The schema of a choice in a link; an empty text is nothing said."""
        options = [option[0] for option in item.options]
        return one_of(options if "" in options else [*options, ""])

    def quantity(self, item: Input, owner: str) -> tuple[Any, Any]:
        """Text with its unit; a bare number too where the quantity has none."""
        about, schema = item.about(reader()), text_schema(item)
        default = {"default": examples.example(item)} if about.get("default") else {}
        if not units_of(item):
            pure = item.number_modelled(self, "")
            if default:
                pure["default"] = pure["examples"][0]
            return described(Typed, {"anyOf": [pure, schema], "examples": pure["examples"]}, _note(about))
        return described(Typed, {**schema, **default}, _note(about))

    def with_unit(self, item: Input, name: str, unit: str) -> tuple[Any, Any]:
        """The same as a number in that unit."""
        about, schema = item.about(reader()), item.number_modelled(self, unit)
        told = about.get("default") and not item.extra_names()  # else it is the default of one of several
        default = schema["examples"][0] if told else None
        return described(Typed, schema, f"{about['label']}, in {unit}: the same as {item.name}", default=default)

    def text(self, item: Input, owner: str) -> tuple[Any, Any]:
        """A few words."""
        return described(Typed, text_schema(item), _note(item.about(reader())), default=item.default_in("metric"))

    def choice(self, item: Choice, owner: str, stands: str = "") -> tuple[Any, Any]:
        """One of a few words. stands: what it stands at where that is not its default"""
        default = stands or ("" if item.follows else item.default)
        options = [option[0] for option in item.options]
        return described(Typed, one_of(options, default), _note(item.about(reader())) + " One of: " + _options(item),
                         default=default)

    def record(self, item: Pick, owner: str) -> tuple[Any, Any]:
        """The name of a row, or an object with fields of its own; alike wherever that record is asked."""
        return self._of_record(item.record) | str | None, Field(
            default=None, description=_note(item.about(reader())), json_schema_extra=self._row_of(item))

    @staticmethod
    def _row_of(item: Pick) -> Callable[[dict], None]:
        def own(found: dict) -> None:
            found.pop("default", None)
            found["examples"] = [examples.example(item)] if item.record.rows else [{}]
            for one in found.get("anyOf", ()):
                if one.get("type") == "string" and item.record.rows:
                    one["enum"] = [row[0] for row in item.record.rows]
                    one.update({"default": item.default} if item.default else {})

        return own

    def rows(self, item: Group, owner: str) -> tuple[Any, Any]:
        """A list of objects."""
        example = examples.example(item)
        row = create_model(owner.capitalize() + item.name.capitalize() + "Row", __config__=with_example(example[0]),
                           **fields_of(item.inner(), owner, self))

        def own(found: dict) -> None:
            found.pop("default", None)
            found["examples"] = [example]

        return list[row | None] | None, Field(  # type: ignore[valid-type]
            default=None, description=_note(item.about(reader())), max_length=item.most, json_schema_extra=own)

    def _of_record(self, record: Any) -> type[BaseModel]:
        if record.name not in RECORD_MODELS:
            rows = [row[0] for row in record.rows]
            fields = fields_of(record.fields, record.name, self)
            fields["id"] = described(str | None, one_of(rows) if rows else {"type": "string", "examples": [""]},
                                     "A built-in row to start from: " + ", ".join(rows))
            example = {"id": rows[0]} if rows else {field.name: examples.example(field) for field in record.fields
                                                    if field.must_be_sent()}
            RECORD_MODELS[record.name] = create_model(record.name.capitalize(), __config__=with_example(example),
                                                      **fields)
        return RECORD_MODELS[record.name]


RECORD_MODELS: dict[str, type[BaseModel]] = {}  # one schema for each, whichever moves ask it


def _note(about: dict) -> str:
    """What the description says of an input: its label, its limits, its hint."""
    return " ".join(text for text in (about["label"] + ".", _limits(about), about["help"]) if text)


def _limits(about: dict) -> str:
    if "low" not in about:
        return ""
    unit = f" {about['unit']}" if about["unit"] else ""
    return f"From {about['low']:g} to {about['high']:g}{unit}." + (" Another unit may be typed." if unit else "")


def _options(item: Input) -> str:
    return ", ".join(f"{option[0] or chr(34) * 2} ({said(option[1], reader())})" for option in item.options)


def query_parameters(inputs: tuple[Input, ...]) -> list[dict]:
    """The same inputs as query parameters with dotted names, as a link carries them."""
    found, models = [], Models()
    for name, item in [pair for one in (UNITS_INPUT, *inputs) for pair in one.parameters(one.name)]:
        before, _, last = name.rpartition(".")
        label = item.about(reader())["label"]
        schema = models.one_of(item) if last in item.extra_names() else item.query_modelled(models)
        found.append(parameter(name, label, schema))
        if last == item.name:
            for own, unit in named(item).items():
                schema = as_text(item.number_modelled(models, unit))
                found.append(parameter(f"{before}.{own}" if before else own, f"{label}, in {unit}", schema))
    return found


def parameter(name: str, description: str, schema: dict) -> dict:
    return {"name": name, "in": "query", "required": False, "description": description, "schema": schema}


def as_text(schema: dict) -> dict:
    """The schema of a value as a query holds it: a list of numbers is a text there."""
    if schema["type"] != "array":
        return schema
    return {"type": "string", "examples": [", ".join(f"{one:g}" for one in each) for each in schema["examples"]]}


def answer_model(name: str) -> type[AnswerModel]:
    """What a move answers."""
    stepped = RunModel if name == "run" else SteppedModel
    base = stepped if hasattr(moves.module(name), "steps") else AnswerModel
    return create_model(called(name) + "Answer", __base__=base, data=(
        data_model(name), Field(description="The same as named values in SI, unrounded; null where nothing is known")))


def called(name: str) -> str:
    """A move as its models are called.

    >>> called("own_rates")
    'OwnRates'
    """
    return "".join(word.capitalize() for word in name.split("_"))


def data_model(name: str) -> type[BaseModel]:
    """The data of a move's answer."""
    singles, tables = SHAPES[name]
    fields: dict[str, Any] = {one: named_value(one) for one in singles.split()}
    for table, columns in tables.items():
        own: dict[str, Any] = {one: named_value(one) for one in columns.split()}
        row = create_model(called(name) + called(table) + "Data", __config__=FORBID, **own)
        fields[table] = (list[row], Field(description=f"Rows: {columns.replace(' ', ', ')}"))  # type: ignore[valid-type]
    return create_model(called(name) + "Data", __config__=FORBID, **fields)


def named_value(name: str) -> tuple[Any, Any]:
    """A name of an answer's data."""
    unit, meaning = NAMES[name]
    kind = bool if unit == FLAG else str if unit in (TEXT, KEY) else int if unit == COUNT else float
    plain_unit = unit.removesuffix(" difference")
    return kind | None, Field(description=f"{meaning} [{unit}]", json_schema_extra=(
        {} if unit in (TEXT, KEY, FLAG) else {"x-unit": "1" if unit == COUNT else plain_unit}))


def request_models() -> dict[str, type[BaseModel]]:
    """The request model of every move."""
    return {name: request_model(name, moves.module(name).INPUTS) for name in moves.names()}
