"""What is sent packed comes out again as it was, by the library that packed it; a phone's own unpacker has its test in
`browser/test_unpack.py`."""
import brotli
import house
import pytest
from awkward import PACKED
from covemix.server import packed
from covemix.server.build import RUNTIME, Build
from covemix.server.pages import Pages
from covemix.shared.words.languages import LANGUAGES
from hypothesis import given
from hypothesis import strategies as some
from unpack import unpacked

BUILD = house.build()


@pytest.mark.parametrize("name", PACKED)
def test_what_is_hard_to_pack_comes_out_again(name):
    whole, sent = PACKED[name]
    assert unpacked(sent) == whole
    assert sent[0] == (packed.TWO if name.startswith("two") else packed.MARK)


@given(some.lists(some.sampled_from(["seam", "ä", "²", "\0", "as_1", "ab" * packed.LEAST, "😀" * packed.LEAST]),
                  max_size=30))
def test_any_text_comes_out_again(parts):
    text = "".join(parts).encode()
    assert unpacked(packed.packed_text(text)) == text


@pytest.mark.parametrize("language", LANGUAGES)
def test_each_bundle_comes_out_again_and_is_much_lighter(language):
    build = BUILD if language == BUILD.language else Build(language=language)
    bundle = build.bundle(Pages(build).kept())
    assert unpacked(bundle.body) == bundle.whole
    assert len(bundle.body) < len(bundle.whole) / 6
    assert len(bundle.body) < 0.9 * len(brotli.compress(bundle.whole))  # at its highest quality
    assert bundle.body[5 + 2] <= 40  # MB that a phone's model takes while it unpacks


def test_the_interpreter_comes_out_again_as_it_is_vendored():
    sent = BUILD.files[RUNTIME + ".bin"]
    vendored = (house.HOUSE / "webui" / (RUNTIME + ".wasm")).read_bytes()
    assert unpacked(sent.body) == sent.whole == vendored


def test_a_library_that_loses_a_byte_is_told_at_the_build(monkeypatch):
    class Lossy(packed.pyppmd.Ppmd7Encoder):
        def flush(self):
            return super().flush()[:-3]

    monkeypatch.setattr(packed.pyppmd, "Ppmd7Encoder", Lossy)
    with pytest.raises(ValueError, match="does not come out again"):
        packed.packed_text(b"seam " * 99 + bytes(range(128)))
