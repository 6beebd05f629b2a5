"""Style sheets with their nested rules made plain: no browser before iOS 17.2, Chrome 120 and Firefox 117 reads all of
the nested ones (MDN's browser-compat-data).
"""
import re
from collections.abc import Iterator

GROUPS = ("@media", "@container", "@supports", "@layer")  # hold rules; any other rule with an @ is left as it is
# what belongs together: a text, what stands in brackets, or one sign
PIECE = re.compile(r"\"[^\"]*\"|'[^']*'|.", re.S)


def flat(text: str) -> str:
    """The same rules without any inside another. A list of selectors stays one by `:is()`, as nesting itself reads it.

    text: style sheets without comments
    >>> print(flat(".a, .b { color: red; > .c { top: 0; } @media print { left: 0; } &:hover, .d { right: 0; } }"))
    .a, .b {
    color: red;
    }
    :is(.a, .b) > .c {
    top: 0;
    }
    @media print {
    .a, .b {
    left: 0;
    }
    }
    :is(.a, .b):hover, :is(.a, .b) .d {
    right: 0;
    }
    """
    return "\n".join(_flat(text, ""))


def _flat(text: str, within: str) -> Iterator[str]:
    """within: the selector of the rule that this stands in"""
    own: list[str] = []
    for head, body in parts(text):
        if body is None:
            own.append(head + ";")
            continue
        yield from _ruled(within, own)
        own.clear()
        if head.startswith(GROUPS):
            yield head + " {"
            yield from _flat(body, within)
            yield "}"
        elif head.startswith("@"):
            yield from (head + " {", body.strip(), "}")
        else:
            yield from _flat(body, selector(within, head))
    yield from _ruled(within, own)


def _ruled(within: str, own: list[str]) -> Iterator[str]:
    if own:
        yield from (within + " {", *own, "}") if within else own


def selector(within: str, inner: str) -> str:
    """The selector of a rule inside of another.

    >>> selector(".a", "> .b, .c:is(.d, .e)"), selector(".a", "")
    ('.a > .b, .a .c:is(.d, .e)', '.a')
    """
    if not (within and inner):
        return inner or within
    outer = f":is({within})" if len(split(within, ",")) > 1 else within
    return ", ".join(one.replace("&", outer) if "&" in one else f"{outer} {one}" for one in split(inner, ","))


def split(text: str, at: str) -> list[str]:
    """Cut where a sign stands outside of brackets and texts.

    >>> split("a:is(b, c), [d='e,f']", ",")
    ['a:is(b, c)', "[d='e,f']"]
    """
    found, depth = [""], 0
    for piece in PIECE.findall(text):
        depth += (piece in "([") - (piece in ")]")
        if piece == at and not depth:
            found.append("")
        else:
            found[-1] += piece
    return [one.strip() for one in found]


def parts(text: str) -> Iterator[tuple[str, str | None]]:
    """What stands in a block: (head, body) of each rule, (text, None) of each declaration.

    >>> list(parts("a: url(';'); b { c: d; } e:f"))
    [("a: url(';')", None), ('b', ' c: d; '), ('e:f', None)]
    """
    head, body, depth, round_depth = "", "", 0, 0
    for piece in PIECE.findall(text):
        if not depth:
            round_depth += (piece == "(") - (piece == ")")
        depth -= piece == "}"
        if piece == "}" and not depth:
            yield head.strip(), body
            head = body = ""
        elif depth:
            body += piece
        elif piece == ";" and not round_depth:
            yield head.strip(), None
            head = ""
        elif piece != "{":
            head += piece
        depth += piece == "{"
    if head.strip():
        yield head.strip(), None
