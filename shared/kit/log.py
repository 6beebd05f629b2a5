"""Log: one poured batch as it is written down. Nothing is required: half a line is better than none."""
from ..forms.inputs import Choice, Number, Text
from ..words.lines import ASK, BESIDE, SAY, line, words
from ..words.numbers import shown, small
from ..words.units import told
from .own_rates import LAID, METRES, minutes

OUTCOMES = (("unknown", "Not known yet"), ("good", "Cured well"), ("slow", "Cured slowly"),
            ("soft", "Stayed soft or sticky"), ("stiff", "Stiffened before it was used"), ("hot", "Got too hot"))
TIMES = "Times"

INPUTS = (
    Text("what", "What was poured", most=120, help="The mix, as the screen gave it"),
    Text("seam", "Which seam"),
    Number("temperature", "Shed temperature", unit="degC", low=-20, high=60, optional=True),
    Choice("outcome", "How it turned out", OUTCOMES),
    Text("lot", "Lot numbers", fold="What went in"),
    Number("mass", "Mixed mass", unit="g", low=0, high=100000, above=True, optional=True, fold="What went in"),
    Text("readings", "What was really read", most=120, fold="What went in"),
    Number("own_time", "It stiffened after", unit="min", low=0, high=2880, above=True, optional=True, fold=TIMES,
           help="From the first stir to too stiff to spread"),
    Number("label_time", "The label says", unit="min", low=0, high=2880, above=True, optional=True, fold=TIMES),
    Text("note", "Note", most=120, fold="Note"),
    Text("crew", "Who laid it", fold=LAID),
    Number("hands", "How many people", low=1, high=6, whole=True, optional=True, fold=LAID),
    METRES,
) + minutes(LAID)
CHECKS = ()


def against_label(own: float, label: float) -> float:
    """How much longer a batch lasted than its label says, as a share of the label: own / label - 1.

    own, label: [s], above 0; returns: [1], below 0 where it stiffened sooner
    >>> against_label(24.0, 30.0)
    -0.19999999999999996
    """
    return own / label - 1


def answer(values):
    """The batch in one line, as a list shows it; then its time against the label's."""
    system = values["units"]
    pieces = [values["seam"], told(values["mass"], "g", system) if values["mass"] else "",
              told(values["temperature"], "degC", system, places=0) if values["temperature"] is not None else "",
              "lot " + values["lot"] if values["lot"] else "",
              "read " + values["readings"] if values["readings"] else "", values["note"],
              told(values["laid"], "m", system) + " laid" if values["laid"] else "",
              "" if values["outcome"] == "unknown" else small(dict(OUTCOMES)[values["outcome"]])]
    own, label = values["own_time"], values["label_time"]
    if not (values["what"] or own or any(pieces)):
        return [words("empty", "Nothing to keep yet", "Type one thing about this batch: half a line is better "
                      "than none.", rank=ASK)]
    lines = [words("summary", values["what"] or "A batch", ", ".join([piece for piece in pieces if piece])
                   or "nothing else noted", rank=SAY)]
    if own:
        text = told(own, "min", system, places=0)
        if label:
            share = against_label(own, label)
            text += ", label " + told(label, "min", system, places=0) + ": " + shown(abs(share) * 100) + " % " + (
                "sooner" if share < 0 else "longer")
        lines.append(line("own_time", "Stiffened after", own, "s", text, rank=BESIDE))
    return lines
