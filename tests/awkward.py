"""Texts and bytes that are hard to pack: what both unpackers are asked."""
import random

from covemix.server.packed import LEAST, packed_bytes, packed_text, packed_texts


def _random(seed: int, length: int) -> bytes:
    return random.Random(seed).randbytes(length)


def _letters(seed: int, length: int, letters: str) -> str:
    return "".join(random.Random(seed).choices(letters, k=length))


LONG = _letters(1, LEAST, "aä²😀 \n")
TEXTS = {
    "empty": "",
    "one letter": "a",
    "no words": "1 2 3 \0 \x01\x02 \x7f\n",
    "each kind of letter": "\x00\x7f\x80ÿĀ߿ࠀ￿𐀀\U0010ffff" * 40,
    "more words than signs": " ".join(f"word{'x' * n} as_{'y' * (n % 9)}" for n in range(300)),
    "a word in a repeat": f"seam_{LONG}seam|seam{LONG}_seam",
    "a repeat that overlaps itself": "ä" * 5000,
    "a repeat in a repeat": (LONG + LONG[:20] + LONG[::-1]) * 3,
    "letters that share bytes": LONG.join("éëéß") + "é" + LONG.replace("ä", "å") + LONG,
    "as short as a repeat can be": ("" + LONG[:LEAST]).join("abc"),
    "random letters": _letters(2, 200_000, "abc _\nefgäöü‚²³😀"),
    "a bound of the library's room": _letters(3, 120_000, "".join(map(chr, range(32, 127)))),
}
BYTES = {"empty": b"", "one": b"\1", "none": bytes(50_000), "random": _random(4, 100_000),
         "all": bytes(range(256)) * 30}
PACKED = {f"text: {name}": (text.encode(), packed_text(text.encode())) for name, text in TEXTS.items()} | {
    f"bytes: {name}": (body, packed_bytes(body)) for name, body in BYTES.items()} | {
    f"two: {name}": (b"seam\0" + text.encode(), packed_texts(b"seam\0", text.encode()))
    for name, text in TEXTS.items() if len(text) < 9999}
