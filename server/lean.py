"""The engine's modules as a phone needs them: the same program, without what it would load and never read."""
import ast
import io
import itertools
import keyword
import re
import string
import token
import tokenize
from collections import Counter
from collections.abc import Collection, Iterator
from functools import cache
from typing import NamedTuple

import minify

DOCUMENTED = (ast.Module, ast.ClassDef, ast.FunctionDef)
SKIPPED = (token.COMMENT, token.NL, token.ENDMARKER)
# a function in which names mean more than they say
OTHER_SCOPES = (ast.Global, ast.Nonlocal, ast.Import, ast.ImportFrom, ast.ClassDef, ast.JoinedStr)
# a comment behind code: no quote follows, so that it stands in no text
BEHIND = re.compile(r"(?<=[;,{}()\[\]>]) // [^\"'`\n]*$", re.M)
VALUE = re.compile(r"(?<![\w-])--[a-z][\w-]*")  # the name of a style sheet's own value
TYPES = re.compile(r"^\s*/\*\*.*?\*/[ \t]*\n?", re.M | re.S)  # of a script, as tsc reads them


class Module(NamedTuple):
    """A module as it is looked at from several sides: parsed, walked and cut into tokens once."""

    tree: ast.Module
    nodes: list[ast.AST]
    tokens: list[tokenize.TokenInfo]
    lines: list[str]

    def place(self, line: int | None, column: int | None) -> tuple[int, int]:
        """A place of the tree, which counts bytes, as the tokens count it."""
        text = self.lines[line - 1] if line else ""
        return line or 0, (column or 0) if text.isascii() else len(text.encode()[:column].decode())


def read(source: str) -> Module:
    tree = ast.parse(source)
    return Module(tree, list(ast.walk(tree)), list(tokenize.generate_tokens(io.StringIO(source).readline)),
                  source.splitlines())


@cache
def lean(source: str) -> str:
    """The same module without docstrings, annotations, comments and the white space that means nothing, and with short
    names for what only its own function knows: 7 kB of a first visit.

    MicroPython has no docstrings or annotations at run time, so no behaviour can depend on them; the tests compare the
    two programs.

    >>> lean("# why\\ndef four(a: int) -> int:\\n    'Four.'\\n    return a + 4  # more\\n")
    'def four(a):\\n return a+4\\n'
    """
    module = read(source)
    kinds = _kinds(module.nodes)
    words = docstrings(module)
    unread, short = annotations(module, kinds), short_names(module)
    gone, instead = types_only(module, kinds)
    unread |= gone
    words.update(instead)
    words.update(kinds_of_rows(module))
    lines, depth, before = [], 0, None
    for one in module.tokens:
        if one.type in SKIPPED or one.start in unread:
            continue
        if one.type == token.INDENT:
            depth += 1
        elif one.type == token.DEDENT:
            depth -= 1
        elif one.type == token.NEWLINE:
            before = None
        else:
            text = words.get(one.start, short.get(one.start, one.string))
            if before is None:
                lines.append(" " * depth + text)
            elif _joins(before, text):
                lines[-1] = lines[-1][:-1] + text[1:]
            else:
                lines[-1] += (" " if _clash(before, one.string) else "") + text
            before = one.string
    return "\n".join(line for line in lines if line.strip()) + "\n"


def docstrings(module: Module) -> dict[tuple[int, int], str]:
    """Where a docstring starts, and what stands in its place: nothing, or what keeps a body that had no more."""
    found = {}
    for node in module.nodes:
        if not isinstance(node, DOCUMENTED) or not node.body:
            continue
        first = node.body[0]
        if isinstance(first, ast.Expr) and isinstance(first.value, ast.Constant) and isinstance(first.value.value, str):
            alone = len(node.body) == 1 and not isinstance(node, ast.Module)
            found[first.lineno, first.col_offset] = "pass" if alone else ""
    return found


def kinds_of_rows(module: Module) -> dict[tuple[int, int], str]:
    """What stands in the place of the name that a named tuple calls itself by: no program asks for it, and without it
    the class may have a short one.

    >>> lean("Spec = namedtuple('Spec', ('kind',))\\n")
    'Spec=namedtuple("_",(\\'kind\\',))\\n'
    """
    return {module.place(one.args[0].lineno, one.args[0].col_offset): '"_"' for one in module.nodes
            if isinstance(one, ast.Call) and isinstance(one.func, ast.Name) and one.func.id == "namedtuple"}


def short_names(module: Module) -> dict[tuple[int, int], str]:
    """A short name for each local variable and each function that is the module's own, by the place of each mention.

    Arguments keep theirs, which calls may name, and so does what an inner function takes, catches, imports or declares
    to be another's. A function whose name begins with an underscore is asked for in its own module only (tested); where
    it is only ever called, and by places, its arguments are its own too.

    >>> short_names(read("def f(mass):\\n    total = mass\\n    return total\\n"))
    {(2, 4): 'a', (3, 11): 'a'}
    >>> lean("def _half(mass):\\n    return mass / 2\\ndef f(mass):\\n    return _half(mass)\\n")
    'def _a(a):\\n return a/2\\ndef f(mass):\\n return _a(mass)\\n'
    """
    found, inner = {}, _own_functions(module)
    for node in module.tree.body:
        for function in node.body if isinstance(node, ast.ClassDef) else [node]:
            if isinstance(function, ast.FunctionDef):
                found.update(_short_in(function, module, inner.get(function.name, ("", False))[1]))
    for one in module.nodes:
        if isinstance(one, ast.Name) and one.id in inner:
            found[module.place(one.lineno, one.col_offset)] = inner[one.id][0]
        elif isinstance(one, ast.FunctionDef) and one.name in inner:
            found[module.place(one.lineno, one.col_offset + len("def "))] = inner[one.name][0]
    return found


def _own_functions(module: Module) -> dict[str, tuple[str, bool]]:
    """The functions that only their module knows: by name, a short one, and whether they are only called, by places."""
    names = [node.name for node in module.tree.body if isinstance(node, ast.FunctionDef)
             and node.name.startswith("_") and not node.name.startswith("__")]
    other = {one.arg for one in module.nodes if isinstance(one, ast.arg | ast.keyword)}
    other |= {one.id for one in module.nodes if isinstance(one, ast.Name) and not isinstance(one.ctx, ast.Load)}
    other |= {one.attr for one in module.nodes if isinstance(one, ast.Attribute)}
    called = {id(one.func) for one in module.nodes if isinstance(one, ast.Call)
              and not one.keywords and not any(isinstance(each, ast.Starred) for each in one.args)}
    handed = {one.id for one in module.nodes if isinstance(one, ast.Name) and id(one) not in called}
    taken = {one.string for one in module.tokens}
    free = _unused(taken, "_")
    return {name: (next(free), name not in handed) for name in names if name not in other and names.count(name) == 1}


def _unused(taken: set[str], before: str = "") -> Iterator[str]:
    """The shortest names of letters that are not taken. before: what each begins with"""
    for length in (1, 2):
        for letters in itertools.product(string.ascii_lowercase, repeat=length):
            name = before + "".join(letters)
            if name not in taken and not keyword.iskeyword(name):
                yield name


def _short_in(function: ast.FunctionDef, module: Module, all_own: bool = False) -> dict[tuple[int, int], str]:
    """all_own: nobody calls it by the names of its arguments"""
    inside = list(ast.walk(function))
    if any(isinstance(one, OTHER_SCOPES) for one in inside):
        return {}
    names = [one for one in inside if isinstance(one, ast.Name)]
    first = function.args.args if all_own else []
    below = {id(one) for one in first}
    fixed = {one.arg for one in inside if isinstance(one, ast.arg) and id(one) not in below}
    fixed |= {one.name for one in inside if isinstance(one, ast.FunctionDef | ast.ExceptHandler) and one.name}
    names.sort(key=lambda one: (one.lineno, one.col_offset))
    own = dict.fromkeys([one.arg for one in first if one.arg not in fixed])
    own.update(dict.fromkeys(one.id for one in names if isinstance(one.ctx, ast.Store) and one.id not in fixed))
    taken = fixed | {one.id for one in names} | {one.arg for one in first}
    free = _unused(taken)
    short = {name: next(free) for name in own if len(name) > 1}
    found = {module.place(one.lineno, one.col_offset): short[one.id] for one in names if one.id in short}
    found.update({module.place(one.lineno, one.col_offset): short[one.arg] for one in first if one.arg in short})
    return found


def annotations(module: Module, kinds: list[ast.expr]) -> set[tuple[int, int]]:
    """Where the tokens start that say what kind an argument or a result is, with the colon or the arrow before them."""
    ends = {module.place(one.lineno, one.col_offset): module.place(one.end_lineno, one.end_col_offset) for one in kinds}
    found: set[tuple[int, int]] = set()
    before, end = (0, 0), (0, 0)
    for one in module.tokens:
        if one.start in ends:
            end = ends[one.start]
            found.add(before)
        if one.start < end:
            found.add(one.start)
        before = one.start
    return found


def _kinds(nodes: list[ast.AST]) -> list[ast.expr]:
    """What is said of the kinds of arguments, results and names that are given a value.

    >>> lean("found: dict[str, int] = {}\\n")
    'found={}\\n'
    """
    found = [node.annotation for node in nodes if isinstance(node, ast.arg) and node.annotation]
    found += [node.annotation for node in nodes if isinstance(node, ast.AnnAssign) and node.value]
    return found + [node.returns for node in nodes if isinstance(node, ast.FunctionDef) and node.returns]


def types_only(module: Module, annotated: list[ast.expr]) -> tuple[set[tuple[int, int]], dict[tuple[int, int], str]]:
    """Imports of names that only annotations speak of: (where the tokens of these imports start, what stands instead).

    >>> lean("from .types import F\\nfrom .lines import Line, line\\ndef say(found: F) -> Line:\\n    line(found)\\n")
    'from.lines import line\\ndef say(found):\\n line(found)\\n'
    """
    kinds = {id(below): below for kind in annotated for below in ast.walk(kind)}
    named = {node.id for node in module.nodes if isinstance(node, ast.Name) and id(node) not in kinds}
    typed = {word for node in kinds.values() for word in (
        [node.id] if isinstance(node, ast.Name) else re.findall(r"\w+", str(getattr(node, "value", ""))))}
    gone, instead, spans = set(), {}, {}
    for node in module.tree.body:
        if isinstance(node, ast.ImportFrom):
            kept = [one for one in node.names if (one.asname or one.name) in named
                    or (one.asname or one.name) not in typed]
            if len(kept) < len(node.names):
                spans[node.lineno, node.col_offset] = (node.end_lineno or 0, node.end_col_offset or 0)
                if kept:
                    node.names = kept
                    instead[node.lineno, node.col_offset] = ast.unparse(node).replace("from .", "from.").replace(
                        ", ", ",")
    end = (0, 0)
    for one in module.tokens:
        first = one.start in spans
        end = spans.get(one.start, end)
        if one.start < end and not (first and one.start in instead) and one.type not in (token.INDENT, token.DEDENT):
            gone.add(one.start)
    return gone, instead


def _joins(before: str, after: str) -> bool:
    """Whether two texts one behind the other may as well be one: of the same quote, plain, on one line.

    >>> _joins('"a "', '"b"'), _joins('"a"', "'b'"), _joins('"\\\\1"', '"2"'), _joins('f"a"', '"b"')
    (True, False, False, False)
    """
    return (before[0] == after[0] == before[-1] == '"' and before[:3] != '"""' != after[:3] and "\\" not in before)


def _clash(before: str, after: str) -> bool:
    """Whether two tokens would run together: words do, and a word before a quote would become its prefix."""
    last, first = before[-1], after[0]
    return (last.isalnum() or last in "_\"'") and (first.isalnum() or first in "_\"'")


def lean_script(text: str) -> str:
    """One of our scripts without the lines that are only a comment, without types and indentation: a phone reads none.

    A script keeps no text over several lines, so that no line's beginning has a meaning.

    >>> lean_script("// why\\nconst a = () => {\\n  return 1; // x\\n};\\n")
    'const a = () => {\\nreturn 1;\\n};\\n'
    """
    lines = (line.lstrip() for line in BEHIND.sub("", TYPES.sub("", text)).splitlines(keepends=True))
    return "".join(line for line in lines if not line.startswith("//"))


def tight_script(text: str) -> str:
    """A lean script with short names for what only its functions know, 9 kB of a first visit: what a module exports,
    and what another script reaches by its name, keeps it.

    >>> tight_script("export const twice = (amount) => {\\nconst all = amount * 2;\\nreturn all;\\n};\\n")
    'export const twice=e=>{const t=e*2;return t}'
    """
    return minify.string("application/javascript", apart(text))


def apart(text: str) -> str:
    """A lean script whose neighbouring declarations are of two kinds, so that none are put into one: the library does
    not always leave several in their order, and a name would be read before it has its value (`tests/js/sent.mjs`).

    >>> apart("const a = 1;\\nconst b = a;\\nlet c;\\nconst d = b;\\n")
    'const a = 1;\\nlet b = a;\\nlet c;\\nconst d = b;\\n'
    """
    before = ""

    def kind(found: re.Match) -> str:
        nonlocal before
        before = "let " if found[0] == "let " or before == "const " else "const "
        return before

    return re.sub(r"^(?:const|let) ", kind, text, flags=re.M)


FIELD, SAME = 'data-field="', "~"  # where a field's name stands first, and what stands for it in its field


def bundled_page(page: str) -> str:
    """A page as it lies in the bundle: inside a field a sign stands for the field's name, for 5 kB of a first visit.
    `webui/js/engine/bundle.js` puts the names back.

    >>> bundled_page('<p data-field="a.b"><label for="field-a.b">A</label><input name="a.b_is">')
    '<p data-field="a.b"><label for="field-~">A</label><input name="~_is">'
    """
    assert SAME not in page
    before, *fields = page.split(FIELD)
    for place, field in enumerate(fields):
        name = field[:field.index('"')]
        fields[place] = name + re.sub(rf'(?<![\w.]){re.escape(name)}(?=["_.])', SAME, field[len(name):])
    return FIELD.join([before, *fields])


def lean_page(text: str) -> str:
    """A page whose blanks and new lines are one blank each. No page has text in which more of them mean something.

    >>> lean_page("<p>\\n\\n  a&nbsp;\\u00a0 b\\n</p>\\n")
    '<p> a&nbsp;\\xa0 b </p> '
    """
    return re.sub(r"[ \t\r\n]+", " ", text)


def lean_style(text: str) -> str:
    """Our style sheets without comments, indentation and blank lines; they quote no comment sign.

    >>> lean_style("/* why */\\na {\\n  color: red; /* x */\\n}\\n")
    'a {\\ncolor: red;\\n}\\n'
    """
    lines = (line.strip() for line in re.sub(r"/\*.*?\*/", "", text, flags=re.S).splitlines())
    return "".join(line + "\n" for line in lines if line)


def unquoted(found: re.Match[str]) -> str:
    """A name in quotes without them.

    >>> re.sub(r'="(b)"\\]|\\("(#c)"\\)', unquoted, '[a="b"] ("#c")')
    '[a=b] (#c)'
    """
    return f"={found[1]}]" if found[1] else f"({found[2]})"


def tight_style(text: str) -> str:
    """Flat style sheets without blanks and quotes that mean nothing. An empty value keeps its own: older browsers read
    no property without one.

    >>> tight_style("a, b {\\n--dark: ;\\ncolor: red;\\n}\\n")
    'a,b{--dark: ;color:red}'
    >>> tight_style('a::before { content: "x, { y > z"; inset: calc(1px + 2px) 0; }')
    'a::before{content:"x, { y > z";inset:calc(1px + 2px) 0}'
    >>> tight_style('a[data-b="c"] > d ~ e[f=""] { fill: url("#g"); }')
    'a[data-b=c]>d~e[f=""]{fill:url(#g)}'
    """
    found = re.split(r'("[^"]*")', re.sub(r'="([a-z][\w-]*)"\]|\("(#[\w-]+)"\)', unquoted, text))
    for place in range(0, len(found), 2):
        plain = re.sub(r"\s+", " ", found[place])
        plain = re.sub(r" ?([{};,>~]) ?", r"\1", plain.replace(": ;", ":\0;"))
        found[place] = re.sub(r": (?=\S|$)", ":", plain).replace("\0", " ")
    return "".join(found).replace(";}", "}").strip()


def value_names(style: str, said: Collection[str] = ()) -> dict[str, str]:
    """A short name for each value of a style sheet's own, the most used first. said: those that scripts say

    >>> value_names("a { --paper: red; --ink: blue; --cut: 0; color: var(--ink) }", {"--cut"})
    {'--ink': '--a', '--paper': '--b'}
    """
    count = Counter(VALUE.findall(style))
    letters = (itertools.product(string.ascii_lowercase, repeat=length) for length in (1, 2))
    free = (f"--{''.join(one)}" for one in itertools.chain.from_iterable(letters) if f"--{''.join(one)}" not in count)
    return {name: next(free) for name in sorted(count, key=lambda one: (-count[one], one)) if name not in said}


def with_value_names(style: str, names: dict[str, str]) -> str:
    """The same style sheet with other names for its own values.

    >>> with_value_names("a{--ink:red;color:var(--ink)}", {"--ink": "--a"})
    'a{--a:red;color:var(--a)}'
    """
    return VALUE.sub(lambda found: names.get(found[0], found[0]), style)
