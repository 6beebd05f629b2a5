"""Kept words: what the kit keeps in a few English words is a key, said in the page's language where it is shown.

Typed in another language they are understood too: see SPELT. The rest of such a text are figures.
"""
from ..catalogue.containers import CONTAINERS

TIMINGS = dict([(row[0], row[1]) for row in CONTAINERS])
TIMINGS.update({"stiffening": "heat-timing.stiffening", "still": "",
                "good": "heat-timing.good", "gone": "heat-timing.gone",
                "filler": "kind-filler", "resin": "part-resin"})
TRIALS = {"thick": "kept-trial.thick", "doubt": "kept-trial.doubt", "mass": "kept-trial.mass",
          "air": "kept-trial.air", "loss": "kept-trial.loss", "heat": "kept-trial.heat", "width": "kept-trial.width",
          "mix": "kept-trial.mix"}
RATES = {"place": "pace-place", "tool": "pace-tool", "clean": "pace-clean", "wet": "pace-wet", "lay": "pace-lay",
         "roll": "pace-roll", "peel": "pace-peel", "to": "kept-rate.to", "from": "kept-rate.from"}

# own timings as they may be typed in German
SPELT = {"anziehend": "stiffening", "gut": "good", "fest": "gone", "becher": "cup", "beutel": "bag",
         "spritzbeutel": "bag", "schale": "tray", "hohlkehle": "bead", "rolle": "roll", "füllstoff": "filler",
         "harz": "resin", "noch": "still", "nach": "after", "im": "in", "bei": "at", "mit": "with", "von": "of",
         "sonne": "sun", "der": "the"}
