"""How quick and how light: everything is measured beside something that cannot be quicker, in the same run."""
import sys
from pathlib import Path

sys.path.insert(0, str(Path(__file__).parents[1] / "tests"))  # what the tests share
