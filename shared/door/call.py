"""The call: JSON in, JSON out. The page, the tests of both runtimes and nothing else come through here."""
import json

from ..forms import links
from ..forms.late import late
from . import moves


def call(text: str, memo: None = None, language: str = "en") -> "str | None":
    """JSON in, JSON out, as `answered` says."""
    return json.dumps(answered(text, memo, language))


def answered(text: str, memo: None = None, language: str = "en") -> "dict | None":
    """JSON in, what JSON can hold out: {"screen": name, "pairs": [[name, text], ...]} or {"move": name, "typed": tree};
    {"hand": screen, "pairs"} makes what leaves, {"brought": screen, "pairs", "length", "chosen"} looks at a link that
    came; {"seal": pairs, "build"} closes the pairs of a link that the page made;
    {"file": name, "pairs" or "rows", ...} makes a file of it.

    A slow move of a screen may be asked alone: {"move": name, "pairs": [[name, text], ...]}; what follows each key
    press before the rest: {"first": screen, "pairs"}.

    The page, the tests of both runtimes and nothing else come through here; an unknown name is a KeyError.
    memo: the `Memo` of whoever asks again and again; the answers are the same without it
    language: a phone has one, and answers in it whatever stands here
    """
    asked = json.loads(text)
    if "first" in asked:
        return moves.first(asked["first"], asked["pairs"], memo, language)
    if "file" in asked:
        return late("saved_file").filed(asked, memo, language)
    if "screen" in asked:
        return moves.asked(asked["screen"], asked["pairs"], memo, language)
    if "seal" in asked:
        return {"link": late("handover").sealed(asked["seal"], asked["build"])}
    typed = asked["typed"] if "typed" in asked else links.tree(asked["pairs"])
    if "hand" in asked or "brought" in asked:
        if "hand" in asked:
            return late("handover").handed(asked["hand"], asked["pairs"], asked.get("build", ""), language)
        return late("handover").brought(asked["brought"], asked["pairs"], asked["length"], language,
                                       asked.get("chosen"))
    return moves.answer(asked["move"], typed, memo, language)
