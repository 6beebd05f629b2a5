"""What the page's scripts have to know of the declarations of all screens, also while another is shown."""
import json

from covemix.shared.door import moves

LISTS = ("kit", "log")  # their forms tell of a thing of the list: nothing is chosen there


def declared() -> dict[str, dict]:
    """By screen: what its inputs are, where a script has to know.

    beside: by such an input, what else of the screen is told of its thing and of no other
    picks: the inputs that choose a thing, each with its kind: what is chosen holds on all screens
    measured: what was really measured; anew: the inputs with another of which it is of something else

    >>> declared()["plan"], "joint" in declared()
    ({'picks': {'crew': 'people', 'system': 'system', 'scale': 'scale'}, 'beside': {'system': ['timings']}}, False)
    """
    found = {}
    for screen, _ in moves.SCREENS:
        inputs = () if screen in LISTS else moves.screen_inputs(screen)
        beside = {}
        for item in inputs:
            if item.of:
                beside.setdefault(item.of, []).append(item.name)
        measured = [item for item in inputs if getattr(item, "measured", ())]
        told = {"picks": {item.name: item.record.name for item in inputs if hasattr(item, "record")},
                "beside": beside,
                "measured": [item.name for item in measured],
                "anew": list(dict.fromkeys(name for item in measured for name in item.measured))}
        found[screen] = {key: value for key, value in told.items() if value}
    return {screen: told for screen, told in found.items() if told}


def script(text: str) -> str:
    """The script that tells the others, with what it tells in front of it."""
    return f"const DECLARED = {json.dumps(declared(), separators=(',', ':'))};\n{text}"
