"""Scripts that always come together travel as one: a third fewer bytes, and no header for each."""
import posixpath
import re
from collections.abc import Collection, Mapping

FROM = r'''\{([^}]*)\}\s*from\s*["'](\.[^"']+)["'];?'''
IMPORT = re.compile(rf"^import\s*{FROM}$", re.M)
AGAIN = re.compile(rf"^export\s*{FROM}$", re.M)  # names of another script, handed on
NAMES = re.compile(r"^export\s*\{([^}]*)\};?$", re.M)
DEFAULT = re.compile(r"^export default [A-Za-z_]\w*;$", re.M)  # of a library, which nothing here takes by it
MADE = re.compile(r"^export\s+((?:const|class|function|async function)\s+(\w+))", re.M)
# an import that a script cannot start without, of any form
NOW = re.compile(r'''^(?:import|export) (?:[^;"']*from )?["'](\.[^"']+)["']''', re.M)
UNREAD = re.compile(r"^(?:import|export)\b(?!\s*\().*$", re.M)
WHEN_ASKED = re.compile(r'\bimport\("(\.[^"]+)"\)')
HERE = "import.meta.url"


def one_script(texts: Mapping[str, str], entrance: str, paths: Collection[str]) -> str:
    """These scripts as one, which stands at the entrance's path.

    Each keeps a scope of its own, a function that runs once and returns what it exports; what it imports has run before
    it. Whoever is not in it imports a script of it as one value, by `name_of` its path (`through`).

    texts: every script by its path from `webui/`, lean
    entrance: what needs all others; runs last, and what it exports is exported too
    paths: which of them come together
    Raises ValueError where two need each other, or where a script's import or export is of no form that is known here.

    >>> print(one_script({"js/a.js": 'import { b } from "./c/b.js";\\nb();\\n', "js/c/b.js": "export const b = 1;\\n"},
    ...                  "js/a.js", ["js/a.js", "js/c/b.js"]), end="")
    export const c_b = (() => {
    const b = 1;
    return { b };
    })();
    const { b } = c_b;
    b();
    """
    done: dict[str, str] = {}
    opened: list[str] = []

    def lay(path: str) -> None:
        if path in done:
            return
        if path in opened:
            raise ValueError(f"{' needs '.join([*opened, path])}")
        opened.append(path)
        text = texts[path]
        for other in needs(text, path):
            if other in paths:
                lay(other)
        opened.pop()
        if path == entrance:
            done[path] = _moved(_known(_taken(text, path, paths), path), path, entrance)
        else:
            done[path] = _closed(text, path, paths, entrance)

    for path in [*(path for path in paths if path != entrance), entrance]:
        lay(path)
    return "".join(done.values())


def through(text: str, path: str, one: str, paths: Collection[str]) -> str:
    """A script outside, importing what stands in the one by its names there.

    >>> through('import { b } from "../c/b.js";\\nb();\\n', "js/d/e.js", "js/a.js", ["js/a.js", "js/c/b.js"])
    'import { c_b } from "../a.js";\\nconst { b } = c_b;\\nb();\\n'
    """
    near = _relative(one, path)
    wanted = [found for found in needs(text, path) if found in paths]
    if not wanted:
        return text
    names = ", ".join(dict.fromkeys(name_of(found) for found in wanted))
    return f'import {{ {names} }} from "{near}";\n' + _taken(text, path, paths)


def needs(text: str, path: str) -> list[str]:
    """The paths of what a script imports before it starts; not of what it imports when it is asked for.

    >>> needs('import { a } from "../b.js";\\nc(() => import("./d.js"));\\nexport { e } from "./f.js";\\n', "js/g/h.js")
    ['js/b.js', 'js/g/f.js']
    """
    return [_joined(path, near) for near in NOW.findall(text)]


def name_of(path: str) -> str:
    """What a script of the one is exported as.

    >>> name_of("js/form/units.js"), name_of("vendor/idb/index.js"), name_of("js/navigation.js")
    ('form_units', 'vendor_idb_index', 'navigation')
    """
    return re.sub(r"\W", "_", path.removeprefix("js/").rpartition(".")[0])


def _joined(path: str, near: str) -> str:
    return posixpath.normpath(posixpath.join(posixpath.dirname(path), near))


def _relative(to: str, path: str) -> str:
    near = posixpath.relpath(to, posixpath.dirname(path))
    return near if near.startswith(".") else "./" + near


def _renamed(names: str) -> list[tuple[str, str]]:
    """(name there, name here) of each; the same where nothing is said."""
    found = [one.strip().partition(" as ") for one in names.split(",") if one.strip()]
    return [(old, new or old) for old, _, new in found]


def _taken(text: str, path: str, paths: Collection[str]) -> str:
    """With what is imported from the others taken out of their objects."""
    def take(found: re.Match) -> str:
        other = _joined(path, found[2])
        names = ", ".join(old if old == new else f"{old}: {new}" for old, new in _renamed(found[1]))
        return f"const {{ {names} }} = {name_of(other)};" if other in paths else found[0]

    return IMPORT.sub(take, text)


def _moved(text: str, path: str, entrance: str) -> str:
    """What it fetches by a path from where it stands is fetched by one from where the whole stands."""
    if posixpath.dirname(path) != posixpath.dirname(entrance):
        text = text.replace(HERE, f'new URL("{_relative(path, entrance)}", {HERE})')
    return WHEN_ASKED.sub(lambda found: f'import("{_relative(_joined(path, found[1]), entrance)}")', text)


def _closed(text: str, path: str, paths: Collection[str], entrance: str) -> str:
    handed = [f"{new}: {name_of(_joined(path, near))}.{old}" for names, near in AGAIN.findall(text)
              for old, new in _renamed(names)]
    handed += (f"{new}: {old}" for names in NAMES.findall(text) for old, new in _renamed(names))
    handed += (name for _, name in MADE.findall(text))
    body = MADE.sub(r"\1", _known(DEFAULT.sub("", AGAIN.sub("", NAMES.sub("", _taken(text, path, paths)))), path))
    body = _moved(body, path, entrance).strip("\n")
    returned = f"return {{ {', '.join(handed)} }};\n" if handed else ""
    return f"export const {name_of(path)} = (() => {{\n{body}\n{returned}}})();\n"


def _known(body: str, path: str) -> str:
    if left := UNREAD.search(MADE.sub(r"\1", body)):
        raise ValueError(f"{path}: {left[0]}")
    return body
