"""A phone of a sixth of the speed still answers each press of a key. How soon, `make bench` says: a busy machine would
decide here."""
import pytest
from covemix.server.build import Build

from bench.phone import BARE, WORKER, Phone, Wire
from bench.presses import BARE_FIELD, BETWEEN, SCREENS, ready, typed

PRESSES = 4


@pytest.mark.parametrize("path, field, output, text", [screen[1:] for screen in SCREENS])
def test_each_key_press_is_answered_at_a_sixth_of_the_speed(chromium, standing, path, field, output, text):
    """All threads of the page stand still for five sixths of the time; each press changes the figure it decides."""
    phone = Phone(chromium, standing.url).open(path)
    phone.page.wait_for_selector(output)  # the first answer is there: from now on a press changes it
    ready(phone, field, output, text)
    with phone.slowed(6):
        took = typed(phone, output, PRESSES, BETWEEN)
    phone.context.close()
    assert len(took) == PRESSES


@pytest.fixture
def floors(served):
    """The app with what the bench holds it against."""
    served.stop()
    return served.start(wrap=Wire().wrapped)


def test_what_the_app_is_held_against_answers_too(chromium, floors):
    """A floor that never starts would keep `make bench` waiting for ever."""
    phone = Phone(chromium, floors.url).open()
    assert phone("begun", BARE) > 0
    assert phone("begun", WORKER) > 0
    for page in ("ratio.html", "echo.html#message", "echo.html#channel"):
        floor = Phone(chromium, f"{floors.url}/v/{Build().id}/bench").open(page)
        ready(floor, *BARE_FIELD)
        assert len(typed(floor, "#b", 2, 0)) == 2
        floor.context.close()
    phone.context.close()
