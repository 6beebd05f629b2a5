"""Request and answer models, made from the engine's declarations: they describe, the engine decides."""
from typing import Any

from covemix.shared.door import moves
from covemix.shared.forms.declared import Input
from covemix.shared.forms.inputs import UNITS_INPUT, Choice, Group, Pick
from covemix.shared.words.written import reader
from pydantic import BaseModel, ConfigDict, Field, StrictFloat, create_model

Typed = StrictFloat | str | None  # strict: false is no 0
FORBID = ConfigDict(extra="forbid")


# of an answer and of a step, as a page sets them; left out where empty
HEAD = Field(default="", description="The name that the label begins with")
HOW = Field(default="", description="What is to be done, the rest of the label")
LARGE = Field(default="", description="The figure that the text begins with")
SMALL = Field(default="", description="The text behind the figure, with its blank; all of it where it has none")


class FieldError(BaseModel):
    """What one field can put right."""

    field: str = Field(description="Dotted path of the input, empty where no field is to blame", examples=["amount"])
    message: str = Field(description="One sentence in the user's words")


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
    mends: bool = Field(description="Whether it brings a pour that is off back into ratio; once it is, it is gone")
    lead: list[tuple[str, str]] = Field(description="Pairs that mend it, in the form")
    keeps: list[tuple[str, str]] = Field(description="Pairs that a log entry of this step starts with")
    logs: list[tuple[str, str]] = Field(description="Pairs of the whole batch for the log, at the last step")
    head: str = HEAD
    how: str = HOW
    large: str = LARGE
    small: str = SMALL


class SteppedModel(AnswerModel):
    """The answer of a move that is also told step by step."""

    steps: list[StepModel]


class MovesModel(BaseModel):
    """Every move with its inputs."""

    moves: list[dict[str, Any]] = Field(description="name, label, purpose and inputs: kind, unit, limits, default")


class RefusalModel(BaseModel):
    """The one shape of a refusal."""

    model_config = FORBID
    errors: list[FieldError]
    lines: list[LineModel] = Field(description="Always empty")


def request_model(name: str, inputs: tuple[Input, ...]) -> type[BaseModel]:
    """The body of a move: every input by name, as a number or as typed text."""
    models = Models()
    fields: dict[str, Any] = {"units": UNITS_INPUT.modelled(models, "units")}
    for item in inputs:
        fields[item.name] = item.modelled(models, name)
        for old in item.was:
            fields[old] = (Typed, Field(default=None, deprecated=True, description=f"Older name of {item.name}"))
        for extra in item.extra_names():
            fields[extra] = (str | None, Field(default=None, description=_options(item)))
    return create_model(name.capitalize() + "Request", __config__=FORBID, **fields)


class Models:
    """What an input may be modelled as; each kind of input chooses (`Input.modelled`). owner: whose field it is."""

    def quantity(self, item: Input, owner: str) -> tuple[Any, Any]:
        """A number, or text with its unit."""
        about = item.about(reader())
        example = about.get("default") or about.get("low")
        return Typed, Field(default=None, description=_note(about),
                            examples=[example] if example not in ("", None) else None)

    text = quantity  # a number is text too

    def choice(self, item: Choice, owner: str) -> tuple[Any, Any]:
        """One of a few words."""
        about = item.about(reader())
        return str | None, Field(default=None, description=_note(about) + " One of: " + _options(item),
                                 examples=[about["default"]])

    def record(self, item: Pick, owner: str) -> tuple[Any, Any]:
        """The name of a row, or an object with fields of its own; alike wherever that record is asked."""
        return self._of_record(item.record) | str | None, Field(default=None, description=_note(item.about(reader())))

    def rows(self, item: Group, owner: str) -> tuple[Any, Any]:
        """A list of objects."""
        row = create_model(owner.capitalize() + item.name.capitalize() + "Row", __config__=FORBID,
                           **{field.name: field.modelled(self, owner) for field in item.inner()})
        return list[row | None] | None, Field(  # type: ignore[valid-type]
            default=None, description=_note(item.about(reader())), max_length=item.most)

    def _of_record(self, record) -> type[BaseModel]:
        if record.name not in RECORD_MODELS:
            fields: dict[str, Any] = {field.name: field.modelled(self, record.name) for field in record.fields}
            for field in record.fields:
                for extra in field.extra_names():
                    fields[extra] = (str | None, None)
            rows = ", ".join(row[0] for row in record.rows)
            fields["id"] = (str | None, Field(default=None, description="A built-in row to start from: " + rows))
            RECORD_MODELS[record.name] = create_model(record.name.capitalize(), __config__=FORBID, **fields)
        return RECORD_MODELS[record.name]


RECORD_MODELS: dict[str, type[BaseModel]] = {}  # one schema for each, whichever moves ask it


def _note(about: dict) -> str:
    """What the description says of an input: its label, its limits, its hint."""
    return " ".join(text for text in (about["label"] + ".", _limits(about), about["help"]) if text)


def _limits(about: dict) -> str:
    if "low" not in about:
        return ""
    return f"From {about['low']:g} to {about['high']:g} {about['unit']}, another unit may be typed behind the number."


def _options(item: Input) -> str:
    return ", ".join(f"{option[0]} ({option[1]})" for option in item.options)


def query_parameters(inputs: tuple[Input, ...]) -> list[dict]:
    """The same inputs as query parameters with dotted names, as a link carries them."""
    named = [one for item in (UNITS_INPUT, *inputs) for one in item.parameters(item.name)]
    return [{"name": name, "in": "query", "required": False, "description": item.about(reader())["label"],
             "schema": {"type": "string"}} for name, item in named]


def answer_model(name: str) -> type[AnswerModel]:
    """What a move answers."""
    return SteppedModel if hasattr(moves.module(name), "steps") else AnswerModel


def request_models() -> dict[str, type[BaseModel]]:
    """The request model of every move."""
    return {name: request_model(name, moves.module(name).INPUTS) for name in moves.names()}
