"""A form as the templates see it: what was typed, what is wrong with it, which fields are asked, what folds away."""
import re
from collections.abc import Sequence
from typing import Any

from covemix.shared.forms.declared import Input, alike
from covemix.shared.forms.quantities import says_unit
from covemix.shared.words.languages import Reader
from covemix.shared.words.numbers import digits
from covemix.shared.words.units import SYSTEMS, sign

WIDEST_WORDS = 11  # letters of a choice that half a narrow phone shows beside its arrow
LONG = 300  # letters that a field takes, from which on it is more than a name


class Form:
    """The state of one screen's form. inputs: declarations as data; pairs: dotted name and typed text.

    told: lines of the answer by name, for the rows of a group that they are about
    tools: the units that the tools show, by the name of their pick
    bare: without the rows that stand in a group before anybody types, which the page makes itself (`fillGroups`)
    """

    def __init__(self, inputs: list[dict], pairs: Sequence, errors: dict[str, str], understood: dict[str, str],
                 told: Any = None, tools: dict[str, str] | None = None, bare: bool = False):
        self.typed = dict(reversed(list(pairs)))
        self.tools = tools or {}
        self.given = set(self.typed)
        self.errors, self.understood, self.told = errors, understood, told or {}
        self.choices = default_choices(inputs)
        self.choices.update((item["name"], self.stands(item["name"], item)) for item in inputs if "follows" in item)
        for item in () if bare else inputs:
            if item["repeats"] and not any(map(self._given_to, [item["name"], *item.get("beside", ())])):
                self.typed.update((f"{item['name']}.{place}.{name}", text)
                                  for place, row in enumerate(item["default"]) for name, text in row.items())

    def blank(self) -> "Form":
        """The form of a row that nobody has typed in."""
        return Form([], (), {}, {}, tools=self.tools)

    def shown(self, path: str, item: dict) -> str:
        """What stands in a field: as it was typed, the keys of a kept text in the words of the page."""
        words = item.get("words", {})
        return re.sub(r"[^\W\d_]+|\.(?=\d)", lambda one: words.get(one[0], one[0]), self.typed.get(path) or "")

    def unit_of(self, item: dict) -> str:
        """The unit of a bare number in a field: of the tool that shows it, or of the user's system."""
        return sign(self.tools.get(item.get("tool", ""), "")) or item["unit"]

    def asked(self, path: str, item: dict) -> bool:
        """Whether a field is in the form with the choices as they stand; the page asks the same of the declaration."""
        prefix = path[: len(path) - len(item["name"])]
        return not item.get("when") or any(
            (self.typed.get(prefix + one["name"]) or self.choices.get(prefix + one["name"])) in one["values"]
            for one in item["when"])

    def stands(self, path: str, item: dict) -> str:
        """What a choice stands at while nobody chose: it may go by what another field says."""
        prefix = path[: len(path) - len(item["name"])]
        return next((option for said, option in item.get("follows", ()) if self.typed.get(prefix + said)),
                    item["default"])

    def any_asked(self, items: list[dict]) -> bool:
        """A fold with nothing to ask is not shown."""
        return any(self.asked(item["name"], item) for item in items)

    def picked(self, path: str, item: dict) -> str:
        """The row a pick stands at: the one named, none where its own figures are typed, else the default."""
        row = self.typed.get(path) or ("" if self._typed_below(path) else item["default"])
        stands = next((one["typed"] for one in item["rows"] if one["id"] == row), {})
        own = {name: self.typed.get(f"{path}.{name}") for name in item["own"]}
        return "" if any(text and not alike(text, stands.get(name)) for name, text in own.items()) else row

    def open(self, path: str) -> bool:
        """A record's figures stand open where one was typed or has to be put right."""
        return self._typed_below(path) or any(name.startswith(path + ".") for name in self.errors)

    def opened(self, items: list[dict]) -> bool:
        """A fold opens by itself where something in it was typed or has to be put right."""
        names = {item["name"] for item in items}
        return any(path.partition(".")[0] in names for path in (*self.given, *self.errors))

    def group_rows(self, path: str, item: dict) -> int:
        """How many rows of a group stand in the form: as many as the typed values or the default reach."""
        places = [name[len(path) + 1:].partition(".")[0] for name in self.typed if name.startswith(path + ".")]
        reached = 1 + max((int(place) for place in places if digits(place, 3)), default=-1)
        bare = item["rows"] if item["gaps"] or not (self._given_to(path) or item["default"]) else 0
        return min(item["most"], max(reached, bare, item["least"]))

    def names_unit(self, path: str) -> bool:
        """Whether a unit was typed behind the number: the field's own would stand there twice."""
        return says_unit(self.typed.get(path, ""))

    def asks(self, path: str) -> bool:
        """Whether what is told at a field asks for what nobody typed yet: that is no mistake."""
        return not self.typed.get(path) and not self._typed_below(path)

    def wrong_below(self, path: str) -> bool:
        """Whether something in a row has to be put right."""
        return any(name.startswith(path + ".") for name in self.errors)

    def _given_to(self, group: str) -> bool:
        return any(name == group or name.startswith(group + ".") for name in self.given)

    @staticmethod
    def is_wide(item: dict) -> bool:
        """Whether the words of a choice, its label, or what is kept in it need the whole width of a phone."""
        return item.get("widest", 0) > WIDEST_WORDS or item.get("letters", 0) > LONG

    @staticmethod
    def in_sight(inputs: list[dict]) -> list[dict]:
        """The inputs that do not fold away."""
        return [item for item in inputs if not (item["fold"] or "unseen" in item)]

    @staticmethod
    def folds(inputs: list[dict]) -> list[tuple[str, list[dict]]]:
        """Each fold with its inputs, in the order in which the folds first appear."""
        return [(fold, items) for fold, items in Form.folded(inputs) if fold]

    @staticmethod
    def folded(inputs: list[dict]) -> list[tuple[str, list[dict]]]:
        """Inputs with the fold they stand under: those in sight first, then each fold where it first appears."""
        found: dict[str, list[dict]] = {"": []}
        for item in inputs:
            found.setdefault(item["fold"], []).append(item)
        return list(found.items())

    def _typed_below(self, path: str) -> bool:
        return any(name.startswith(path + ".") for name in self.given)


def in_both(item: Input, who: Reader) -> dict:
    """A declaration as data as `who` reads it; under "other" what differs in other units: a page can turn by itself."""
    other = next(one for one in SYSTEMS if one != who.units)
    return _merged(item.about(who), item.about(who._replace(units=other)))


def _merged(own: Any, other: Any) -> Any:
    if isinstance(own, dict):
        differs = {key: other[key] for key in own if isinstance(own[key], str) and own[key] != other[key]}
        return {key: _merged(own[key], other[key]) for key in own} | ({"other": differs} if differs else {})
    if isinstance(own, list):
        return [_merged(*both) for both in zip(own, other, strict=True)]
    return own


def default_choices(inputs: list[dict], prefix: str = "") -> dict[str, str]:
    """What every choice of a form stands at while nobody has chosen, by its dotted path."""
    found = {}
    for item in inputs:
        path = prefix + item["name"]
        found.update((path + behind, text) for behind, text in item.get("stands", {}).items())
        if not item["repeats"]:
            found.update(default_choices(item.get("fields", []), path + "."))
    return found
