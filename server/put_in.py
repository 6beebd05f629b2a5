"""Put in: the sentences of one language in the place of their keys, in what a phone is sent.

A table of keys beside the program would be 6 kB more of a first visit, and a look-up at each text; so a phone has
neither. It asks for another bundle where it is to speak another language.
"""
import io
import json
import re
import tokenize

WRITTEN = "shared/words/written.py"
CALLED = re.compile(r'(?<![\w.])t\("([a-z0-9.-]+)"(\)?)')  # of a script


def put_in(source: str, sentences: dict) -> str:
    """A module of the engine with each text that is a key replaced by what stands behind it.

    >>> put_in("say('cove-none', n=1)\\n", {"cove-none": "none: flat tape"})
    "say('none: flat tape', n=1)\\n"
    """
    lines = source.splitlines(keepends=True)
    tokens = [one for one in tokenize.generate_tokens(io.StringIO(source).readline)
              if one.type == tokenize.STRING and one.string[0] in "\"'" and one.string[1:-1] in sentences]
    for one in reversed(tokens):
        line, begin, end = one.start[0] - 1, one.start[1], one.end[1]
        lines[line] = lines[line][:begin] + repr(sentences[one.string[1:-1]]) + lines[line][end:]
    return "".join(lines)


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
