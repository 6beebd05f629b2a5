"""What `server/packed.py` packs, unpacked by the library that packed it."""
import pyppmd
from covemix.server.packed import MARK, SIGNS, TWO


def unpacked(packed: bytes) -> bytes:
    """The bytes that were packed."""
    if packed[0] == TWO:
        end = 5 + int.from_bytes(packed[1:5], "little")
        return unpacked(packed[5:end]) + unpacked(packed[end:])
    mark, order, memory, text = packed[:4]
    size, table, length = (int.from_bytes(packed[at:at + 4], "little") for at in (4, 8, 12))
    assert mark == MARK
    stream = pyppmd.Ppmd7Decoder(order, memory << 20).decode(packed[20:], length)
    if not text:
        return stream
    *words, places = stream[:table].split(b"\n", len(SIGNS))
    found, numbers, at = bytearray(), varints(places), table
    by_sign = {sign[0]: word for sign, word in zip(SIGNS, words, strict=True)}
    least, end = next(numbers), 0
    while len(found) < size:
        symbol, at = stream[at], at + 1
        if symbol == 0xFF:
            far = next(numbers)
            source = end - (far >> 1) if far & 1 else end + far // 2
            end = source + least + next(numbers)
            for place in range(source, end):
                found.append(found[place])
        elif symbol in by_sign:
            found += by_sign[symbol]
        else:
            count = 0 if symbol < 0xC2 else 1 if symbol < 0xE0 else 2 if symbol < 0xF0 else 3
            found += bytes([symbol]) + stream[at:at + count]
            at += count
    assert next(numbers, None) is None
    return bytes(found)


def varints(places: bytes):
    """The numbers of a table: seven bits in each byte, the lowest first."""
    number = shift = 0
    for byte in places:
        number |= (byte & 127) << shift
        shift += 7
        if byte < 128:
            yield number
            number = shift = 0
