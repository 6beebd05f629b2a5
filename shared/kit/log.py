"""Log: one poured batch as it is written down. Nothing is required: half a line will do."""
from collections import namedtuple

from ..forms.inputs import Choice, Number, Text
from ..forms.types import Values
from ..things.records import SYSTEM
from .log_lines import OUTCOMES, say
from .own_rates import LAID, METRES, minutes

WENT_IN = "log-went-in-fold"
TIMES = "log-times-fold"

INPUTS = (
    Text("what", "log-what", most=120, help="log-what.help"),
    # what a batch is called that nobody named: no words, for a log is read in another language than it was written in
    Number("planned", "plan-done-batch", low=1, high=999, whole=True, optional=True, unseen=True),
    Text("batch", "pot-batch", unseen=True),
    Text("mixture", SYSTEM.label, unseen=True),
    Choice("thicken", "filling-thicken", (("no", "filling-thicken.no"), ("yes", "filling-thicken.yes")), unseen=True),
    Number("volume", "log-volume", unit="mL", low=0, high=100000, above=True, optional=True, unseen=True),
    Number("used", "pot-used", unit="min", low=0, high=2880, optional=True, unseen=True),
    Text("pieces", "log-seam", most=2400, unseen=True),
    Text("seam", "log-seam"),
    Number("temperature", "log-temperature", unit="degC", low=-20, high=60, optional=True),
    Choice("outcome", "log-outcome", OUTCOMES),
    Text("lot", "log-lot", fold=WENT_IN),
    Number("mass", "log-mass", unit="g", low=0, high=100000, above=True, optional=True, fold=WENT_IN),
    Text("readings", "log-readings", most=120, fold=WENT_IN),
    Number("own_time", "log-own-time", unit="min", low=0, high=2880, above=True, optional=True, fold=TIMES,
           help="log-own-time.help"),
    Number("label_time", "log-label-time", unit="min", low=0, high=2880, above=True, optional=True, fold=TIMES),
    Text("note", "log-note", most=120, fold="log-note"),
    Text("crew", "log-crew", fold=LAID),
    Number("hands", "log-hands", low=1, high=6, whole=True, optional=True, fold=LAID),
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


# empty: nothing of the batch is known that a line could keep; share: `against_label`, None where one time is not known
LogResult = namedtuple("LogResult", ("empty", "share"))


def reckon(values: Values) -> LogResult:
    """Whether there is anything to keep, and how the batch's time stands against the label's."""
    own, label = values["own_time"], values["label_time"]
    known = [values[name] for name in ("what", "planned", "batch", "mixture", "pieces", "seam", "mass", "lot",
                                       "readings", "note", "laid", "own_time")]
    empty = not any(known) and values["temperature"] is None and values["outcome"] == OUTCOMES[0][0]
    return LogResult(empty, against_label(own, label) if own and label else None)


def answer(values: Values) -> list:
    """The batch in one line, as a list shows it; then its time against the label's."""
    return say(reckon(values), values)
