"""A slow phone still answers before a hand moves on."""
import pytest

from bench.phone import Phone
from bench.presses import BETWEEN, SCREENS, ready, typed


@pytest.mark.parametrize("path, field, output, text", [screen[1:] for screen in SCREENS])
def test_a_key_press_is_answered_within_200_ms_at_a_sixth_of_the_speed(chromium, standing, path, field, output, text):
    """All threads of the page stand still for five sixths of the time. The quickest of eight counts: a busy machine
    adds to the others."""
    phone = Phone(chromium, standing.url).open(path)
    phone.page.wait_for_selector(output)  # the first answer is there: from now on a press changes it
    ready(phone, field, output, text)
    with phone.slowed(6):
        took = typed(phone, output, 8, BETWEEN)
    phone.context.close()
    assert min(took) < 200
