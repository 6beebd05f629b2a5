"""The run of a seam: one step at a time from the wood to the peel ply, with what is left of each window."""
import re

import pytest
from playwright.sync_api import expect

from .conftest import figure

SEAM = ("/plan/?temperature=20&start=9:00&pieces.0.name=Keel&pieces.0.length=2.4&pieces.0.putty=57&pieces.0.wet=39"
        "&scale.id=0.1g&long=whole")


def steps(page, name):
    return page.locator(f"[data-steps={name}]")


@pytest.fixture
def run(phone, standing):
    phone.goto(standing.url + SEAM)
    phone.get_by_role("button", name="Use these").click()
    expect(figure(phone, "batches")).to_have_text(re.compile(r"\d+ batch"))
    phone.get_by_role("button", name="Next batch, step by step").click()
    expect(steps(phone, "step")).to_contain_text("Step 1 of")
    return phone


def test_look(run):
    for at in range(24):
        run.wait_for_timeout(800)
        run.screenshot(path=f"/tmp/w19shots/{at:02d}.png")
        print(at, steps(run, "step").inner_text(), "|", steps(run, "tap").inner_text().replace("\n", " / "))
        steps(run, "tap").click()
