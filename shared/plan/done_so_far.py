"""Done so far: what the form asks of a day under way: whether it is, the time now, the steps done and when."""
from ..forms.clock_times import Clock
from ..forms.errors import InputError
from ..forms.inputs import Choice, Group, Number
from ..forms.types import Values

LIVE = "Under way"
STEPS = (
    ("mix", "Putty mixed and bagged"),
    ("place", "Bag empty"),
    ("tool", "Cove tooled"),
    ("clean", "Edges clean"),
    ("wet_mix", "Wet-out resin mixed"),
    ("wet", "Tape wet out"),
    ("lay", "Tape laid"),
    ("roll", "Air rolled out"),
    ("peel", "Peel ply down"),
)
RUNNING = (("running", ("yes",)),)
INPUTS = (
    Choice("running", "The day", (("no", "is only planned"), ("yes", "is under way")), fold=LIVE),
    Clock("clock", "It is now", optional=True, fold=LIVE, when=RUNNING, help="The phone types it."),
    Group(
        "done",
        "Done so far",
        (
            Number("batch", "Batch", low=1, high=999, whole=True),
            Choice("step", "Step", STEPS),
            Number("minute", "Done at", unit="min", low=-360, high=2880,
                   help="Minutes after the start of the plan, before it with a minus."),
        ),
        most=300,
        each="Step",
        fold=LIVE,
    ),
    Number("now", "Now", unit="min", low=0, high=2880, optional=True, fold=LIVE, help="Minutes after the start."),
)


def check(values: Values) -> None:
    """Steps of one batch are done in their order, each once."""
    order = dict([(key, place) for place, (key, _) in enumerate(STEPS)])
    seen: dict[float, list[tuple[str, float]]] = {}
    for row in values["done"]:
        path = "done.{}.".format(row["place"])
        for step, minute in seen.get(row["batch"], ()):
            if step == row["step"]:
                raise InputError(path + "step", "Step: this one is here twice for batch " + str(int(row["batch"])))
            # a helper mixes the wet-out resin while the cove is still tooled
            side = step == "wet_mix" or row["step"] == "wet_mix"
            if not side and (order[step] - order[row["step"]]) * (minute - row["minute"]) < 0:
                raise InputError(path + "minute", "Done at: the steps of a batch are done one after the other")
        seen.setdefault(row["batch"], []).append((row["step"], row["minute"]))
