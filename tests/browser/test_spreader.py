"""The spreader's template in a real browser: printed on both papers and measured in the PDF."""
import pymupdf
import pytest
from playwright.sync_api import expect

from .conftest import figure, keep

MM = 25.4 / 72  # of a point of the PDF


def printed(page, path, paper, scale=1):
    """Pages, and the drawings of the first: (width, height, how many strokes) [mm]."""
    page.pdf(path=path, format=paper, scale=scale)
    with pymupdf.open(path) as sheets:
        return len(sheets), [(each["rect"].width * MM, each["rect"].height * MM, len(each["items"]))
                             for each in sheets[0].get_drawings()]


@pytest.mark.parametrize("drawn, paper", [("a4", "A4"), ("letter", "Letter"), ("a4", "Letter"), ("letter", "A4")])
def test_a_template_prints_at_true_size(phone, standing, tmp_path, drawn, paper):
    """A radius and the bar against the paper's own millimetres (ISO 216; 25.4 mm to the inch), within 0.5 %.

    On the wrong paper too: there it may be cut off, it is never shrunk.
    """
    phone.goto(f"{standing.url}/spreader/?radii=10 : 17.5 : 60&paper={drawn}")
    expect(figure(phone, "radius_3")).to_have_text("60 mm")
    expect(phone.locator(f"[data-figure=template_{drawn}]")).to_be_visible()
    sheets, found = printed(phone, tmp_path / "sheet.pdf", paper)
    assert sheets == 1 or drawn != paper.lower()
    bars = [wide for wide, high, _ in found if high < 1 and wide > 50]
    assert bars == [pytest.approx(100, rel=0.005)]
    tips = [wide / 2 for wide, high, strokes in found if strokes > 20 and high > 40]
    assert tips == [pytest.approx(radius, rel=0.005) for radius in (10, 17.5, 60)]
    tall = [high for wide, high, strokes in found if strokes > 20 and high > 40]
    assert tall == [pytest.approx(45 + radius, rel=0.005) for radius in (10, 17.5, 60)]


def test_a_printer_that_makes_it_too_small_is_corrected_by_what_the_bar_measures(phone, standing, tmp_path):
    """It prints at 92 %: what is typed of the first print makes the next one right, and stays for the one behind."""
    phone.goto(standing.url + "/spreader/?radii=10 : 60")
    bar = lambda: next(wide for wide, high, _ in printed(phone, tmp_path / "sheet.pdf", "A4", 0.92)[1]  # noqa: E731
                       if high < 1 and wide > 50)
    assert bar() == pytest.approx(92, rel=0.005)
    phone.goto(standing.url + "/spreader/")
    phone.get_by_label("The bar measures").fill("92 mm")
    expect(phone.locator("[data-line=measure]")).to_contain_text("This print is corrected")
    assert bar() == pytest.approx(100, rel=0.005)
    phone.reload()
    expect(phone.get_by_label("The bar measures")).to_have_value("92 mm")
    expect(phone.locator("[data-line=measure]")).to_contain_text("This print is corrected")
    assert bar() == pytest.approx(100, rel=0.005)


def test_radii_that_no_sheet_takes_are_refused_in_words(phone, standing):
    phone.goto(standing.url + "/spreader/")
    radii = phone.get_by_label("Radius of each spreader")
    radii.fill("95")
    expect(phone.locator("[data-error=radii]")).to_contain_text("do not fit on one sheet")
    expect(radii).to_have_value("95")
    radii.fill("12,5")
    expect(figure(phone, "radius_1")).to_have_text("12.5 mm")


def test_the_template_opens_without_signal(phone, served):
    keep(phone, served.url)
    served.stop()
    phone.goto(served.url + "/spreader/?radii=22")
    expect(figure(phone, "radius_1")).to_have_text("22 mm")
