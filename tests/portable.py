"""The engine's portable subset as rules: what MicroPython lacks, or does otherwise, is not written in shared/.

A rule: name, what to write instead, a finder (node -> whether it breaks the rule), a small sample that does.
"""
import ast

IMPORTS = {"math", "json", "collections"}  # built into the interpreter that is sent
METHODS = ("zfill", "ljust", "rjust", "title", "capitalize", "casefold", "swapcase", "removeprefix", "removesuffix",
           "isdecimal", "isnumeric", "isalnum", "translate", "maketrans", "expandtabs", "format_map", "isprintable",
           "hex", "as_integer_ratio", "bit_length", "bit_count", "fullmatch", "findall", "finditer", "groupdict",
           "_replace", "_asdict", "_fields", "splitlines")
CASE = ("lower", "upper")
BLANK = ("strip", "lstrip", "rstrip", "split", "rsplit", "splitlines", "isspace")
BUILTINS = ("round", "format", "repr", "ascii", "vars", "open", "input", "eval", "exec", "compile", "hash", "id",
            "print", "frozenset", "property")
MATH = ("hypot", "fsum", "prod", "cbrt", "log1p", "expm1", "dist", "comb", "perm", "exp2", "nextafter", "ulp",
        "sumprod", "isqrt", "remainder", "lcm", "gcd", "log2", "log10", "sinh", "cosh", "tanh", "asinh", "acosh",
        "atanh", "erf", "erfc", "gamma", "lgamma", "isclose")


def _called(node):
    return node.func.id if isinstance(node, ast.Call) and isinstance(node.func, ast.Name) else ""


def _method(node):
    return node.func.attr if isinstance(node, ast.Call) and isinstance(node.func, ast.Attribute) else ""


def _keyword(node, name):
    return isinstance(node, ast.Call) and any(given.arg == name for given in node.keywords)


def _imports(node):
    if isinstance(node, ast.Import):
        return any(name.name.partition(".")[0] not in IMPORTS for name in node.names)
    return isinstance(node, ast.ImportFrom) and not node.level and node.module not in IMPORTS


def _imported(names):
    def found(node):
        if isinstance(node, ast.ImportFrom):
            return any(alias.name in names for alias in node.names)
        return (isinstance(node, ast.Attribute) and isinstance(node.value, ast.Name) and node.value.id in IMPORTS
                and node.attr in names)
    return found


def _format_spec(node):
    """"{:.2f}".format(x): the number is formatted by the runtime."""
    if _method(node) != "format" or not isinstance(node.func.value, ast.Constant):
        return False
    text = node.func.value.value
    return isinstance(text, str) and any("{" in piece and (":" in piece or "!" in piece)
                                         for piece in (part.rpartition("{")[1] + part.rpartition("{")[2]
                                                       for part in text.replace("{{", "").split("}")))


def _percent(node):
    return (isinstance(node, ast.BinOp) and isinstance(node.op, ast.Mod) and isinstance(node.left, ast.Constant)
            and isinstance(node.left.value, str))


def _strips_bytes(node):
    """text.strip("–"): there a byte of another letter goes with it, and what is left is no text."""
    return _method(node) in ("strip", "lstrip", "rstrip") and any(
        isinstance(given, ast.Constant) and not str(given.value).isascii() for given in node.args)


def _stepped_slice(node):
    return isinstance(node, ast.Slice) and node.step is not None


def _positional_only(node):
    return isinstance(node, ast.arguments) and bool(node.posonlyargs)


def _decorated(node):
    return isinstance(node, ast.ClassDef) and bool(node.decorator_list)


def _namedtuple_defaults(node):
    return _called(node) == "namedtuple" and bool(node.keywords)


def _starred(node):
    """[*a, *b]; `first, *rest = row` is fine."""
    return (isinstance(node, (ast.List, ast.Tuple, ast.Set)) and not isinstance(getattr(node, "ctx", None), ast.Store)
            and any(isinstance(item, ast.Starred) for item in node.elts))


def _named_group(node):
    return isinstance(node, ast.Constant) and isinstance(node.value, str) and (
        "(?P<" in node.value or "(?:" in node.value or "(?=" in node.value)


def _dunder(node):
    return isinstance(node, ast.FunctionDef) and node.name in (
        "__init_subclass__", "__set_name__", "__class_getitem__", "__getattr__", "__post_init__", "__format__")


RULES = (
    ("imports beyond the allowed", "math, json, collections, or a sibling with a dot",
     _imports, "import dataclasses"),
    ("a number formatted by the runtime: f-string", "shown() or told(), and +",
     lambda node: isinstance(node, ast.FormattedValue) and (node.format_spec is not None or node.conversion != -1),
     "f'{x:.2f}'"),
    ("an f-string", "+ or .format(): plain ones would do, but a number in one is formatted by the runtime",
     lambda node: isinstance(node, ast.JoinedStr), "f'{x} g'"),
    ("a number formatted by the runtime: .format()", "shown(), and {} without a colon",
     _format_spec, "'{:.1f}'.format(x)"),
    ("a number formatted by the runtime: %", "shown()",
     _percent, "'%.1f' % x"),
    ("builtins that differ or reach outside", "shown() for round and format; nothing for the others",
     lambda node: _called(node) in BUILTINS, "round(x, 2)"),
    ("methods that are missing", "slices and small functions",
     lambda node: _method(node) in METHODS, "'7'.zfill(2)"),
    ("upper and lower", "numbers.small(): other letters stay as they are",
     lambda node: _method(node) in CASE, "x.lower()"),
    ("blanks of the runtime's choice", "numbers.BLANKS or another text as the argument",
     lambda node: _method(node) in BLANK and not node.args, "x.strip()"),
    ("strip takes ASCII alone", "replace the other letters first", _strips_bytes, 'x.strip("\u2013,")'),
    ("a value named within an expression", "a line of its own before it",
     lambda node: isinstance(node, ast.NamedExpr), "(a := 1)"),
    ("math that is missing", "sqrt(a * a + b * b), loops, logarithms of sums",
     _imported(MATH), "from math import hypot"),
    ("match", "if, or a table",
     lambda node: isinstance(node, ast.Match), "match x:\n    case 1:\n        pass"),
    ("a star in a display", "list(a) + list(b)",
     _starred, "[*a, *b]"),
    ("two stars in a display", "dict(a, key=1)",
     lambda node: isinstance(node, ast.Dict) and any(key is None for key in node.keys), "{**a}"),
    ("positional-only arguments", "plain arguments",
     _positional_only, "def f(a, /): pass"),
    ("a slice with a step", "reversed(), or a list of the places wanted: a tuple there has no steps at all",
     _stepped_slice, "x[1::2]"),
    ("zip(strict=)", "compare the lengths",
     lambda node: _called(node) == "zip" and _keyword(node, "strict"), "zip(a, b, strict=True)"),
    ("next() with a default", "a loop, or a list and its first",
     lambda node: _called(node) == "next" and len(node.args) > 1, "next(iter(a), None)"),
    ("raise from", "raise after the try",
     lambda node: isinstance(node, ast.Raise) and node.cause is not None, "raise A from b"),
    ("decorated classes", "a plain class with its own __init__",
     _decorated, "@dataclass\nclass A: pass"),
    ("namedtuple options", "a small function that fills in",
     _namedtuple_defaults, "namedtuple('A', 'b', defaults=(1,))"),
    ("groups that re lacks", "partition, split, .group(1)",
     _named_group, "re.match('(?P<a>b)', c)"),
    ("json options", "json.dumps(x), finite numbers only",
     lambda node: _method(node) == "dumps" and bool(node.keywords), "json.dumps(x, sort_keys=True)"),
    ("hooks that are never called", "a tuple that lists them",
     _dunder, "def __init_subclass__(cls): pass"),
    ("generators that are sent to, async", "plain loops",
     lambda node: isinstance(node, (ast.AsyncFunctionDef, ast.Await, ast.AsyncFor, ast.YieldFrom)),
     "async def f(): pass"),
    ("global and nonlocal state", "an argument, or a table kept by its owner",
     lambda node: isinstance(node, (ast.Global, ast.Nonlocal)), "def f():\n    global x"),
    ("type statements and generics", "built-in annotations",
     lambda node: type(node).__name__ in ("TypeAlias", "TypeVar"), "type A = int"),
    ("except*", "except",
     lambda node: type(node).__name__ == "TryStar", "try:\n    a\nexcept* A:\n    b"),
)


def broken(source, rules=RULES):
    """[(line, rule, instead)] of what the source breaks; docstrings and comments are free."""
    found = []
    for node in ast.walk(ast.parse(source)):
        for name, instead, breaks, _ in rules:
            if breaks(node):
                found.append((getattr(node, "lineno", 0), name, instead))
    return found
