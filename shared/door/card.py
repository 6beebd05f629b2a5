"""Card: an answer as plain words, for paper, a message or a phone that has nothing else."""
from ..forms import links
from ..forms.declared import find_in, units_of_tools
from ..plan.batch_cards import sheets
from ..words.lines import ANSWER, ASK, MORE, WARN, said
from ..words.messages import message, typed
from ..words.numbers import capital, small
from ..words.written import reader

SHORT = 600  # bytes: a code that is read in glare stays under version 20 at level M, 666 bytes (ISO/IEC 18004)


def told(inputs, pairs, language="en"):
    """Pairs of a link as [label, text], in the words of the form; names that nothing declares are left out."""
    tree = links.tree(pairs)
    units = "us" if tree.get("units") == "us" else "metric"
    who = reader(units, language)
    found, tools = [], units_of_tools(inputs, tree, units)
    for name, text in pairs:
        known = find_in(inputs, name.split("."))
        if known:
            label = _of_row(known[1], who) if isinstance(known[1], tuple) and len(known[1]) == 3 else known[1]
            found.append([said(label, who), said(known[2].in_words(text, tree, units, tools), who)])
    return found


def _of_row(label, who):
    """A field of a row of a group: "Piece 1, length"."""
    each, count, inner = label
    return message("card-of-row", each=each, count=count, field=typed(small(said(inner, who))))


def asked(inputs, pairs, values, language="en"):
    """What stood in the form: what was typed, and the defaults of what is in sight."""
    standing = []
    for item in inputs:
        own = (item.name,) + tuple(item.extra_names())
        mine = [pair for pair in pairs if pair[0].partition(".")[0] in own]
        default = item.default_in(values["units"]) if item.says_default else ""
        if not mine and default and not item.fold and item.asked(values):
            mine = [(item.name, default)]
        standing.extend(mine)
    return joined(told(inputs, standing, language))


def joined(found):
    """The fields of one row of a group as one entry, its name first.

    >>> joined([["Piece 1, name", "Keel"], ["Piece 1, length", "3 m"], ["People", "Alone"]])
    [['Piece 1', 'Keel, length 3 m'], ['People', 'Alone']]
    """
    rows = []
    for label, text in found:
        row, _, field = label.partition(", ")
        if not field or row[-1] not in "0123456789":
            rows.append([label, text])
            continue
        said = text if field == "name" else field + " " + text
        if rows and rows[-1][0] == row:
            rows[-1][1] += ", " + said
        else:
            rows.append([row, said])
    return rows


def card(screen, inputs, pairs, values, answer, language="en"):
    """The card of a screen's answer: {"title", "asked": [[label, text]], "lines": [line], "caution", "sheets"}.

    sheets: more cards, one for each batch of a plan
    """
    lines, more = [], []
    for _, one in answer["answers"]:
        for error in one["errors"]:
            lines.append({"label": "Not worked out", "text": error["message"], "rough": "", "caution": "",
                          "rank": WARN})
        # what is done with the tool first goes along: who reads a card has no bench to ask
        lines.extend([each for each in one["lines"] if each["rank"] != MORE or each["part"] == "tool"])
        more.extend(sheets(one["lines"], pairs, reader(values["units"], language)))
    return {"title": capital(screen), "asked": asked(inputs, pairs, values, language), "lines": lines,
            "caution": answer["caution"], "sheets": more}


def _row(line):
    return line["label"] + (" " if line["label"][-1:] in "?." else ": ") + line["text"]


def text(one):
    """The whole card as lines of text."""
    rows = ["Covemix, " + one["title"]]
    rows.extend([label + ": " + said for label, said in one["asked"]])
    rows.append("")
    for each in one["lines"]:
        rows.append(_row(each) + (" (" + each["rough"] + ")" if each["rough"] else ""))
        if each["caution"]:
            rows.append(each["caution"])
    rows.extend([""] + ([one["made"]] if one.get("made") else []) + ["Caution: " + one["caution"]])
    return "\n".join(rows)


def short(one, most=SHORT):
    """The card in few words, for a code on the screen: the caution first in rank, then answers, then what was asked.

    most: bytes of UTF-8; what does not fit is left out, a line at a time, and said
    """
    head, foot = "Covemix, " + one["title"], "Caution: " + one["caution"]
    ranked = [each for each in one["lines"] if each["rank"] in (ANSWER, WARN) or each.get("part") == "tool"]
    ranked.extend([each for each in one["lines"] if each["rank"] not in (ANSWER, WARN, ASK) and each not in ranked])
    rows = [label + ": " + said for label, said in one["asked"][:3]]
    rows.extend([_row(each) for each in ranked])
    more, room = "And more on the full card.", most - len((head + foot).encode()) - 2
    kept = []
    for row in rows:
        size = len(row.encode()) + 1
        if size > room - (len(more) + 1):
            kept.append(more)
            break
        kept.append(row)
        room -= size
    return "\n".join([head] + kept + [foot])
