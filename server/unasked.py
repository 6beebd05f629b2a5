"""What a phone never asks of the engine: forms come to it as pages."""
import ast

ABOUT, WHO = "about", "who"  # what tells a form what it draws, and for whom
HELP = "help"  # what stands under a field
PURPOSE = ".purpose"  # how the key ends that says what a move is for


def without(source: str) -> str:
    """A module without what only a form asks of it: 2 kB of a first visit.

    >>> without("a = Text('a', help='b', most=3)\\nclass Text:\\n def about(self, who):\\n  return 1\\n most = 4\\n")
    "a = Text('a', most=3)\\nclass Text:\\n most = 4\\n"
    """
    nodes = list(ast.walk(ast.parse(source)))
    lines = source.encode().splitlines(keepends=True)  # places are counted in bytes
    starts = [0]
    for line in lines:
        starts.append(starts[-1] + len(line))
    def span(one: ast.stmt | ast.expr | ast.keyword, instead: bytes = b"") -> tuple[int, int, bytes]:
        end = starts[(one.end_lineno or 1) - 1] + (one.end_col_offset or 0)
        return starts[one.lineno - 1] + one.col_offset, end, instead

    spans = [(starts[one.lineno - 1], starts[one.end_lineno or 0], b"") for one in nodes
             if isinstance(one, ast.FunctionDef) and one.name == ABOUT and one.args.args[-1].arg == WHO]
    spans += [span(one) for call in nodes if isinstance(call, ast.Call) and not _says(call)
              for one in call.keywords if one.arg == HELP]
    spans += [span(one, b'""') for one in nodes
              if isinstance(one, ast.Constant) and isinstance(one.value, str) and one.value.endswith(PURPOSE)]
    text = b"".join(lines)
    for begin, end, instead in sorted(spans, reverse=True):
        before = text[:begin].rstrip()
        if not instead and before.endswith(b","):
            text = before[:-1] + text[end:]
        else:
            text = text[:begin] + instead + text[end:]
    return text.decode()


def _says(call: ast.Call) -> bool:
    """Whether a call makes a message, whose value may have any name."""
    return isinstance(call.func, ast.Name) and call.func.id == "message"
