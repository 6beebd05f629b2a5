"""The site in one language: what is made once, and what becomes of a failure."""
from concurrent.futures import ThreadPoolExecutor

import house
import pytest
from covemix.server.build import File
from covemix.server.site import Site


def test_what_could_not_be_made_is_made_when_it_is_asked_for_again(monkeypatch):
    """As where memory ran out once: no server serves that failure for as long as it runs."""
    left = [MemoryError("once")]

    def bundle(pages):
        if left:
            raise left.pop()
        return File(b"packed", "application/octet-stream")

    build = house.build()
    monkeypatch.setattr(build, "bundle", bundle, raising=False)
    with ThreadPoolExecutor(1) as maker:
        site = Site(build, maker)
        with pytest.raises(MemoryError, match="once"):
            site.bundle()
        made = site.bundle()
        assert made.body == b"packed"
        assert site.bundle() is made
        assert b"const BUILD" in site.worker().body
