"""The spreader on paper in the other engines, measured in the PDF that each prints."""
import os
import subprocess
from pathlib import Path

import pymupdf
import pytest
from browser.serve import Server
from waits import LONG

from .driver import Firefox, WebKit

MM = 25.4 / 72  # of a point of the PDF
PYTHON = "/usr/bin/python3"  # Debian's own, which its GObject belongs to
GTK_PRINT = Path(__file__).parent / "gtk_print.py"
GTK = "import gi; gi.require_version('Gtk', '3.0'); gi.require_version('WebKit2', '4.1')"
RADII = "radii=10:60"


def measured(path) -> tuple[float, list[float]]:
    """The bar, and how wide each template is, on the sheet that they are on [mm]."""
    with pymupdf.open(path) as sheets:
        found = [(each["rect"].width * MM, each["rect"].height * MM, len(each["items"]))
                 for sheet in sheets for each in sheet.get_drawings() if each["type"] == "s"]
    return (next(wide for wide, high, _ in found if high < 1 and wide > 40),
            [wide for wide, high, strokes in found if strokes > 20 and high > 40])


def test_firefox_prints_at_true_size(standing, tmp_path):
    engine = Firefox()
    try:
        engine.go(f"{standing.url}/spreader/?{RADII}")
        engine.sees("[data-figure=template_a4]")
        engine.printed(tmp_path / "sheet.pdf")
        bar, wide = measured(tmp_path / "sheet.pdf")
        assert bar == pytest.approx(100, rel=0.005)
        assert wide == pytest.approx([20, 120], rel=0.005)
        with pymupdf.open(tmp_path / "sheet.pdf") as sheets:
            assert len(sheets) == 1  # it lays the page out anew, and no container query holds for the first of that
    finally:
        engine.quit()


@pytest.fixture(scope="module")
def standing():
    server = Server().start()
    yield server
    server.stop()


@pytest.fixture(scope="module")
def webkit():
    """Its screen and its folder: WebKitGTK prints by its dialog's way, not by its driver."""
    if not Path(PYTHON).exists() or subprocess.run([PYTHON, "-c", GTK], capture_output=True).returncode:
        pytest.skip("python3-gi with gir1.2-webkit2-4.1 is not installed here")
    engine = WebKit()
    yield engine
    engine.quit()


@pytest.mark.parametrize("margin", [0, 6.4, 10, 25])
def test_webkit_prints_at_true_size_whatever_margin_its_dialog_sets(webkit, standing, tmp_path, margin):
    path = tmp_path / "sheet.pdf"
    subprocess.run([PYTHON, GTK_PRINT, f"{standing.url}/spreader/?{RADII}", path, str(margin)], check=True,
                   timeout=LONG, capture_output=True, env={**os.environ, **webkit.more, "HOME": webkit.room.name})
    bar, wide = measured(path)
    assert bar == pytest.approx(100, rel=0.005)
    assert wide[0] == pytest.approx(20, rel=0.005)
