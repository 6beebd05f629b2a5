"""A recalled build says so before anything else, with the way out, also while a pot runs and without signal."""
import json
import re

import pytest
from house import build
from playwright.sync_api import expect

from .conftest import keep
from .serve import instead
from .test_clock import ADD, pot_of

WRONG, CHECK = "It told strokes that were wrong.", "Check the ratio."
BUILD = "document.documentElement.dataset.build"


def listing(*builds, first=900, last=900):
    """The server's list, which recalls these builds."""
    rows = [{"first": first, "last": last, "builds": list(builds), "wrong": WRONG, "check": CHECK}]
    body = json.dumps({"release": 901, "recalled": rows}).encode()
    return instead(("recalled.json",), "application/json", body)


def test_a_phone_that_meets_the_list_says_so_first_and_updates_though_a_pot_runs(phone, served, other_build):
    keep(phone, served.url + "/clock/")
    phone.evaluate(ADD, pot_of(30, 0))
    expect(phone.locator(".pot-minutes")).to_be_visible()
    before = phone.evaluate(BUILD)
    served.stop()
    served.start(other_build, wrap=listing(build().id))
    phone.reload()
    told = phone.locator("[data-notice=recalled]")
    expect(told).to_contain_text(f"This version of Covemix is recalled. {WRONG} {CHECK}")
    assert phone.locator("[data-notices] > *").first.get_attribute("data-notice") == "recalled"
    phone.get_by_role("link", name="Joint", exact=True).click()  # once, and not on every screen again
    expect(told).to_have_count(1)
    told.get_by_role("button", name="Update now").click()
    phone.wait_for_function("(before) => document.documentElement.dataset.build !== before", arg=before)
    phone.goto(served.url + "/clock/")
    expect(phone.locator(".pot-minutes")).to_have_text(re.compile("^(30:00|2[0-9]:)"))
    expect(told).to_have_count(0)


def test_without_signal_the_last_known_list_counts_and_an_alarm_still_comes_first(phone, served):
    keep(phone, served.url + "/clock/")
    served.stop()
    served.start(wrap=listing(build().id))
    phone.reload()
    told = phone.locator("[data-notice=recalled]")
    expect(told).to_be_visible()
    told.get_by_role("button", name="Update now").click()
    expect(told).to_contain_text("There is no update yet")
    served.stop()
    phone.reload()
    expect(told).to_be_visible()
    told.get_by_role("button", name="Update now").click()
    expect(told).to_contain_text("Try again with a connection")
    phone.evaluate(ADD, pot_of(10, 605))
    expect(phone.locator("[data-kind=ring]")).to_be_visible()
    phone.locator("[data-kind=ring]").get_by_role("button", name="Close").click()
    expect(told).to_be_visible()


@pytest.mark.parametrize("wrap", [listing("another"), instead(("recalled.json",), "text/html", b"<p>Sign in")])
def test_a_list_of_others_or_a_page_of_somebody_elses_says_nothing(phone, served, wrap):
    served.stop()
    served.start(wrap=wrap)
    with phone.expect_response(re.compile("recalled.json")):
        phone.goto(served.url)
    expect(phone.locator("[data-status]")).not_to_be_empty()
    expect(phone.locator("[data-notice=recalled]")).to_have_count(0)


def test_a_release_is_recalled_as_a_whole(phone, served):
    served.stop()
    served.start(wrap=listing(first=1, last=900))
    phone.goto(served.url)
    expect(phone.locator("[data-notice=recalled]")).to_contain_text(WRONG)


def test_an_old_link_says_what_to_check(phone, standing):
    """As release 1 sealed "amount=200": its mark worked out by hand, letter by letter."""
    total = 7
    for letter in "amount=200&":
        total = (total * 31 + ord(letter)) % 46649
    letters = "0123456789abcdefghijklmnopqrstuvwxyz"
    end = letters[total // 1296] + letters[total // 36 % 36] + letters[total % 36]
    phone.goto(f"{standing.url}/?v=1&amount=200&end={end}")
    expect(phone.locator("[data-notice=link]")).to_contain_text("Made with a Covemix before release 2")
    expect(phone.get_by_label("Amount", exact=True)).to_have_value("200")
