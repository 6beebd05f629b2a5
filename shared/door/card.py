"""Card: an answer as plain words, for paper, a message or a phone that has nothing else."""
from ..forms import links
from ..forms.declared import find_in, units_of_tools
from ..forms.types import Said
from ..plan.batch_cards import sheets
from ..words.languages import Reader
from ..words.lines import ANSWER, ASK, MORE, WARN
from ..words.messages import listed, message, typed
from ..words.texts import said
from ..words.written import reader
from . import moves

SHORT = 600  # bytes: a code that is read in glare stays under version 20 at level M, 666 bytes (ISO/IEC 18004)
TITLES = dict(moves.TITLES, trial="card-trial")
# lines of rank ASK whose label is a question by itself: no colon stands behind it
QUESTIONS = ("wrong_way", "label_apart", "deep", "facts_apart", "sun", "long_day", "own_typed", "wide_gap",
             "narrow_flank", "heavy_glass", "pumps_from_memory", "narrows", "cup_from_memory", "may_it_carry",
             "pot_life_whole", "deep_weave", "heavy_filler", "no_pot_life", "no_warmth")


def told(inputs: "list | tuple", pairs: list, language: str = "en") -> list:
    """Pairs of a link as [label, text], in the words of the form; names that nothing declares are left out."""
    found, who = _told(inputs, pairs, language)
    return [[said(_called(row, label), who), said(text, who)] for row, _, label, text in found]


def _called(row: "tuple | None", label: Said) -> Said:
    """A field, also one of a row of a group: "Length, Piece 1"."""
    return label if row is None else message("card-of-row", each=row[0], count=row[1], field=label)


def _told(inputs: "list | tuple", pairs: list, language: str) -> tuple:
    """([(row, name, label, text)], who reads): the fields of a link. row: (each, count) where it is one of a group"""
    tree = links.tree(pairs)
    units = "us" if tree.get("units") == "us" else "metric"
    found, tools = [], units_of_tools(inputs, tree, units)
    for path, text in pairs:
        known = find_in(inputs, path.split("."))
        if known:
            label, row = known[1], None
            if isinstance(label, tuple) and len(label) == 3:
                row, label = label[:2], label[2]
            found.append((row, known[2].name, label, known[2].in_words(text, tree, units, tools)))
    return found, reader(units, language)


def asked(inputs: "list | tuple", pairs: list, values: dict, language: str = "en") -> list:
    """What stood in the form: what was typed, and the defaults of what is in sight."""
    standing = []
    for item in inputs:
        own = (item.name,) + tuple(item.extra_names())
        mine = [pair for pair in pairs if pair[0].partition(".")[0] in own]
        default = item.default_in(values["units"]) if item.says_default else ""
        if not mine and default and not item.fold and item.asked(values):
            mine = [(item.name, default)]
        standing.extend(mine)
    return joined(*_told(inputs, standing, language))


def joined(found: list, who: Reader) -> list:
    """The fields of one row of a group as one entry, its name first. found: [(row, name, label, text)]

    >>> joined([(("Piece", 1), "name", "Name", "Keel"), (("Piece", 1), "length", "Length", "3 m"),
    ...         (None, "people", "People", "Alone")], reader())
    [['Piece 1', 'Keel, Length: 3 m'], ['People', 'Alone']]
    """
    rows, last = [], None
    for row, name, label, text in found:
        if row is None:
            rows.append([label, [text]])
        else:
            text = text if name == "name" else message("card-field", field=label, text=text)
            if row == last:
                rows[-1][1].append(text)
            else:
                rows.append([message("card-row", each=row[0], count=row[1]), [text]])
        last = row
    return [[said(label, who), said(listed(texts, "plain"), who)] for label, texts in rows]


def card(screen: str, inputs: "list | tuple", pairs: list, values: dict, answer: dict, language: str = "en") -> dict:
    """The card of a screen's answer: {"title", "asked": [[label, text]], "lines": [line], "caution", "sheets"}.

    sheets: more cards, one for each batch of a plan
    """
    lines, more, who = [], [], reader(values["units"], language)
    for _, one in answer["answers"]:
        for error in one["errors"]:
            lines.append({"label": said("card-not-worked-out", who), "text": error["message"], "rough": "",
                          "caution": "", "rank": WARN})
        # what is done with the tool first goes along: who reads a card has no bench to ask
        lines.extend([each for each in one["lines"] if each["rank"] != MORE or each["part"] == "tool"])
        more.extend(sheets(one["lines"], pairs, who))
    return {"title": said(TITLES[screen], who), "asked": asked(inputs, pairs, values, language), "lines": lines,
            "caution": answer["caution"], "sheets": more}


def _row(line: dict, who: Reader) -> str:
    question = line["rank"] == ASK and line["name"] in QUESTIONS
    return said(message("card-line.question" if question else "card-line", label=typed(line["label"]),
                        text=typed(line["text"])), who)


def _with_rough(line: dict, who: Reader) -> str:
    told = _row(line, who)
    if line["rough"] == "":
        return told
    return said(message("card-line.rough", line=typed(told), rough=typed(line["rough"])), who)


def _ends(one: dict, who: Reader) -> tuple:
    """What a card begins and ends with."""
    return (said(message("card-title", title=typed(one["title"])), who),
            said(message("card-caution", caution=typed(one["caution"])), who))


def _asked(one: dict, who: Reader) -> list:
    return [said(message("card-line", label=typed(label), text=typed(text)), who) for label, text in one["asked"]]


def text(one: dict, who: Reader) -> str:
    """The whole card as lines of text."""
    head, foot = _ends(one, who)
    rows = [head] + _asked(one, who) + [""]
    for each in one["lines"]:
        rows.append(_with_rough(each, who))
        if each["caution"]:
            rows.append(each["caution"])
    rows.extend([""] + ([one["made"]] if one.get("made") else []) + [foot])
    return "\n".join(rows)


def short(one: dict, who: Reader, most: int = SHORT) -> str:
    """The card in few words, for a code on the screen: the caution first in rank, then answers, then what was asked.

    most: bytes of UTF-8; what does not fit is left out, a line at a time, and said
    """
    head, foot = _ends(one, who)
    ranked = [each for each in one["lines"] if each["rank"] in (ANSWER, WARN) or each.get("part") == "tool"]
    ranked.extend([each for each in one["lines"] if each["rank"] not in (ANSWER, WARN, ASK) and each not in ranked])
    rows = _asked(one, who)[:3]
    rows.extend([_row(each, who) for each in ranked])
    more, room = said("card-more", who), most - len((head + foot).encode()) - 2
    kept = []
    for row in rows:
        size = len(row.encode()) + 1
        if size > room - (len(more) + 1):
            kept.append(more)
            break
        kept.append(row)
        room -= size
    return "\n".join([head] + kept + [foot])
