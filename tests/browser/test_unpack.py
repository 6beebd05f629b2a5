"""The unpacker that a phone has: what comes out of it, and what it refuses."""
import base64

import house
import pytest
from awkward import PACKED
from covemix.server.build import RUNTIME, sum_of

BUILD = house.build()
# the sum of what came out, or what was raised
UNPACK = """async (texts) => {
  const { unpacked } = await part("engine/unpack.js");
  const base = document.querySelector("script[type=module]").src;
  const tool = await (await fetch(new URL("../vendor/ppmd/unpack.wasm", base))).arrayBuffer();
  const found = [];
  for (const text of texts) {
    const bytes = Uint8Array.from(atob(text), (one) => one.charCodeAt(0));
    const digest = async (whole) => new Uint8Array(await crypto.subtle.digest("SHA-256", whole));
    const sum = async (whole) => btoa(String.fromCharCode(...await digest(whole)));
    found.push(await unpacked(bytes, tool).then(sum).catch((error) => error.message));
  }
  return found;
}"""


@pytest.fixture
def unpack(same_phone, standing):
    if not same_phone.url.startswith(standing.url):
        same_phone.goto(standing.url)
    return lambda *bodies: same_phone.evaluate(UNPACK, [base64.b64encode(body).decode() for body in bodies])


@pytest.mark.parametrize("name", PACKED)
def test_what_is_hard_to_pack_comes_out_again(unpack, name):
    whole, sent = PACKED[name]
    assert unpack(sent) == [sum_of(whole)]


def test_the_two_large_files_come_out_as_they_were(unpack, standing):
    for file in (house.bundle(), BUILD.files[RUNTIME + ".bin"]):
        assert unpack(file.body) == [sum_of(file.whole)]


def test_what_is_not_packed_stays_as_it_is(unpack):
    assert unpack(b"{}\n", b"\0asm") == [sum_of(b"{}\n"), sum_of(b"\0asm")]


@pytest.mark.parametrize("name", ["text: more words than signs", "text: a repeat in a repeat", "bytes: all",
                                  "two: a repeat in a repeat"])
def test_half_of_it_or_a_byte_more_is_refused(unpack, name):
    """Or what comes out is right all the same: the last bytes may be those that stand for nothing more."""
    whole, sent = PACKED[name]
    cut = [sent[:length] for length in range(1, len(sent), max(1, len(sent) // 40))]
    half, nearly = unpack(*cut[:30], sent + b"\0", sent + b"\1"), unpack(*cut[30:])
    assert half == ["not whole"] * 32
    assert set(nearly) <= {"not whole", sum_of(whole)}


@pytest.mark.parametrize("place", [1, *range(4, 12), *range(16, 20)])
def test_a_wrong_head_is_refused(unpack, place):
    """Order, size, table and sum. A short text comes out right by a higher order too."""
    whole, sent = PACKED["text: a repeat in a repeat"]
    wrong = [sent[:place] + bytes([sent[place] ^ bit]) + sent[place + 1:] for bit in (1, 2, 64)]
    assert set(unpack(*wrong)) <= ({"not whole", sum_of(whole)} if place == 1 else {"not whole"})


def test_a_byte_that_is_another_never_goes_unseen(unpack):
    whole, sent = PACKED["text: a repeat in a repeat"]
    hurt = [sent[:at] + bytes([sent[at] ^ 64]) + sent[at + 1:] for at in range(21, len(sent), len(sent) // 50)]
    assert sum_of(whole) not in unpack(*hurt)
