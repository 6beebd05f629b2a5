"""The library: SI in, named SI out, the same figures as the API, and nothing taken that it does not know."""
import json
import math
import subprocess
import sys
from pathlib import Path
from xml.etree import ElementTree

import house
import matplotlib
import numpy
import pytest
from covemix import library
from covemix.library import Refused, Seam, System, Tape
from covemix.server.data_names import NAMES
from starlette.testclient import TestClient

NOTEBOOK = Path(__file__).parent.parent / "docs" / "library.ipynb"
LABEL = System(by_weight=(100, 30), densities=(1120, 980), pot_time=1740, pot_mass=0.1, pot_temperature=298.15)
API_LABEL = {"by_weight": [100, 30], "densities": "1120 : 980 kg/m3", "pot_time": "29 min", "pot_mass": "100 g",
             "pot_temperature": "25 °C"}


def api(move, **body):
    response = TestClient(house.app()).post(f"/api/{move}", json=body)
    assert response.status_code == 200, response.text
    return response.json()["data"]


def flat(found):
    """Every number of a result, by its place."""
    if isinstance(found, dict):
        return [one for key in sorted(found) for one in flat(found[key])]
    if isinstance(found, list):
        return [one for each in found for one in flat(each)]
    return [float(found)] if isinstance(found, (int, float)) else [found]


def alike(result, told):
    assert list(result) == list(told)
    mine, theirs = flat(dict(result)), flat(told)
    assert len(mine) == len(theirs) > 0
    for one, other in zip(mine, theirs, strict=True):
        assert one == (pytest.approx(other, rel=1e-9, abs=1e-12) if isinstance(other, float) else other)


def test_each_call_tells_what_the_api_tells_of_the_same_figures():
    alike(library.mix(LABEL, mass=0.13), api("ratio", system=API_LABEL, amount="130 g"))
    alike(library.measure(LABEL, way="scale", mass=0.3), api("measure", system=API_LABEL, way="scale", amount="300 g"))
    alike(library.pot(LABEL, mass=0.24, air=298.15), api("heat", system=API_LABEL, batch="240 g", air="25 °C"))
    alike(library.cure(System(id="3-1"), air=291.15), api("cure", system="3-1", air="18 °C"))
    alike(library.dew(air=291.15, humidity=0.7, surface=287.15), api("dew", air="18 °C", humidity="70 %",
                                                                     surface="14 °C"))
    alike(library.joint(thickness=0.006, angle=math.radians(110), length=2.4, layers=[
        Tape(width=0.05, areal_weight=0.2)]), api("joint", thickness="6 mm", angle="110°", length="2.4 m", layers=[
            {"width": "50 mm", "weight": "200 g/m2"}]))
    seam = Seam(name="Keel", thickness=0.006, length=3.0, angle=(2.0, 2.4), kind="both", copies=2,
                layers=(Tape(width=0.075, areal_weight=0.3),))
    angles = " : ".join(str(math.degrees(one)) for one in (2.0, 2.4))
    alike(library.boat([seam], system=LABEL, people=2), api("boat", people=2, system=API_LABEL, joints=[
        {"name": "Keel", "kind": "both", "thickness": "6 mm", "length": "3 m", "angle": f"{angles} deg", "copies": 2,
         "gap": "0 mm", "layers": 1, "width": "75 mm", "weight": "300 g/m2"}]))


@pytest.mark.parametrize("call", [
    lambda: library.mix(LABEL, grams=130), lambda: library.pot(LABEL, mass=0.24, temperature=298.15),
    lambda: System(ratio="3:1"), lambda: Seam(name="Keel", thickness=0.006, lenght=3.0),
    lambda: library.joint(0.006, 1.9, 2.4), lambda: library.dew(air=291.15),
])
def test_an_unknown_keyword_is_a_type_error(call):
    with pytest.raises(TypeError):
        call()


@pytest.mark.parametrize(("call", "name"), [
    (lambda: library.pot(LABEL, mass=0.24, air=25), "air_K"),  # degrees Celsius would be near absolute zero
    (lambda: library.pot(LABEL, mass=240, air=298.15), "batch_kg"),
    (lambda: library.joint(thickness=6, angle=1.9, length=2.4), "thickness_m"),
    (lambda: library.joint(thickness=0.006, angle=110, length=2.4), "angle_deg"),
    (lambda: library.pot(LABEL, mass=0.24, air=298.15, container="bucket"), "container"),
])
def test_a_figure_in_another_unit_is_refused_at_its_name(call, name):
    with pytest.raises(Refused) as refused:
        call()
    assert name in refused.value.errors and refused.value.errors[name] in str(refused.value)


def test_numbers_of_numpy_go_in_and_columns_come_out():
    batch = library.mix(LABEL, mass=numpy.float32(0.25))
    assert sum(batch.column("parts", "mass")) == pytest.approx(0.25)
    pot = library.pot(LABEL, mass=numpy.float64(0.24), air=numpy.int64(298))
    times, temperatures = (numpy.array(pot.column("curve", name)) for name in ("time", "temperature"))
    assert (numpy.diff(times) > 0).all() and temperatures[0] == 298
    assert pot["usable_time"] == pot.usable_time and "usable_time" in dir(pot)
    with pytest.raises(AttributeError, match="usable_time"):
        _ = pot.usable_minutes


def test_every_name_has_its_meaning_and_every_drawing_is_a_picture():
    assert all(library.meaning(name) == NAMES[name] for name in NAMES)
    drawings = library.joint(thickness=0.006, angle=1.9, length=2.4).drawings()
    assert list(drawings) == ["section"]
    assert ElementTree.fromstring(drawings["section"]).tag == "{http://www.w3.org/2000/svg}svg"


def test_it_needs_no_server_and_is_typed():
    """Neither FastAPI nor any other of the server's packages is imported for it."""
    ask = ("import sys; from covemix import library; library.mix(library.System(id='3-1'), volume=1e-4);"
           "print([name for name in ('fastapi', 'starlette', 'pydantic', 'jinja2', 'uvicorn') if name in sys.modules])")
    done = subprocess.run([sys.executable, "-c", ask], capture_output=True, text=True, check=True)
    assert done.stdout.strip() == "[]"
    assert (Path(library.__file__).parent / "py.typed").exists()


def test_the_notebook_runs_and_shows_what_it_says(monkeypatch, capsys):
    matplotlib.use("Agg")
    names: dict = {}
    for cell in json.loads(NOTEBOOK.read_text(encoding="utf-8"))["cells"]:
        if cell["cell_type"] == "code":
            exec(compile("".join(cell["source"]), str(NOTEBOOK), "exec"), names)
    minutes = names["minutes"]
    assert (numpy.diff(minutes, axis=0) < 0).all(), "warmer air, fewer minutes"
    assert (numpy.diff(minutes, axis=1) < 0).all(), "more mass, fewer minutes"
    assert (numpy.diff(names["radii"]) > 0).all(), "a flatter corner, a larger radius"
    assert "part_a" in capsys.readouterr().out
    names["plt"].close("all")
