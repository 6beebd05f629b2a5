"""Emergency numbers in words: what is dialled, and whose it is."""
from ..catalogue.marks import OWN
from ..forms.types import Found, Values
from ..words.lines import ASK, CALL, Line, words


def say(found: Found, values: Values) -> list[Line]:
    """found: `calls.CallsResult`"""
    if not found.calls:
        return [words("no_calls", "No emergency numbers yet", "Type yours in the kit: ambulance, poison centre, a "
                      "person. They stay on this phone.", rank=ASK)]
    whom = {"ambulance": "Ambulance", "poison": "Poison centre", "person": found.who or "Your person"}
    return [words("call_" + key, whom[key], number, rough=OWN, rank=CALL)
            for key, number in found.calls]
