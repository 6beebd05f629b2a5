"""Keys: each sentence is called by its whole key. A phone has sentences in the places of their keys, so that one which
is joined from pieces is found by a server alone."""
from pathlib import Path

from covemix import shared
from covemix.shared.words import written

HOUSE = Path(shared.__file__).parent.parent
SAYING = [path for room in ("shared", "server", "webui") for path in sorted((HOUSE / room).rglob("*"))
          if path.suffix in (".py", ".html", ".js", ".xml")]


def test_every_sentence_is_called_by_its_whole_key():
    program = "\n".join(path.read_text(encoding="utf-8") for path in SAYING)
    assert [key for key in written.sentences("en") if f'"{key}"' not in program and f"'{key}'" not in program] == []
