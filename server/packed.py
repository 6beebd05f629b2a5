"""How the two large files are sent on every host alike: packed by us, and unpacked by the phone.

What is sent is a head and a stream of PPMd, variant H with the range coder of 7-Zip (Igor Pavlov, public domain). Of a
text, what stood before is a mark first and frequent words are one byte each. `webui/unpacker/unpack.c` unpacks it; its
comments say what stands where. Two that have little in common are packed each by itself, one behind the other.
"""
import re
import zlib
from typing import NamedTuple

import pyppmd

MARK, TWO = 1, 2  # the first byte of what is packed, and of two such; no text and no WebAssembly begins so
LEAST = 480  # bytes of a repeat: shorter ones the model itself foretells
REPEAT = b"\xff"
# bytes that begin no letter of UTF-8: each stands for a word
SIGNS = [bytes([code]) for code in (*range(0x80, 0xC2), *range(0xF5, 0xFF))]
PIECE = 512  # bytes for the library at a time: it loses one where its room of 32 kB is full within a symbol
BEFORE = 6  # bytes of a beginning
WORD = re.compile(rb"[A-Za-z_]{2,}")


class Repeat(NamedTuple):
    """Bytes that stood before. at: where they stand; source: where they stood"""

    at: int
    length: int
    source: int


def packed_text(text: bytes) -> bytes:
    """A text in UTF-8, packed: 13 % less than brotli makes of the bundle at its highest quality."""
    found = repeats(text)
    parts, at = [], 0
    for one in found:
        parts.append(text[at:one.at])
        at = one.at + one.length
    parts.append(text[at:])
    words = dict(zip(frequent(b"\n".join(parts)), SIGNS, strict=False))
    longest = sorted(words, key=lambda word: -len(word))
    known = re.compile(b"|".join(longest) or b"(?!)")  # also within a longer word
    body = REPEAT.join(known.sub(lambda word: words[word[0]], part) for part in parts)
    table = b"".join(word + b"\n" for word in words) + b"\n" * (len(SIGNS) - len(words)) + places(found)
    return _packed(table + body, 48, 40, text, len(table))


def packed_texts(one: bytes, other: bytes) -> bytes:
    """Two texts, which come out as one: a byte, the length of the first as it is packed, and both."""
    first = packed_text(one)
    return bytes([TWO]) + len(first).to_bytes(4, "little") + first + packed_text(other)


def packed_bytes(body: bytes) -> bytes:
    """Any bytes, packed as they are."""
    return _packed(body, 10, 4, body)


def _packed(stream: bytes, order: int, memory: int, whole: bytes, table: int | None = None) -> bytes:
    """memory: of the model, in MB. whole: what comes out. table: the bytes of it, in a text"""
    coder = pyppmd.Ppmd7Encoder(order, memory << 20)
    pieces = [coder.encode(stream[at:at + PIECE]) for at in range(0, len(stream), PIECE)]
    made = b"".join((*pieces, coder.flush()))
    if pyppmd.Ppmd7Decoder(order, memory << 20).decode(made, len(stream)) != stream:
        raise ValueError("what was packed does not come out again")
    told = (len(whole), table or 0, len(stream), zlib.adler32(whole))
    return bytes([MARK, order, memory, table is not None]) + b"".join(one.to_bytes(4, "little") for one in told) + made


def repeats(text: bytes, least: int = LEAST) -> list[Repeat]:
    """Where at least so many bytes stand that stood before, from the first to the last, none in another.

    >>> repeats(b"abcdefgh-abcdefgh", 8)
    [Repeat(at=9, length=8, source=0)]
    """
    block = least // 2  # a repeat holds a whole one, wherever it begins
    known: dict[bytes, int] = {}
    found: list[Repeat] = []
    at = after = end = 0  # after: the last repeat
    while at + block <= len(text):
        while end + block <= at:
            known.setdefault(text[end:end + block], end)
            end += block
        source = known.get(text[at:at + block])
        if source is not None:
            before, behind = 0, block
            while at - before > after and source > before and text[at - before - 1] == text[source - before - 1]:
                before += 1
            while at + behind < len(text) and text[source + behind] == text[at + behind]:
                behind += 1
            one = letters(text, at - before, before + behind, source - before)
            if one.length >= least:
                found.append(one)
                at = after = one.at + one.length
                continue
        at += 1
    return found


def letters(text: bytes, at: int, length: int, source: int) -> Repeat:
    """A repeat without what it holds of a letter whose other bytes stand outside of it.

    >>> letters("xä".encode(), 2, 1, 0)
    Repeat(at=3, length=0, source=1)
    """
    end = at + length
    while at < end and text[at] & 0xC0 == 0x80:
        at, source = at + 1, source + 1
    while end > at and end < len(text) and text[end] & 0xC0 == 0x80:
        end -= 1
    return Repeat(at, end - at, source)


def frequent(text: bytes) -> list[bytes]:
    """The words that the model foretells worst, long ones first: they stand behind the most different beginnings. As
    many as there are signs.

    >>> frequent(b"a seam, the seam, no seam: at at a")
    [b'seam', b'at', b'the', b'no']
    """
    behind: dict[bytes, set[bytes]] = {}
    for word in WORD.finditer(text):
        behind.setdefault(word[0], set()).add(text[max(0, word.start() - BEFORE):word.start()])
    return sorted(behind, key=lambda word: (-(len(word) - 1) ** 0.5 * len(behind[word]), word))[:len(SIGNS)]


def places(found: list[Repeat], least: int = LEAST) -> bytes:
    """Repeats as the table has them: what is taken from each length, then of each how far it begins from the end of the
    one before (the lowest bit: backwards), and its length.

    >>> list(places([Repeat(1000, 482, 3), Repeat(2000, 480, 0)]))
    [224, 3, 6, 2, 203, 7, 0]
    """
    bytes_of, end = varint(least), 0
    for one in found:
        far = one.source - end
        bytes_of += varint(abs(far) << 1 | (far < 0)) + varint(one.length - least)
        end = one.source + one.length
    return bytes_of


def varint(number: int) -> bytes:
    """Seven bits in each byte, the lowest first; the highest bit says that more follow.

    >>> list(varint(300))
    [172, 2]
    """
    found = []
    while number > 127:
        found.append(number & 127 | 128)
        number >>= 7
    return bytes([*found, number])
