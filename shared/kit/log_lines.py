"""Log lines: a poured batch in one line, and its time against the label's."""
from ..clock.pot_names import BATCH_BEFORE, batch_said
from ..clock.pot_spans import spoken
from ..forms.types import Found, Said, Values
from ..things.piece_names import pieces_said
from ..things.records import SYSTEM
from ..words.lines import ASK, BESIDE, SAY, Line, line, words
from ..words.messages import listed, message, number, quantity, row, typed
from ..words.numbers import digits, shown

PLAN_BEFORE = " of the plan"
MIXED = "mixed"  # what was poured, where its system has no name
OUTCOMES = (("unknown", "log-outcome.unknown"), ("good", "log-outcome.good"), ("slow", "log-outcome.slow"),
            ("soft", "log-outcome.soft"), ("stiff", "log-outcome.stiff"), ("hot", "log-outcome.hot"))


def say(found: Found, values: Values) -> list[Line]:
    """found: `log.LogResult`"""
    if found.empty:
        return [words("empty", "log-empty", "log-empty.text", rank=ASK)]
    pieces = [seam(values),
              quantity(values["mass"], "g") if values["mass"] else "",
              quantity(values["temperature"], "degC", places=0) if values["temperature"] is not None else "",
              message("log-piece.lot", lot=typed(values["lot"])) if values["lot"] else "",
              message("log-piece.read", readings=typed(values["readings"])) if values["readings"] else "",
              message("pot-used.text", span=spoken(values["used"])) if values["used"] else "",
              typed(values["note"]) if values["note"] else "",
              message("log-piece.laid", length=quantity(values["laid"], "m")) if values["laid"] else ""]
    pieces = [piece for piece in pieces if piece]
    told = [listed(pieces, "plain")] if pieces else []
    if values["outcome"] != "unknown":
        told.append(dict(OUTCOMES)[values["outcome"]])
    lines = [words("summary", what(values), row(told, " · ") if told else "log-piece.none", rank=SAY)]
    own = values["own_time"]
    if own:
        text = quantity(own, "min", places=0)
        if found.share is not None:
            text = message("log-stiffened.against", own=text, label=quantity(values["label_time"], "min", places=0),
                           against=against(found.share))
        lines.append(line("own_time", "log-stiffened", own, "s", text, rank=BESIDE))
    return lines


def what(values: Values) -> Said:
    """What a batch is called: in the words of whoever wrote it down, or by what is known of it.

    An earlier build wrote "Batch 3 of the plan".
    """
    own, mix = values["what"], values["mixture"]
    before, plan, rest = own.partition(PLAN_BEFORE)
    if plan and not rest and digits(before[len(BATCH_BEFORE):], 3) and before.startswith(BATCH_BEFORE):
        return message("plan-logged", number=int(before[len(BATCH_BEFORE):]))
    if own:
        return typed(own)
    if values["planned"]:
        return message("plan-logged", number=int(values["planned"]))
    if mix:
        much = quantity(values["mass"], "g") if values["mass"] else quantity(values["volume"] or 0.0, "mL")
        name = "pouring-logged.mixed" if mix == MIXED else SYSTEM.known_as(mix)
        said = message("pouring-logged", much=much, name=name)
        return message("pouring-logged.thickened", what=said) if values["thicken"] == "yes" else said
    return batch_said(values["batch"]) if values["batch"] else "log-what.none"


def seam(values: Values) -> Said:
    """Where it went: as somebody wrote it down, or by the pieces that a plan had."""
    return typed(values["seam"]) if values["seam"] else values["pieces"] and pieces_said(values["pieces"])


def against(share: float) -> Said:
    """How much longer than the label says. share: `log.against_label`

    >>> against(-0.2)
    ('log-against.sooner', {'share': (4, '20')})
    """
    return message("log-against.sooner" if share < 0 else "log-against.longer", share=number(shown(abs(share) * 100)))
