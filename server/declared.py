"""What the page's scripts have to know of the declarations of all screens, also while another is shown."""
import json

from covemix.shared.door import moves
from covemix.shared.words import written
from covemix.shared.words.languages import LANGUAGES

from .language import worker_name

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


def spoken(language: str) -> dict[str, dict[str, str]]:
    """The languages of the app by name, for a page in one of them.

    offer: said in a language itself where the page is in another

    >>> spoken("en")["en"]
    {'label': 'English', 'worker': 'sw.js'}
    """
    return {name: {"label": one.label, "worker": worker_name(name)}
            | ({} if name == language else {"offer": written.sentences(name)["language-offer"]})
            for name, one in LANGUAGES.items()}


def in_front(name: str, told: dict, text: str) -> str:
    """A script with what it tells the others in front of it.

    >>> in_front("A", {"b": 1}, "say(A);")
    'const A = {"b":1};\\nsay(A);'
    """
    return f"const {name} = {json.dumps(told, ensure_ascii=False, separators=(',', ':'))};\n{text}"
