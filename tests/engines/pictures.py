"""Pictures of Pour in the other engines: `../.venv/bin/python -m engines.pictures ../docs/pictures`, in `tests`."""
import sys
from pathlib import Path

from browser.serve import Server
from PIL import Image

from .driver import Firefox, WebKit


def main(folder: str) -> None:
    served = Server().start()
    for kind in (Firefox, WebKit):
        engine = kind()
        try:
            engine.go(served.url)
            engine.size(390, 844)
            engine.sees("[data-notice=ready]")
            engine.click("[data-notice=ready] button")
            place = Path(folder) / f"pour-{kind.name.lower()}.png"
            engine.picture(place)
            Image.open(place).convert("RGB").save(place.with_suffix(".webp"), lossless=True, method=6)
            place.unlink()
        finally:
            engine.quit()
    served.stop()


if __name__ == "__main__":
    main(*sys.argv[1:])
