"""`python tests/held_figures.py`: writes anew what the drawings are held to, once they were looked at."""
import hashlib
import json
from pathlib import Path

from covemix.shared.catalogue.pictograms import SHAPES
from covemix.shared.door import moves
from covemix.shared.forms import links

TABLE = Path(__file__).with_name("held_figures.json")
JOINT = {"default": [], "butt": [("kind", "butt")], "outside": [("kind", "outside")],
         "bulkhead": [("kind", "bulkhead")], "bulkhead aslant": [("kind", "bulkhead"), ("angle", "70")],
         "bulkhead, narrow tape": [("kind", "bulkhead"), ("layers.0.width", "20"), ("layers.0.weight", "200")],
         "both": [("kind", "both"), ("angle", "70")], "wide": [("kind", "inside"), ("angle", "140")],
         "two angles": [("angle_is", "stations"), ("stations.0.at", "0"), ("stations.0.angle", "60"),
                        ("stations.1.at", "2"), ("stations.1.angle", "110")], "gap": [("kind", "inside"), ("gap", "3")],
         "rounded": [("kind", "outside"), ("round_over", "4")],
         "three layers": [(f"layers.{place}.width", f"{100 - 20 * place}") for place in range(3)],
         "inches": [("units", "us"), ("thickness", "1/4 in")]}
ASKED = {
    **{f"joint, {name}": ("joint", pairs) for name, pairs in JOINT.items()},
    "spreader": ("spreader", [("boat.0.angles", "60 : 100")]),
    "heat": ("heat", [("air", "22"), ("batch", "400")]),
    "heat, a tray": ("heat", [("air", "30"), ("container", "tray")]),
    "heat, a label": ("heat", [("air", "15"), ("batch", "900"), ("system.pot_time", "20"), ("system.pot_mass", "150")]),
    "heat, as hot as it gets": ("heat", [("air", "35"), ("batch", "3000")]),
    "heat, cold": ("heat", [("air", "5"), ("batch", "60")]), "trial": ("trial", []),
    "cure": ("cure", [("air", "18"), ("mixed", "9:00")]), "dew": ("dew", [("air", "18"), ("humidity", "80")]),
    "boat": ("boat", []), "plan": ("plan", []),
    **{f"surface, {work}": (move, [("work", work)]) for move, work in (
        ("coats", "coat"), ("sheathing", "sheathe"), ("fairing", "fair"), ("gluing", "scarf"), ("gluing", "laminate"),
        ("gluing", "gap"), ("fillets", "fillet"))},
    "measure": ("measure", []), "rescue": ("rescue", [("rescue", "yes")]), "safety": ("safety", []), "air": ("air", []),
}


def _hash(told):
    return hashlib.sha256(json.dumps(told, sort_keys=True, ensure_ascii=False).encode()).hexdigest()[:16]


def drawn():
    """{what is asked, figure: a hash of all that is drawn and told}."""
    found = {}
    for name, (move, pairs) in ASKED.items():
        answer = moves.answer(move, links.tree(pairs))
        for figure in answer["figures"]:
            found[f"{name}: {figure['name']}"] = _hash(figure)
    return found | {f"sign: {key}": _hash(shapes) for key, shapes in SHAPES}


if __name__ == "__main__":
    TABLE.write_text(json.dumps(drawn(), indent=0) + "\n", encoding="utf-8")
