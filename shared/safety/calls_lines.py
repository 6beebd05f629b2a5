"""Calls, lines: what is dialled, and whose it is."""
from ..catalogue.marks import OWN
from ..forms.types import Found, Values
from ..words.lines import ASK, CALL, Line, words
from ..words.messages import typed
from ..words.provenance import marked


def say(found: Found, values: Values) -> list[Line]:
    """found: `calls.CallsResult`"""
    if not found.calls:
        return [words("no_calls", "calls-none", "calls-none.text", rank=ASK)]
    whom = {"ambulance": "calls-ambulance", "poison": "calls-poison",
            "person": typed(found.who) if found.who else "calls-person"}
    return [words("call_" + key, whom[key], typed(number), rough=marked(OWN), rank=CALL)
            for key, number in found.calls]
