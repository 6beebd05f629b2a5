"""Handover: what leaves this phone, and what may come in by a link."""
from ..forms import inputs, links, recall
from ..forms.declared import find_in, item_at, units_of_tools
from ..forms.quantities import behind
from ..forms.types import Said
from ..words.lines import CALL
from ..words.messages import listed, message, typed
from ..words.numbers import BLANKS, digits
from ..words.texts import said
from ..words.units import METRIC, SYSTEMS, unit_for
from ..words.written import reader
from . import card, moves

VERSION = 1
PRIME = 46649  # the largest below 36 ** 3: the mark is three letters, and one altered letter always changes it
MOST_TOLD = 5  # of what a link brings, in a few words
LETTERS = "0123456789abcdefghijklmnopqrstuvwxyz"

TOO_LONG, NEWER, CUT = "link-too-long", "link-newer", "link-cut"  # why a link is refused
MOST_NAMED, LONGEST_NAMED = 4, 40  # names that a refusal tells, and letters of each
OUTSIDE = ("v", "end", "as", inputs.TYPED_IN)  # names that the mark at the end of a link does not cover
OF_THE_LINK = OUTSIDE + (recall.NAME,)  # names that are about the link itself
# screen: what its links carry beside its own inputs, as (word in front, move, group of that move or "")
BESIDE = {"clock": (("pot", "pot", ""), ("timing", "heat", "timings")), "plan": (("run", "run", ""),)}


def mark(pairs: list) -> str:
    """Three letters that a link ends with; a link cut short ends with others, or none. One that is too long to be taken
    is not read to its end.

    >>> mark([("amount", "200")]) == mark([("amount", "20")])
    False
    """
    total, left = 7, links.LONGEST_LINK
    for name, text in pairs:
        for letter in name + "=" + text[:left] + "&":
            total = (total * 31 + ord(letter)) % PRIME
        left -= len(name) + len(text) + 2
        if left < 0:
            break
    return LETTERS[total // 1296] + LETTERS[total // 36 % 36] + LETTERS[total % 36]


def sealed(pairs: list, build: str = "") -> list:
    """The pairs of a link with its version and what made it in front, and its mark at the end."""
    pairs = [[recall.NAME, recall.mark(build)]] + [list(pair) for pair in pairs]
    return [["v", str(VERSION)]] + pairs + [["end", mark(pairs)]]


def opened(declared: "list | tuple", pairs: "list | tuple", length: int, beside: "list | tuple" = ()) -> tuple:
    """What a link brings: (pairs under today's names, why not).

    declared: inputs of its screen; length: characters

    A link is taken whole or not at all: with one name, row or choice left out it could mean another ratio.
    beside: (word in front, inputs) of what else its links carry
    """
    if length > links.LONGEST_LINK or len(pairs) > links.MOST_PAIRS:
        return [], TOO_LONG
    plain = [pair for pair in pairs if pair[0] not in OF_THE_LINK]
    why = broken_seal(pairs)
    if why:
        return [], why
    known, strange, twice = sorted_out(declared, plain, beside)
    if strange:
        names = _named([name if text is None else name + " = " + text for name, text in strange])
        nothing = not known and not [1 for _, text in strange if text is not None]
        return [], message("link-foreign" if nothing else "link-strange", names=names)
    if twice:
        return [], message("link-twice", names=_named(twice))
    if [1 for name, _ in pairs if name == "v"]:  # an early build read a bare number in the user's units
        known = [pair for item in declared for pair in item.meant_before(known)] + known
        known = in_words_of_tools(declared, known, "")
        known = come_by_link(declared, known)
    return as_typed(declared, known, pairs), ""


def come_by_link(declared: "list | tuple", pairs: "list | tuple") -> list:
    """The pairs of a link, with what says of its things that a link brought them."""
    said = [pair for item in declared for pair in item.come_by_link(pairs)]
    names = [name for name, _ in said]
    return [pair for pair in pairs if pair[0] not in names] + said


def going(declared: "list | tuple", pairs: list) -> list:
    """The pairs that leave: what is said on this phone alone stays."""
    found = []
    for name, text in pairs:
        item = item_at(declared, name)
        if not (item and (item.stays or item.private)):
            found.append([name, text])
    return found


def in_words_of_tools(declared: "list | tuple", pairs: list, meant: str = "tool") -> list:
    """Pairs in which a number that a tool shows says its unit, where the tool's is not the user's.

    meant: "tool" where a bare one is in the unit of its tool, "" where it is in the user's
    """
    tree, found = links.tree(pairs), []
    units: str = tree.get("units") if tree.get("units") in SYSTEMS else METRIC  # type: ignore[assignment]
    tools = units_of_tools(declared, tree, units)
    for name, text in pairs:
        item = item_at(declared, name)
        if item and item.tool and tools.get(item.tool, "") not in (
                "", unit_for(item.unit, units)):  # type: ignore[attr-defined]  # one with a tool has a unit
            own = item.unit  # type: ignore[attr-defined]
            text = behind(text, own, units, tools[item.tool] if meant else "")
        found.append([name, text])
    return found


def broken_seal(pairs: "list | tuple") -> Said:
    """Why a link's version or mark does not fit; "" where it does, or where it bears neither."""
    plain = [pair for pair in pairs if pair[0] not in OUTSIDE]
    ends = [text for name, text in pairs if name == "end"]
    versions = [text for name, text in pairs if name == "v"]
    if not versions:
        return CUT if ends else ""
    if len(versions) > 1 or not digits(versions[0], 6):
        return CUT
    if int(versions[0]) > VERSION:
        return NEWER
    return "" if ends == [mark(plain)] else CUT


def sorted_out(declared: "list | tuple", plain: list, beside: "list | tuple" = ()) -> tuple:
    """Pairs of a link: (known ones under today's names, [what is not known], [names told twice, not alike]).

    What is not known is a name and None, or a name and its text where a row or a choice of that name is not known.
    """
    known, strange, twice, told = [], [], [], {}
    for name, text in plain:
        steps = name.split(".")
        found = ("units", "", inputs.UNITS_INPUT) if name == "units" else find_in(declared, steps)
        if not found:
            if not [1 for word, others in beside if steps[0] == word and find_in(others, steps[1:])]:
                strange.append((name, None))
        elif found[2].private and text.strip(BLANKS):
            strange.append((name, None))  # a number to dial is the phone's own: not a stranger's as an ambulance
        elif not found[2].knows(name, text.strip(BLANKS)):
            strange.append((name, text))
        elif found[0] not in told:
            told[found[0]] = text
            known.append([found[0], text])
        elif told[found[0]] != text:
            twice.append(name)
    return known, strange, twice


def _named(names: list) -> tuple:
    """The first of many names, each cut to what a notice can show.

    >>> said(_named(["systm", "a", "b", "c", "d"]), reader())
    "'systm', 'a', 'b', 'c' and 1 more"
    """
    first = listed([message("link-name", name=typed(name[:LONGEST_NAMED])) for name in names[:MOST_NAMED]], "plain")
    more = len(names) - MOST_NAMED
    return message("link-names", names=first, more=more) if more > 0 else first


def beside_of(screen: str) -> list:
    """(word in front, inputs) of what a screen's links carry beside its own."""
    found = []
    for word, name, group in BESIDE.get(screen, ()):
        declared = moves.module(name).INPUTS
        found.append((word, dict([(item.name, item) for item in declared])[group].fields if group else declared))
    return found


def made_by(pairs: "list | tuple", language: str = "en") -> str:
    """What is said of what made a link: "" where it was no recalled build, or where no build of ours made it."""
    if not [1 for name, _ in pairs if name == "v"]:
        return ""
    made = recall.warning("".join([text for name, text in pairs if name == recall.NAME][:1]))
    return said(made, reader(language=language))


def as_typed(declared: "list | tuple", known: list, pairs: "list | tuple") -> list:
    """Pairs of a form whose units were switched on the way: each number says the unit it was typed in."""
    if not [1 for name, _ in pairs if name == inputs.TYPED_IN]:
        return known
    tree = inputs.typed_elsewhere(declared, links.tree(known + [list(p) for p in pairs if p[0] == inputs.TYPED_IN]))
    told = []
    for name, text in known:
        place: object = tree
        for step in name.split("."):
            place = place.get(step) if isinstance(place, dict) else None
        told.append([name, place if isinstance(place, str) else text])
    return told


def brought(screen: str, pairs: list, length: int, language: str = "en", chosen: str = "") -> dict:
    """A link as the page asks about it: {"pairs", "refused", "words", "made"}. chosen: the units that the phone keeps,
    whatever a link brings; "" where nobody chose any, and it takes those of the link"""
    declared = moves.screen_inputs(screen)
    known, refused = opened(declared, pairs, length, beside_of(screen))
    who = reader(language=language)
    words = brief(declared + ([] if chosen else [inputs.UNITS_INPUT]), going(declared, known), language)
    return {"pairs": come_by_link(declared, known), "refused": said(refused, who),
            "words": said(listed(words, "plain"), who), "made": "" if refused else made_by(pairs, language)}


def brief(declared: "list | tuple", known: list, language: str = "en") -> list:
    """What a link brings in a few words, as a narrow phone shows above a form: rows are counted, not told each."""
    found, plain = [], known
    for item in declared:
        if item.repeats:
            rows = [name.split(".") for name, _ in known if name.startswith(item.name + ".")]
            if rows:
                found.append(message("card-line", label=item.label, text=len(set([steps[1] for steps in rows]))))
            plain = [pair for pair in plain if pair[0].partition(".")[0] != item.name]
    found.extend([message("card-line", label=typed(label), text=typed(text))
                  for label, text in card.told(declared, plain, language)])
    more = len(found) - MOST_TOLD
    return found if more <= 0 else found[:MOST_TOLD] + [message("link-more", count=more)]


def handed(screen: str, pairs: list, build: str = "", language: str = "en") -> dict:
    """Everything that leaves: {"link": pairs, "card", "text", "short"}. build: id of the one that is asked"""
    declared = moves.screen_inputs(screen)
    tree = links.tree(pairs)
    values, errors = inputs.read(declared, tree)
    answer = moves.screen(screen, tree, (values, errors), language=language)
    for _, one in answer["answers"]:  # a number that is dialled is this phone's own
        one["lines"] = [line for line in one["lines"] if line["rank"] != CALL]
    pairs = going(declared, in_words_of_tools(declared, links.pairs(declared, tree)))
    made = card.card(screen, declared, pairs, values, answer, language)
    pour = moves.screen_inputs("pour") if made["sheets"] else []
    for sheet in made["sheets"]:
        sheet["pours"] = [[label, sealed(going(pour, links.pairs(pour, links.tree(pours))), build)]
                          for label, pours in sheet["pours"]]
    who = reader(values["units"], language)
    made["made"] = said(recall.told(build), who)
    return {"link": sealed(pairs, build), "card": made, "text": card.text(made, who), "short": card.short(made, who)}
