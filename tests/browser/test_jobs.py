"""Five people's jobs from the first open to the answer, each tap and each key counted: docs/JOBS.md says how many, and
more of either is a step back."""
import re
from pathlib import Path

import pytest
from playwright.sync_api import expect

from .conftest import POT, figure, fresh

PAGE = Path(__file__).parents[2] / "docs" / "JOBS.md"
TOLD = {job: (int(taps), int(keys)) for job, taps, keys in
        re.findall(r"^\| ([^|]+?) \| (\d+) \| (\d+) \|", PAGE.read_text(encoding="utf-8"), re.MULTILINE)}
REST = 750  # ms, a little more than a shaking glove is kept out


class Hand:
    """What a person does, counted. A choice out of a list is two taps: the list, and the row."""

    def __init__(self, page):
        self.page, self.taps, self.keys = page, 0, 0

    def tap(self, locator):
        locator.click()
        self.taps += 1

    def press(self, name):
        self.tap(self.page.get_by_role("button", name=name))

    def type(self, field, text):
        """A tap into the field, what stands there goes at the first key, and the keys."""
        self.tap(field)
        field.press("ControlOrMeta+a")
        self.page.keyboard.type(text)
        self.keys += len(text)

    def choose(self, field, label):
        field.select_option(label=label)
        self.taps += 2

    def step(self):
        """The next step of the view of the steps, or its clock."""
        tap = self.page.locator("[data-steps=tap]")
        before = tap.inner_text()
        self.tap(tap)
        expect(tap).not_to_have_text(before, use_inner_text=True)
        self.page.clock.run_for(REST)

    def steps_to(self, part):
        for _ in range(40):
            if self.at("part").inner_text() == part:
                return
            self.step()
        raise AssertionError(f"{part} never came")

    def at(self, name):
        return self.page.locator(f"[data-steps={name}]")

    def did(self, job):
        taps, keys = TOLD[job]
        assert self.taps <= taps and self.keys <= keys, (self.taps, self.keys)


@pytest.fixture
def hand(chromium, standing):
    """Of somebody whose phone never was here."""
    with fresh(chromium, been=False) as (page, _):
        page.clock.install()
        page.goto(standing.url)
        expect(page.locator("[data-status]")).not_to_be_empty()  # the engine has started
        yield Hand(page)


def test_a_first_pour(hand):
    """180 g of the built-in example, measured, stirred and told done."""
    hand.press("Measure a mix")
    hand.type(hand.page.get_by_label("Amount", exact=True), "180")
    hand.press("Pour step by step")
    expect(hand.at("step")).to_contain_text("Step 1 of")
    hand.steps_to("Done")
    hand.did("First pour")


def test_a_seam_from_nothing_to_peel_ply_with_one_slip_of_the_hand(hand):
    """2.4 m. The slip: a glove taps one step too far, and goes back."""
    hand.tap(hand.page.get_by_role("link", name="Do a seam"))
    hand.type(hand.page.get_by_label("Seam length"), "2.4")
    hand.tap(hand.page.get_by_role("link", name="Do this seam, step by step"))
    hand.type(hand.page.get_by_label("Wood and air temperature"), "18")
    expect(figure(hand.page, "batches")).to_have_text(re.compile(r"\d+ batch"))
    hand.press("Next batch, step by step")
    expect(hand.at("step")).to_contain_text("Step 1 of")
    hand.steps_to("Place the putty")
    hand.step()
    hand.tap(hand.at("undo"))
    expect(hand.at("part")).to_have_text("Place the putty")
    hand.page.clock.run_for(REST)
    hand.steps_to("Lay the peel ply")
    hand.step()
    hand.did("A seam of 2.4 m to its peel ply, with one slip")


def test_seven_strokes_for_six(hand):
    """Two pumps, 10 mL a stroke, 2 : 1: one stroke of resin too many is told, and mended in strokes."""
    page = hand.page
    page.goto(page.url + "?system.by_volume=2:1&way=pumps&pumps.strokes=10:10&amount=90%20mL")
    hand.press("Use these")
    hand.press("Pour step by step")
    expect(hand.at("figure")).to_have_text(re.compile(r"6\sstrokes"))
    hand.type(hand.at("actual"), "7")
    hand.at("actual").press("Enter")
    hand.keys += 1
    expect(hand.at("figure")).to_have_text(re.compile(r"1\sstroke"))
    hand.page.clock.run_for(REST)
    hand.steps_to("Hardener")
    hand.did("7 strokes for 6, brought back into ratio")


SIX = (("Keel", "3.05"), ("Port chine", "2.9"), ("Stbd chine", "2.9"), ("Stem", "0.6"), ("Transom", "1.1"),
       ("Sheer", "3"))


def test_six_joints_to_a_shopping_list(hand):
    page = hand.page
    hand.tap(page.get_by_role("link", name="Plan a boat"))
    expect(page.locator("main.screen-boat")).to_be_visible()
    hand.press("Empty the boat")
    for place, (name, length) in enumerate(SIX):
        hand.press("Joint: one more")
        hand.type(page.locator(f"[name='joints.{place}.name']"), name)
        hand.type(page.locator(f"[name='joints.{place}.length']"), length)
    expect(page.locator("[data-group=joints] [data-row]")).to_have_count(6)
    bought = page.locator("details", has=page.locator("summary", has_text="Shopping list"))
    hand.tap(bought.locator("summary"))
    expect(bought.locator(".line").first).to_be_visible()
    hand.did("Six joints to a shopping list")


def test_eyes_splashed_while_a_pot_runs(hand):
    hand.press("Measure a mix")
    hand.page.evaluate(POT)
    hand.press("Pour step by step")
    expect(hand.at("step")).to_contain_text("Step 1 of")
    hand.taps = 0  # from the splash on
    hand.tap(hand.at("aid"))
    eyes = hand.page.locator("[data-line=aid_eyes]")
    expect(hand.page.locator("main.screen-safety")).to_be_visible()
    expect(eyes).to_be_in_viewport(ratio=1)
    expect(eyes).to_contain_text("Rinse cautiously with water")
    hand.did("Eyes splashed while a pot runs, to the first words")
