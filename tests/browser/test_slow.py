"""A phone of a sixth of the speed still answers each press of a key. How soon, `make bench` says: a busy machine would
decide here."""
import pytest

from bench.phone import Phone
from bench.presses import BETWEEN, SCREENS, ready, typed

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
