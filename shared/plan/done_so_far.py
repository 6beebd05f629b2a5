"""Done so far: what the form asks of a day under way: whether it is, the time now, the steps done and when."""
from ..clock.pot_names import STEPS
from ..forms.clock_times import Clock
from ..forms.errors import InputError
from ..forms.inputs import Choice, Group, Number
from ..forms.types import Values
from ..words.messages import message

LIVE = "plan-fold-live"
RUNNING = (("running", ("yes",)),)
INPUTS = (
    Choice("running", "plan-running", (("no", "plan-running.no"), ("yes", "plan-running.yes")), fold=LIVE),
    Clock("clock", "plan-clock", optional=True, fold=LIVE, when=RUNNING, help="plan-clock.help"),
    Group(
        "done",
        "plan-done",
        (
            Number("batch", "plan-done-batch", low=1, high=999, whole=True),
            Choice("step", "plan-done-step", STEPS),
            Number("minute", "plan-done-minute", unit="min", low=-360, high=2880, help="plan-done-minute.help"),
        ),
        most=300,
        each="plan-done.each",
        fold=LIVE,
    ),
    Number("now", "plan-now", unit="min", low=0, high=2880, optional=True, fold=LIVE, help="plan-now.help"),
)


def check(values: Values) -> None:
    """Steps of one batch are done in their order, each once."""
    order = dict([(key, place) for place, (key, _) in enumerate(STEPS)])
    seen: dict[float, list[tuple[str, float]]] = {}
    for row in values["done"]:
        path = "done.{}.".format(row["place"])
        for step, minute in seen.get(row["batch"], ()):
            if step == row["step"]:
                raise InputError(path + "step", message("plan-refused-step-twice", batch=int(row["batch"])))
            # a helper mixes the wet-out resin while the cove is still tooled
            side = step == "wet_mix" or row["step"] == "wet_mix"
            if not side and (order[step] - order[row["step"]]) * (minute - row["minute"]) < 0:
                raise InputError(path + "minute", "plan-refused-step-order")
        seen.setdefault(row["batch"], []).append((row["step"], row["minute"]))
