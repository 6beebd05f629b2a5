"""What a page sets large of an answer or a step comes in fields: no page and no script cuts a text."""
import re

import cases
import pseudo
import pytest
from covemix.server.build import HOUSE
from covemix.server.models import LineModel, StepModel
from covemix.shared.door import moves
from covemix.shared.words import messages
from covemix.shared.words.languages import LANGUAGES, Reader
from covemix.shared.words.texts import in_two, large
from covemix.shared.words.written import reader
from house import app
from starlette.testclient import TestClient

NAMED = {"system.by_weight": "100:30", "system.parts": "Resin, clear : Hardener, slow"}
GERMAN = Reader({}, LANGUAGES["en"]._replace(decimal=",", to=" bis "), "metric", False)


def large_ones(name, count, language="en"):
    """Each answer and each step of generated questions."""
    for request in cases.requests(name, count):
        if "screen" in request:
            answer = moves.asked(request["screen"], request["pairs"], language=language)
            found = [one for _, one in answer["answers"]]
        else:
            found = [moves.answer(request["move"], request["typed"], language=language)]
        for one in found:
            yield from ((line, line["text"]) for line in one["lines"] if line["rank"] == "answer")
            yield from ((step, step["figure"]) for step in one.get("steps", ()))


@pytest.mark.parametrize("name", [name for name in moves.names() if name not in ("sources", "plan", "boat")])
def test_the_fields_are_the_text_and_nothing_else(name):
    for language in ("en", pseudo.speak()):
        for one, text in large_ones(name, 60, language):
            assert one.get("large", "") + one.get("small", "") == text
            assert one["label"] == one["head"] + (", " + one["how"] if "how" in one else "")
            assert not {"how", "large", "small"} & {key for key, said in one.items() if said == ""}
            if language == "en":
                figure = re.match(r"[-+±]?[\d.:]+(?:%|(?= |$))", text)
                assert one.get("large", "") == (figure[0] if figure else "")


def test_a_figure_has_the_marks_of_its_language():
    """Decimal comma, thousands, a blank that does not break: what stands before the unit is the figure."""
    mass = messages.quantity(0.0125, "g", places=1)
    assert large(mass, GERMAN) == ("12,5", " g")
    assert large(messages.lengths((0.01, 0.0859)), GERMAN) == ("10", " bis 85,9 mm")
    assert large(messages.row([mass, messages.quantity(1.2345, "kg", places=1)], " + "), GERMAN) == (
        "12,5", " g + 1,2 kg")
    assert large(messages.typed("1.234,5\u00a0g"), GERMAN) == ("1.234,5", "\u00a0g")
    assert large(messages.message("{count} Ansätze", count=12), GERMAN) == ("12", " Ansätze")
    assert large(messages.message("etwa {mass}", mass=mass), GERMAN) == ("", "etwa 12,5 g")


def test_a_comma_that_somebody_typed_parts_no_label():
    who = reader()
    name, how = in_two(messages.message("scale-reading", part=messages.typed("Resin, clear")), who)
    assert name == "Resin, clear" and how
    assert in_two(messages.typed("Resin, clear"), who) == ("Resin, clear", "")


def test_a_page_shows_a_name_with_a_comma_whole():
    page = TestClient(app()).get("/", params=NAMED).text
    assert re.findall(r'class="line-part">(.*?)</span>', page)[:2] == ["Resin, clear", "Hardener, slow"]


@pytest.mark.parametrize("path", ["js/answer/lines.js", "js/views/steps.js", "templates/lines.html"])
def test_no_page_cuts_what_is_said(path):
    text = (HOUSE / "webui" / path).read_text(encoding="utf-8")
    assert [cut for cut in ("cut(", "indexOf(\" \")", "indexOf(\", \")") if cut in text] == []


def test_the_api_tells_of_the_fields():
    for model in (LineModel, StepModel):
        assert {"head", "how", "large", "small"} <= model.model_fields.keys()
    line = moves.answer("measure", {"system": {"by_weight": "100:30"}})["lines"]
    LineModel(**next(one for one in line if one["rank"] == "answer"))
