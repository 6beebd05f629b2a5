"""First aid in one tap, without signal, from two screens; own numbers are there to be tapped."""
import pytest
from playwright.sync_api import expect

from .conftest import keep


@pytest.mark.parametrize("path", ["", "clock/"])
def test_first_aid_is_the_first_thing_one_tap_away_without_signal(phone, served, path):
    phone.set_viewport_size({"width": 360, "height": 740})
    keep(phone, f"{served.url}/{path}")
    served.stop()
    phone.get_by_role("link", name="Safety", exact=True).click()
    eyes = phone.locator("[data-line=aid_eyes]")
    expect(eyes).to_be_in_viewport(ratio=1)
    expect(eyes).to_contain_text("Rinse cautiously with water")
    expect(phone.locator("[data-line=no_calls]")).to_have_count(1)
    phone.get_by_text("A pot that smokes or burns", exact=True).click()  # its steps, in sight without a scroll
    first, second = (phone.locator(f"[data-line=hot_{key}]") for key in ("out", "carry"))
    expect(second).to_be_in_viewport(ratio=1)
    assert first.bounding_box()["y"] < second.bounding_box()["y"] < eyes.bounding_box()["y"]
    top = phone.evaluate("document.querySelector('.aid').getBoundingClientRect().top - "
                         "document.querySelector('[data-form]').querySelector('*').getBoundingClientRect().top")
    assert top < 0


def test_own_numbers_of_the_kit_are_tapped_on_safety_without_signal(phone, served):
    keep(phone, served.url + "/kit/")
    served.stop()
    phone.locator("[data-add=numbers]").click()
    expect(phone.locator("[name='numbers.name']")).to_be_focused()
    for name, text in {"name": "Yard", "ambulance": "112", "poison": "+48 (0)22 619-66-54"}.items():
        phone.locator(f"[name='numbers.{name}']").fill(text)
    phone.get_by_role("button", name="Save", exact=True).click()
    expect(phone.locator("[data-shelf=numbers] .entry")).to_contain_text("Yard")
    phone.get_by_role("link", name="Safety", exact=True).click()
    calls = phone.locator("a.call")
    expect(calls).to_have_count(2)
    assert [calls.nth(place).get_attribute("href") for place in (0, 1)] == ["tel:112", "tel:+48226196654"]
    assert all(calls.nth(place).bounding_box()["height"] >= 56 for place in (0, 1))
