"""Pages that stand alone: no file beside them, no script, and shown at any depth of any host."""
import base64
import hashlib
from functools import partial
from typing import Any

from covemix.shared.words.languages import LANGUAGES
from covemix.shared.words.messages import typed
from jinja2 import Environment, FileSystemLoader, select_autoescape
from markupsafe import Markup

from .build import HOUSE
from .pages import t

STYLE = """:root{color-scheme:light dark}
body{max-width:40rem;margin:0 auto;padding:1rem;font:1.0625rem/1.5 system-ui,sans-serif}
h1{font-size:1.5rem}h2{font-size:1.25rem;margin:2rem 0 .5rem}
li{margin:.5rem 0}
.first{border:3px solid;padding:.75rem}
code{font-size:1.125rem;overflow-wrap:anywhere}
a{display:inline-block;min-height:48px;line-height:48px;overflow-wrap:anywhere}
img{max-width:100%}"""
POLICY = ("default-src 'none'; img-src http:; base-uri 'none'; form-action 'none'; frame-ancestors 'none'; style-src "
          f"'sha256-{base64.b64encode(hashlib.sha256(STYLE.encode()).digest()).decode()}'")


def bare(template: str, language: str, **values: Any) -> str:
    """A page of that template in a language."""
    env = Environment(loader=FileSystemLoader(HOUSE / "webui" / "templates"), autoescape=select_autoescape(["html"]),
                      trim_blocks=True, lstrip_blocks=True)
    env.globals.update(t=partial(t, language), as_is=typed, language=language, style=Markup(STYLE))
    return env.get_template(template).render(**values)


def missing(back: str = "") -> str:
    """What a host says where no page is, in each language. back: the app's address, where it is known."""
    told = [{"language": name, "text": t(name, "missing-page"), "back": t(name, "missing-page.back")}
            for name in LANGUAGES]
    return bare("missing.html", next(iter(LANGUAGES)), told=told, back=back)
