"""The interpreter as a phone needs it: without the Python modules frozen into it, which nothing here imports."""
import re
import struct
from itertools import pairwise

DATA = 11  # the id of a data section, WebAssembly core specification 5.5.14
NAMES = re.compile(rb"(?:[a-z0-9_/]+\.py\0){8,}(?=\0)")  # an empty name ends them
MODULE = 12  # bytes: what a frozen module is known by, three addresses


def without_frozen(wasm: bytes) -> bytes:
    """The same interpreter, the names and the byte code of its frozen modules turned to zeros, which pack to nothing.

    A frozen module is found by its name alone; where no name stands, nothing reads what lies behind them. The engine
    imports only what is built in (a test keeps it so), and every test of the two runtimes runs on what this leaves.
    ValueError where the frozen modules are not found: a new version keeps them another way, and is to be looked at.
    """
    start, base, size = _memory(wasm)
    memory = bytearray(wasm[start:start + size])
    found = [(names, table) for names in NAMES.finditer(memory)
             for table in [_table(memory, names[0].count(b"\0"))] if table is not None]
    if len(found) != 1:
        raise ValueError("the frozen modules are not where they were")
    names, (first, count) = found[0]
    words = struct.unpack_from(f"<{3 * count}I", memory, first - base)
    last = max(words)
    if not base <= first < last < base + size:
        raise ValueError("the frozen modules reach beyond the memory")
    for begin, end in ((names.start(), names.end()), (first - base, last - base)):
        memory[begin:end] = bytes(end - begin)
    return wasm[:start] + bytes(memory) + wasm[start + size:]


def _table(memory: bytes, count: int) -> tuple[int, int] | None:
    """Where `count` modules stand, from the addresses of one after the other; None where no such table is so long."""
    words = struct.unpack_from(f"<{len(memory) // 4}I", memory)
    steps = [after - before == MODULE for before, after in pairwise(words)]
    wanted = [False] + [True] * (count - 1) + [False]
    for place in range(1, len(steps) - count):
        if steps[place] and steps[place - 1:place + count] == wanted:
            return words[place], count
    return None


def _memory(wasm: bytes) -> tuple[int, int, int]:
    """The first piece of what memory holds at the start: its place in the file, its address, its length."""
    at = 8
    while at < len(wasm):
        kind, (size, inside) = wasm[at], _number(wasm, at + 1)
        if kind == DATA:
            _, piece = _number(wasm, inside)  # how many there are
            address, end = _number(wasm, piece + 2)  # behind the flag and `i32.const`
            length, start = _number(wasm, end + 1)
            return start, address, length
        at = inside + size
    raise ValueError("no memory in it")


def _number(wasm: bytes, at: int) -> tuple[int, int]:
    """An unsigned LEB128 number, and where it ends; core specification 5.2.2."""
    value = shift = 0
    while True:
        byte = wasm[at]
        value |= (byte & 127) << shift
        at, shift = at + 1, shift + 7
        if byte < 128:
            return value, at
