"""Choices: inputs that are one of a few, or a few words."""
from ..words.languages import Reader
from ..words.messages import listed, message, number, row
from ..words.messages import typed as as_typed
from ..words.numbers import BLANKS, DIGITS, digits, small
from ..words.texts import said
from .declared import Input, missing
from .types import Given, Said


def is_option(options: "list | tuple", text: Given) -> bool:
    """Whether a text is one of the options, or nothing. options: (value, ...)"""
    return not text or text in [option[0] for option in options]


def option_words(options: "list | tuple", text: Given) -> str:
    """The label of an option; a text that is none stands as it is. options: (value, label, ...)"""
    for option in options:
        if option[0] == text:
            return option[1]
    return "" if missing(text) else as_typed(text.strip(BLANKS))


def choose(options: "list | tuple") -> tuple:
    """What is said where none of the options was chosen. options: (value, label, ...)"""
    each = [message("field-choose.each", option=option[1]) for option in options]
    return message("field-choose", options=listed(each, "or"))


class Choice(Input):
    """One of a few. options: (value, label) or (value, label, help), the first is the default unless one is named.

    row: laid out as a row of large keys, for the few choices that a glove makes
    follows: (dotted path, option) pairs: while nobody chose, the first stands whose path says something
    before: the option that links of earlier builds left out; where there is one, a link always says what stands
    unsaid: what stands there while nothing is chosen, where nothing may be taken for granted; it reads as ""
    """

    kind = "choice"
    control = "select"
    says_default = True

    def __init__(self, name: str, label: str, options: "list | tuple", default: Given = "",
                 row: "bool | dict" = False, unsaid: str = "", follows: tuple = (), before: str = "",
                 **more: Given) -> None:
        Input.__init__(self, name, label, **more)
        self.options, self.row, self.unsaid = options, row, unsaid
        self.follows, self.before = follows, before
        self.default = default or ("" if unsaid else options[0][0])
        if row:
            self.control = "keys"

    def resting(self) -> str:
        return self.default

    def chosen(self, tree: dict) -> dict:
        typed = self.typed_in(tree)
        return {self.name: self.standing(tree) if missing(typed) else typed}

    def standing(self, tree: dict) -> str:
        """What it stands at in a tree while nobody chose."""
        for path, option in self.follows:
            thing, _, field = path.partition(".")
            said = tree.get(thing)
            if isinstance(said, dict) and not missing(said.get(field)):
                return option
        return self.default

    def untouched(self, name: str, text: Given, tree: dict, system: str) -> bool:
        return not self.before and Input.untouched(self, name, text, tree, system)

    def linked(self, typed: dict, prefix: str, system: str, found: list, whole: bool = False) -> None:
        Input.linked(self, typed, prefix, system, found, whole)
        if self.before and missing(self.typed_in(typed)):
            found.append((prefix + self.name, self.standing(typed)))

    def meant_before(self, pairs: list) -> list:
        return [[self.name, self.before]] if self.before and self.name not in [name for name, _ in pairs] else []

    def knows(self, name: str, text: str) -> bool:
        return is_option(self.options, text)

    def in_words(self, text: str, tree: dict, system: str, tools: dict) -> Said:
        return option_words(self.options, text)

    def modelled(self, models: Given, owner: str) -> Given:
        return models.choice(self, owner)

    def query_modelled(self, models: Given) -> dict:
        return models.one_of(self)

    def from_program(self, taken: Given, value: Given, unit: str, path: str, tree: dict) -> Given:
        return taken.one_of(self, value, path)

    def exemplified(self, examples: Given) -> Given:
        return examples.option(self)

    def may_be(self) -> dict:
        return {"allowed": [option[0] for option in self.options if option[0]]}

    def default_in(self, system: str) -> Given:
        return self.default

    def read(self, typed: Given, path: str, values: dict) -> Given:
        if missing(typed):
            return self.standing(values["_tree"])
        for option in self.options:
            if typed == option[0]:
                return typed
        self.refuse(path, choose(self.options))

    def about(self, who: Reader) -> dict:
        facts = Input.about(self, who)
        facts["default"], facts["row"], facts["unsaid"] = self.default, self.row, said(self.unsaid, who)
        facts["options"] = [{"value": o[0], "label": said(o[1], who),
                             "help": said(o[2], who) if len(o) > 2 else ""} for o in self.options]
        facts["stands"] = {"": self.default}
        if self.follows:
            facts["follows"] = [list(pair) for pair in self.follows]
        facts["widest"] = widest([option["label"] for option in facts["options"]])
        return facts


def widest(labels: "list | tuple") -> int:
    """Letters of the longest label: a form gives it the room it needs."""
    return max([len(label) for label in labels] + [0])


class Phone(Input):
    """A number to be dialled. Reads into its digits as they were grouped, "" where nothing is typed.

    Brackets, points and hyphens become blanks; a nought in brackets behind a country's code is not dialled from abroad
    and goes. Two numbers in one field would be dialled as one: they are refused.
    """

    kind = "phone"
    control = "phone"
    most = 30

    def read(self, typed: Given, path: str, values: dict) -> Given:
        if missing(typed):
            return ""
        text = typed if isinstance(typed, str) else ""
        if text.strip(BLANKS)[:1] == "+":
            text = text.replace("(0)", " ")
        for mark in "()-.\u00a0\u2013":
            text = text.replace(mark, " ")
        number = " ".join([one for one in text.split(" ") if one])
        digits = number.replace(" ", "")
        if digits[:1] == "+":
            digits = digits[1:]
        if len(number) > self.most or not 2 <= len(digits) <= 15 or not all([c in DIGITS for c in digits]):
            self.refuse(path, "field-phone")
        return number

    def from_program(self, taken: Given, value: Given, unit: str, path: str, tree: dict) -> Given:
        return taken.words(self, value, path, tree)

    def exemplified(self, examples: Given) -> Given:
        return examples.phone(self)

    def most_letters(self) -> int:
        return self.most

    def about(self, who: Reader) -> dict:
        return dict(Input.about(self, who), default="", letters=self.most)


class Text(Input):
    """A few words that name something. Control characters are dropped, the rest is kept as typed.

    stands: what is said in an empty field that is read as nothing
    ours: texts that we would type into it, with how each is said
    keys: words of it that are keys, with the word of each in a form; between them are figures
    spelt: by spelling, in small letters, the key that is meant, of all languages
    """

    kind = "text"
    mark = True  # figures between keys have the mark of the page

    def __init__(self, name: str, label: str, most: int = 60, default: Given = "", stands: str = "",
                 ours: "dict | None" = None, keys: "dict | None" = None, spelt: "dict | None" = None,
                 **more: Given) -> None:
        Input.__init__(self, name, label, **more)
        self.most, self.default, self.stands, self.ours = most, default, stands, ours or {}
        self.keys, self.spelt = keys or {}, spelt or {}

    def default_in(self, system: str) -> Given:
        return self.default

    def read(self, typed: Given, path: str, values: dict) -> Given:
        if missing(typed):
            return self.default
        if not isinstance(typed, str):
            self.refuse(path, "field-words")
        text = "".join([c for c in typed if ord(c) >= 32 and ord(c) != 127]).strip(BLANKS)
        if len(text) > self.most:
            self.refuse(path, self.too_long())
        return self.keyed(text)

    def is_kept(self, text: str) -> bool:
        """Whether words of it are keys."""
        return bool(self.keys)

    def keyed(self, text: str) -> str:
        """A text with its keys in the place of words that mean them, in whatever language."""
        if not self.is_kept(text):
            return text
        found = []
        for word in text.split(" "):
            bare = word.rstrip(",;:")
            key = small(bare)
            found.append((key if key in self.keys else self.spelt.get(key, bare)) + word[len(bare):])
        return " ".join(found)

    def in_words(self, text: str, tree: dict, system: str, tools: dict) -> Said:
        if not self.is_kept(text):
            return Input.in_words(self, text, tree, system, tools)
        found = []
        for word in self.keyed(text).split(" "):
            bare = word.rstrip(",;:")
            known = self.keys.get(bare)
            found.append(row([known, as_typed(word[len(bare):])], "") if known else number(word))
        return row(found, " ")

    def link_value(self, value: Given, name: str, typed: dict, system: str, found: list, whole: bool) -> None:
        text = self.keyed(value) if isinstance(value, str) else value
        Input.link_value(self, text, name, typed, system, found, whole)

    def in_marks(self, text: str, who: Reader) -> str:
        return said(self.ours[text], who) if text in self.ours else text

    def is_ours(self, typed: Given, text: Given) -> bool:
        return typed == text or typed == self.ours.get(text)  # a phone has the sentence there

    def too_long(self) -> Said:
        return message("field-letters", most=self.most)

    def from_program(self, taken: Given, value: Given, unit: str, path: str, tree: dict) -> Given:
        return taken.words(self, value, path, tree)

    def exemplified(self, examples: Given) -> Given:
        return examples.words(self)

    def most_letters(self) -> int:
        return self.most

    def about(self, who: Reader) -> dict:
        facts = Input.about(self, who)
        facts.update({"default": said(self.stands, who) or self.default, "most": self.most, "letters": self.most})
        words = {key: said(self.keys[key], who) for key in self.keys}
        words = {key: word for key, word in words.items() if word != key}
        if self.keys and self.mark and who.language.decimal != ".":
            words["."] = who.language.decimal
        if words:
            facts["words"] = words
        return facts


class Numbered(Text):
    """A name: of our word with numbers behind it, as the word is in any language, the key is kept."""

    mark = False

    def is_kept(self, text: str) -> bool:
        return digits(text.partition(" ")[2].replace(" ", ""))
