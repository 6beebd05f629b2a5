"""The one door to the engine: moves by name, typed text in, ordered lines out, as JSON."""
from collections import namedtuple

from ..forms import inputs, links
from ..forms.declared import missing, needless
from ..forms.late import late
from ..forms.memo import Memo, memo_of, once
from ..forms.types import Module
from ..words.languages import Reader
from ..words.lines import as_data, set_apart
from ..words.texts import said
from ..words.written import reader

SCREEN_INPUTS, SHOWN = "screen inputs", "shown"  # headings of the memo
Move = namedtuple("Move", ("name", "room", "label", "purpose"))

# in the order of the work; a module is imported when it is first asked, so that a phone starts with what it needs
MOVES = (
    Move("ratio", "mix", "move-ratio", "move-ratio.purpose"),
    Move("measure", "pour", "move-measure", "move-measure.purpose"),
    Move("rescue", "pour", "move-rescue", "move-rescue.purpose"),
    Move("thicken", "pour", "move-thicken", "move-thicken.purpose"),
    Move("pouring", "pour", "move-pouring", "move-pouring.purpose"),
    Move("heat", "clock", "move-heat", "move-heat.purpose"),
    Move("trial", "clock", "move-trial", "move-trial.purpose"),
    Move("cure", "clock", "move-cure", "move-cure.purpose"),
    Move("dew", "clock", "move-dew", "move-dew.purpose"),
    Move("joint", "seam", "move-joint", "move-joint.purpose"),
    Move("spreader", "seam", "move-spreader", "move-spreader.purpose"),
    Move("coats", "surface", "move-coats", "move-coats.purpose"),
    Move("sheathing", "surface", "move-sheathing", "move-sheathing.purpose"),
    Move("fairing", "surface", "move-fairing", "move-fairing.purpose"),
    Move("gluing", "surface", "move-gluing", "move-gluing.purpose"),
    Move("fillets", "surface", "move-fillets", "move-fillets.purpose"),
    Move("boat", "boat", "move-boat", "move-boat.purpose"),
    Move("plan", "plan", "move-plan", "move-plan.purpose"),
    Move("run", "plan", "move-run", "move-run.purpose"),
    Move("pot", "clock", "move-pot", "move-pot.purpose"),
    Move("timer", "clock", "move-timer", "move-timer.purpose"),
    Move("kit", "kit", "move-kit", "move-kit.purpose"),
    Move("log", "kit", "move-log", "move-log.purpose"),
    Move("timings", "kit", "move-timings", "move-timings.purpose"),
    Move("own_rates", "kit", "move-own-rates", "move-own-rates.purpose"),
    Move("aid", "safety", "move-aid", "move-aid.purpose"),
    Move("calls", "safety", "move-calls", "move-calls.purpose"),
    Move("safety", "safety", "move-safety", "move-safety.purpose"),
    Move("air", "safety", "move-air", "move-air.purpose"),
    Move("sources", "kit", "move-sources", "move-sources.purpose"),
)

# screen: the moves it asks, in the order their answers are read
SCREENS = (
    ("pour", ("measure", "ratio", "thicken", "rescue")),
    ("clock", ("heat", "cure", "dew")),
    ("trial", ("trial",)),
    ("plan", ("plan",)),
    ("joint", ("joint",)),
    ("surface", ("coats", "sheathing", "fairing", "gluing", "fillets")),
    ("boat", ("boat",)),
    ("spreader", ("spreader",)),
    ("kit", ("kit",)),
    ("log", ("log",)),
    ("safety", ("aid", "calls", "safety", "air")),
    ("sources", ("sources",)),
)

TITLES = {"pour": "page-pour", "clock": "page-clock", "trial": "page-trial", "plan": "page-plan", "joint": "page-joint",
          "surface": "page-surface", "boat": "page-boat", "spreader": "page-spreader", "kit": "page-kit",
          "log": "page-log", "safety": "page-safety", "sources": "page-sources"}  # of each screen


def module(name: str) -> Module:
    """The module of a move; KeyError where there is no such move."""
    package = __name__[:-len(".door.moves")]
    return __import__(package + "." + move(name).room + "." + name, None, None, ("INPUTS",))


def move(name: str) -> Move:
    """The row of a move; KeyError where there is no such move."""
    for row in MOVES:
        if row.name == name:
            return row
    raise KeyError(name)


def names() -> list[str]:
    """The names of all moves, in the order of the work."""
    return [row.name for row in MOVES]


def answer(name: str, tree: dict, memo: "Memo | None" = None, language: str = "en",
           read: "tuple | None" = None) -> dict:
    """One move: {"lines", "figures", "leads", "errors", "understood"}; errors are all told at once and leave no lines.

    understood: [[field, text], ...], how a number was read that could be read in two ways.
    A move module offers answer(values) and, where it has them, figures(values), drawings, leads(values), where its
    answer goes next: [{"label", "screen", "pairs"}], the pairs being what it fills in there, and sift(lines, values),
    which lines are shown once they are text.
    memo: the `Memo` of whoever asks again and again; language: of `languages.LANGUAGES`, in which it is said
    read: (values, errors) where they are known
    """
    asked = module(name)
    values, errors = read or inputs.read(asked.INPUTS, tree, memo)
    who = reader(values["units"], language)
    found = _answered(asked, values, errors, who)
    found["understood"] = understood(values, who)
    return found


def understood(values: dict, who: Reader) -> list:
    """How each number was read that could be read in two ways, as `who` reads it."""
    found = [[path, said(what, who), typed] for path, what, typed in values["_understood"]]
    return [[path, text] for path, text, typed in found if not needless(text, typed, who.language.decimal)]


def _said_before(values: dict, move: Module, who: Reader) -> dict:
    """Its lines as they were said last to such a reader, by name."""
    return memo_of(values).under((move, who.units, who.language.name))


def _checked(move: Module, values: dict) -> list:
    """What its checks find, once for what is shown first and for the rest."""
    return once(values, move.CHECKS, lambda: inputs.checked(move.CHECKS, values))


def _answered(move: Module, values: dict, errors: list, who: Reader) -> dict:
    errors = errors or _checked(move, values)
    if errors:
        told = [{"field": e.field, "message": said(e.message, who)} for e in errors]
        return {"errors": told, "lines": [], "figures": [], "leads": []}
    figures, leads = getattr(move, "figures", None), getattr(move, "leads", None)
    steps = getattr(move, "steps", None)
    found = {"errors": [], "lines": as_data(move.answer(values), who, _said_before(values, move, who)),
             "figures": in_text(figures(values), who) if figures else [],
             "leads": in_text(leads(values), who) if leads else []}
    sift = getattr(move, "sift", None)
    if sift:
        found["lines"] = sift(found["lines"], values)
    if steps:
        found["steps"] = in_text(steps(values), who)
    return found


# of a step, a lead, a drawing and its shapes: what is said. All else in them is data
SAID = ("label", "figure", "under", "said", "asks", "writes", "title", "told", "what", "other")
# names and what stands in a form behind them: text, or a message to be read there
PAIRS = ("pairs", "keeps", "logs", "pours")


def in_text(found: list, who: Reader) -> list:
    """Steps, leads or drawings with all that is said in them as `who` reads it."""
    for one in found:
        if "figure" in one:  # a step
            one.update(set_apart(one["label"], one["figure"], who))
        for key in SAID:
            if key in one and one[key] != "":
                one[key] = said(one[key], who)
        for key in PAIRS:
            if key in one:
                one[key] = [[name, said(text, who) if isinstance(text, tuple) else text] for name, text in one[key]]
        if one.get("ends"):  # dates, as a file for the calendar
            dates = [(said(what, who), begins, ends) for what, begins, ends in one["ends"]]
            one["ends"] = late("calendar_file").calendar(dates, one.pop("made"))
        for shape in one.get("shapes", ()):
            if "text" in shape:
                shape["text"] = said(shape["text"], who)
            elif "texts" in shape:
                shape["texts"] = [said(each, who) for each in shape["texts"]]
    return found


def screen_inputs(screen: str, memo: "Memo | None" = None) -> list:
    """The inputs of a screen: those of its moves, each name once."""
    known = memo.under(SCREEN_INPUTS) if memo else {}
    if screen not in known:
        found, seen = [], {}
        for name in dict(SCREENS)[screen]:
            for item in module(name).INPUTS:
                if item.name not in seen:
                    seen[item.name] = True
                    found.append(item)
        known[screen] = found
    return known[screen]


def first(name: str, pairs: list, memo: "Memo | None" = None, language: str = "en") -> dict:
    """What a screen shows before the rest, by `first(values)` of its first move, which gives lines and drawings:
    {"answers": [[move, {"lines", "figures"}]]}, no answers where something cannot be read.

    A hand that types sees it follow; the whole answer comes behind it and takes it over.
    """
    memo = memo or Memo()
    values, errors = _one_typed(name, pairs, memo) or inputs.read(screen_inputs(name, memo), links.tree(pairs), memo)
    own = dict(SCREENS)[name][0]
    move = module(own)
    if errors or _checked(move, values):
        return {"answers": []}
    memo.under(SHOWN)[SHOWN] = (name, pairs, values)
    lines, figures = move.first(values)
    who = reader(values["units"], language)
    return {"answers": [[own, {"lines": as_data(lines, who), "figures": in_text(figures, who)}]]}


def _one_typed(name: str, pairs: list, memo: Memo) -> "tuple | None":
    """(values, errors) where the text of one number differs from what was shown last: only that is read; or None."""
    shown, before, values = memo.under(SHOWN).get(SHOWN, (None, None, None))
    if shown != name or len(before) != len(pairs) or inputs.TYPED_IN in values["_tree"]:
        return None
    typed = [both for both in zip(before, pairs) if both[0] != both[1]]
    if len(typed) != 1 or typed[0][0][0] != typed[0][1][0] or missing(typed[0][1][1]):
        return None
    path, text = typed[0][1]
    front, understood = [], values["_understood"]
    for item in screen_inputs(name, memo):
        if item.name == path and item.alone and not [1 for pair in pairs if pair[0] == path][1:]:
            tree = dict(values["_tree"])
            tree[path] = text
            told = [one for one in understood if one[0].partition(".")[0] in front]
            values, errors = dict(values, _tree=tree, _made={}, _understood=told), []
            inputs.read_into(values, (item,), tree, "", errors)
            front.append(path)
            told.extend([one for one in understood if one[0].partition(".")[0] not in front])
            return values, errors
        front.append(item.name)
    return None


def asked(name: str, pairs: list, memo: "Memo | None" = None,
           language: str = "en") -> dict:
    """A screen's answer to pairs; what was read and reckoned to show them a moment ago is not done again."""
    shown = memo.under(SHOWN).get(SHOWN) if memo else None
    if shown and shown[0] == name and shown[1] == pairs:
        return screen(name, shown[2]["_tree"], (shown[2], []), language=language)
    return screen(name, links.tree(pairs), memo=memo, language=language)


def screen(name: str, tree: dict, read: "tuple | None" = None, memo: "Memo | None" = None,
           language: str = "en") -> dict:
    """A screen's answers, what was understood of ambiguous numbers, and the caution that matters now, with its signs:
    {"answers": [[move, answer], ...], "understood": [[field, text], ...], "caution", "bar", "signs": [figure, ...]}.

    bar: the caution for two rows of a phone, without the English that stands behind it until a native has read it

    What its moves have in common is read once: half of the time of a key press on a phone.
    read: (values, errors) where they are known
    """
    values, errors = read or inputs.read(screen_inputs(name, memo), tree, memo)
    answers, who = [], reader(values["units"], language)
    for own in dict(SCREENS)[name]:
        move = module(own)
        answers.append([own, _answered(move, values, errors and _of_move(move, errors), who)])
    matters = late("current_caution").caution  # with all cautions behind it: the first figures need not wait for them
    caution, bar, signs = matters(values, answers)
    return {"answers": answers, "understood": understood(values, who), "caution": said(caution, who),
            "bar": said(bar, Reader(who.messages, who.language, who.units, True)), "signs": in_text(signs, who)}


def _of_move(move: Module, errors: list) -> list:
    """Those of its own inputs."""
    mine = ["units"]
    for item in move.INPUTS:
        mine.append(item.name)
        mine.extend(item.extra_names())
    return [error for error in errors if error.field.partition(".")[0] in mine]


def about(name: str, who: Reader) -> dict:
    """A move's declaration as data, as `who` reads it."""
    row = move(name)
    return {"name": name, "label": said(row.label, who), "purpose": said(row.purpose, who),
            "inputs": [item.about(who) for item in module(name).INPUTS]}
