"""Log lines: a poured batch in one line, and its time against the label's."""
from ..forms.types import Found, Values
from ..words.lines import ASK, BESIDE, SAY, Line, line, words
from ..words.numbers import shown, small
from ..words.units import told

OUTCOMES = (("unknown", "Not known yet"), ("good", "Cured well"), ("slow", "Cured slowly"),
            ("soft", "Stayed soft or sticky"), ("stiff", "Stiffened before it was used"), ("hot", "Got too hot"))


def say(found: Found, values: Values) -> list[Line]:
    """found: `log.LogResult`"""
    if found.empty:
        return [words("empty", "Nothing to keep yet", "Add at least one note about this batch.", rank=ASK)]
    system = values["units"]
    pieces = [values["seam"], told(values["mass"], "g", system) if values["mass"] else "",
              told(values["temperature"], "degC", system, places=0) if values["temperature"] is not None else "",
              "lot " + values["lot"] if values["lot"] else "",
              "read " + values["readings"] if values["readings"] else "", values["note"],
              told(values["laid"], "m", system) + " laid" if values["laid"] else "",
              "" if values["outcome"] == "unknown" else small(dict(OUTCOMES)[values["outcome"]])]
    lines = [words("summary", values["what"] or "A batch", ", ".join([piece for piece in pieces if piece])
                   or "nothing else noted", rank=SAY)]
    own = values["own_time"]
    if own:
        text = told(own, "min", system, places=0)
        if found.share is not None:
            text += ", label " + told(values["label_time"], "min", system, places=0) + ": " + against(found.share)
        lines.append(line("own_time", "Stiffened after", own, "s", text, rank=BESIDE))
    return lines


def against(share: float) -> str:
    """How much longer than the label says. share: `log.against_label`

    >>> against(-0.2)
    '20 % sooner'
    """
    return shown(abs(share) * 100) + " % " + ("sooner" if share < 0 else "longer")
