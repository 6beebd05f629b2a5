"""What takes seconds to make of the house is made once for all workers of a run: the same of the same.

A house that differs in a sentence, a figure or a rule of the engine is made anew, and so is all where pytest runs with
one worker only.
"""
import fcntl
import hashlib
import json
import os
from pathlib import Path

from covemix.server import build


def share(folder: Path) -> None:
    """From now on a phone's engine, and what is packed, are looked for in a folder before they are made."""
    folder.mkdir(exist_ok=True)
    loaded, packed = build.as_loaded, build.packed_texts

    def as_loaded(program, scripts):
        made = kept(folder, [*program.items(), scripts], lambda: json.dumps(loaded(program, scripts)).encode())
        return json.loads(made)

    def packed_texts(one, other):
        return kept(folder, [one.hex(), other.hex()], lambda: packed(one, other))

    build.as_loaded, build.packed_texts = as_loaded, packed_texts


def kept(folder: Path, of, make) -> bytes:
    """What was made of this before, or what `make` makes of it now."""
    place = folder / hashlib.sha256(json.dumps(of).encode()).hexdigest()
    with place.with_suffix(".lock").open("w") as turn:
        fcntl.flock(turn, fcntl.LOCK_EX)  # who comes while it is made waits for it
        if not place.exists():
            half = place.with_suffix(f".{os.getpid()}")
            half.write_bytes(make())
            half.rename(place)  # whole or not at all, whatever ends the worker
        return place.read_bytes()
