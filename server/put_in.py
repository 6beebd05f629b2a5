"""Put in: the sentences of one language in the place of their keys, in what a phone is sent.

A table of keys beside the program would be 6 kB more of a first visit, and a look-up at each text; so a phone has
neither. It asks for another bundle where it is to speak another language.
"""
import ast
import itertools
import json
import keyword
import re
import string
from collections import Counter
from functools import cache
from typing import Any, NamedTuple

from covemix.shared.words.units import holds_figure
from covemix.shared.words.written import FIRST, names, unread

WRITTEN = "shared/words/written.py"
ROWS = "shared/words/languages.py"
NAMED = re.compile(r"\{([a-z_]\w*)\}")  # a value of a sentence
CALLED = re.compile(r'(?<![\w.])t\("([a-z0-9.-]+)"(\)?)')  # of a script


def put_in(source: str, sentences: dict, short: dict[str, str], whole: frozenset[str] = frozenset()) -> str:
    """A module of the engine with each text that is a key replaced by what stands behind it, and short names for the
    values of a message. short: of `short_names`; whole: keys whose values keep their names

    >>> put_in("message('none', radius=1)", {"none": "none: {radius}"}, {"radius": "a"})
    "message('none: {a}', a=1)"
    """
    found = texts_of(source)
    instead = {place: (name, short[name]) for key, values in found.called
               if key in sentences and key not in whole for name, place in values if name in short}
    for key, place in found.texts:
        if key in sentences:
            pattern = sentences[key] if key in whole else with_short_names(sentences[key], short)
            instead[place] = (f"'{key}'", repr(pattern))
    lines = source.encode().splitlines(keepends=True)  # places are counted in bytes
    for (line, begin), (old, new) in sorted(instead.items(), reverse=True):
        text = lines[line - 1]
        lines[line - 1] = text[:begin] + new.encode() + text[begin + len(old):]
    return b"".join(lines).decode()


def own_row(source: str, language: str) -> str:
    """The languages as a phone has them: of the rows its own alone, and English where that stands beside it. Each
    begins on a line of its own.

    >>> own_row("A = (\\n  Language('de', ','),\\n  Language('en',\\n    '.'),\\n)", "en")
    "A = (\\n  Language('en',\\n    '.'),\\n)"
    """
    kept = (language, FIRST) if unread(language) else (language,)
    others = [node for node in ast.walk(ast.parse(source)) if isinstance(node, ast.Call)
              and isinstance(node.func, ast.Name) and node.func.id == "Language"
              and isinstance(node.args[0], ast.Constant) and node.args[0].value not in kept]
    gone = {line for node in others for line in range(node.lineno, (node.end_lineno or 0) + 1)}
    return "".join(text for line, text in enumerate(source.splitlines(keepends=True), 1) if line not in gone)


class Texts(NamedTuple):
    """What a module says. texts: each of its texts, with its line and its byte there; called: the key of each message
    that stands in its call, with all of its values by name, and the place of each name
    """

    texts: list[tuple[str, tuple[int, int]]]
    called: list[tuple[str, list[tuple[str, tuple[int, int]]]]]


@cache
def texts_of(source: str) -> Texts:
    """The texts of a module, which is looked at twice. Its tree is kept no longer than that takes.

    >>> texts_of("message('none', radius=1)")
    Texts(texts=[('none', (1, 8))], called=[('none', [('radius', (1, 16))])])
    """
    found = Texts([], [])
    for node in ast.walk(ast.parse(source)):
        if isinstance(node, ast.Constant) and isinstance(node.value, str):
            found.texts.append((node.value, (node.lineno, node.col_offset)))
        elif (isinstance(node, ast.Call) and isinstance(node.func, ast.Name) and node.func.id == "message"
              and isinstance(node.args[0], ast.Constant) and all(one.arg for one in node.keywords)):
            found.called.append((str(node.args[0].value),
                                 [(one.arg or "", (one.lineno, one.col_offset)) for one in node.keywords]))
    return found


def handed_on(sources: list[str], sentences: dict) -> frozenset[str]:
    """Keys that stand somewhere else than in the call that gives their values.

    >>> sorted(handed_on(["KEY = 'b'\\nmessage('a', x=1)\\n"], {"a": "{x}", "b": "{x}"}))
    ['b']
    """
    there = Counter(key for source in sources for key, _ in texts_of(source).texts)
    called = Counter(key for source in sources for key, _ in texts_of(source).called)
    return frozenset(key for key in sentences if there[key] != called[key])


def short_names(sentences: dict) -> dict[str, str]:
    """A short name for each value of all sentences, the most used first: one has the same everywhere.

    >>> short_names({"a": "{radius} of {width}", "b": "{radius}"})
    {'radius': 'a', 'width': 'b'}
    """
    count = Counter(name for pattern in sentences.values() for name in names(pattern))
    letters = (itertools.product(string.ascii_lowercase, repeat=length) for length in (1, 2))
    # no keyword of the language, and no unit: that would be one alone
    free = (name for name in map("".join, itertools.chain.from_iterable(letters))
            if not keyword.iskeyword(name) and not holds_figure(name))
    return {name: next(free) for name in sorted(count, key=lambda one: (-count[one], one))}


def with_short_names(pattern: Any, short: dict[str, str]) -> Any:
    """The same sentence with short names for its values.

    >>> with_short_names((None, "{name}: ", ("count", {"other": "{count} rolls"})), {"name": "a", "count": "b"})
    (None, '{a}: ', ('b', {'other': '{b} rolls'}))
    """
    if isinstance(pattern, str):
        return NAMED.sub(lambda found: "{" + short.get(found[1], found[1]) + "}", pattern)
    return (None, *[with_short_names(piece, short) if isinstance(piece, str)
                    else ("", with_short_names(piece[1], short)) if piece[0] == ""
                    else (short[piece[0]], {case: with_short_names(one, short) for case, one in piece[1].items()})
                    for piece in pattern[1:]])


def put_in_script(script: str, sentences: dict) -> str:
    """A script of the page with the sentence in each `t("key")`; KeyError where there is none of that key.

    >>> put_in_script('say(t("close"), t("left", { count }));', {"close": "Close", "left": "{count} left"})
    'say("Close", t("{count} left", { count }));'
    """
    def said(found: re.Match) -> str:
        sentence = json.dumps(sentences[found[1]], ensure_ascii=False, separators=(",", ":"))
        alone = found[2] and isinstance(sentences[found[1]], str)
        return sentence if alone else f"t({sentence}{found[2]}"

    return CALLED.sub(said, script)
