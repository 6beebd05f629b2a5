// Unpacks what server/packed.py packs: a head, then what the library's PPMd7 (variant H, the range coder of 7-Zip) made.
// Whatever is damaged is refused: nothing is read or written outside of what the head asks memory for.
#include <stdbool.h>
#include <stddef.h>
#include <stdint.h>

// in the place of two headers of the library: its types, and how it reads a byte
#define PPMD_ARCH_H
#define PPMD_INTERFACE_H
#define PPMD_32BIT
#define True true
#define False false
typedef uint8_t Byte;
typedef uint16_t UInt16;
typedef int32_t Int32;
typedef uint32_t UInt32;
typedef uint64_t UInt64;
typedef bool Bool;
typedef struct IByteIn {
  const Byte *at, *end;
} IByteIn;
typedef struct IByteOut IByteOut;
typedef struct IAlloc IAlloc;
typedef const IAlloc *IAllocPtr;
static Byte next(IByteIn *from) { return from->at < from->end ? *from->at++ : 0; }
#define IByteIn_Read(from) next(from)
#define IAlloc_Alloc(from, size) NULL // the memory is handed to it
#define IAlloc_Free(from, address)

#include "Ppmd7.c"
#include "Ppmd7Dec.c"

enum {
  // bytes: mark, order, MB of the model, whether it is a text; bytes that come out, bytes of the table, bytes of table and
  // text as the model says them (for who reads them at once; not read here), Adler-32 of what comes out
  HEAD = 20,
  WORDS = 76, // of the table
  REPEAT = 0xff, // stands for what stood before
  LOW_END = 0xc2, HIGH = 0xf5, // a byte from 0x80 on, below LOW_END or from HIGH on, begins no letter: it is a word
  PAGE = 65536,
  MOST = 64 << 20, // bytes that come out, or of a model
};

extern Byte __heap_base;
static CPpmd7 model;
static IByteIn from;
static CPpmd7z_RangeDec code = { .Stream = &from };
static Byte *packed, *out;
static UInt32 length, size;

static bool has(Byte *end) {
  size_t there = __builtin_wasm_memory_size(0), wanted = ((size_t)end + PAGE - 1) / PAGE;
  return wanted <= there || __builtin_wasm_memory_grow(0, wanted - there) != (size_t)-1;
}

static UInt32 number(const Byte *at) { return at[0] | at[1] << 8 | at[2] << 16 | (UInt32)at[3] << 24; }

// as many symbols as there is room for; false where the model says that there are none
static bool symbols(Byte *at, const Byte *end) {
  while (at < end) {
    int symbol = Ppmd7_DecodeSymbol(&model, &code);
    if (symbol < 0) return false;
    *at++ = (Byte)symbol;
  }
  return true;
}

static UInt32 varint(const Byte **at, const Byte *end) {
  UInt32 found = 0;
  for (unsigned shift = 0; *at < end && shift < 32; shift += 7) {
    Byte one = *(*at)++;
    found |= (UInt32)(one & 127) << shift;
    if (one < 128) break;
  }
  return found;
}

// table: the words, each with a line feed behind it; then, as varints, what is taken from each length of a repeat, and
// for each repeat how far it begins from the end of the one before (the lowest bit: whether backwards), and its length.
static bool text(Byte *table, Byte *end) {
  const Byte *words[WORDS + 1], *at = table, *last = out + size;
  if (!symbols(table, end)) return false;
  for (int one = 0; one <= WORDS; one++) {
    words[one] = at;
    while (one < WORDS && at < end && *at++ != '\n');
  }
  UInt32 least = varint(&at, end);
  Byte *to = out;
  const Byte *source = out;
  while (to < last) {
    int symbol = Ppmd7_DecodeSymbol(&model, &code);
    if (symbol < 0) return false;
    UInt32 count = 0;
    if (symbol == REPEAT) {
      UInt32 far = varint(&at, end);
      source = far & 1 ? source - (far >> 1) : source + (far >> 1);
      count = least + varint(&at, end);
      if (source < out || source >= to || !count) return false;
    } else if (symbol >= HIGH || (symbol >= 0x80 && symbol < LOW_END)) {
      int one = symbol >= HIGH ? symbol - HIGH + LOW_END - 0x80 : symbol - 0x80;
      if (words[one + 1] - words[one] < 2) return false;
      count = words[one + 1] - words[one] - 1;
      if (count > (UInt32)(last - to)) return false;
      for (const Byte *letter = words[one]; count; count--) *to++ = *letter++;
      continue;
    } else {
      *to++ = (Byte)symbol;
      count = symbol < LOW_END ? 0 : symbol < 0xe0 ? 1 : symbol < 0xf0 ? 2 : 3; // the rest of a letter
      if (count > (UInt32)(last - to) || !symbols(to, to + count)) return false;
      to += count;
      continue;
    }
    if (count > (UInt32)(last - to)) return false;
    while (count--) *to++ = *source++;
  }
  return true;
}

// Adler-32 (RFC 1950)
static UInt32 sum(const Byte *at, const Byte *end) {
  UInt32 low = 1, high = 0;
  for (; at < end; at++) {
    low = (low + *at) % 65521;
    high = (high + low) % 65521;
  }
  return high << 16 | low;
}

// Where as many packed bytes are to be put; 0: there is no memory.
__attribute__((export_name("room"))) Byte *room(UInt32 bytes) {
  packed = &__heap_base;
  length = bytes;
  return bytes < MOST && has(packed + bytes) ? packed : NULL;
}

// Where the unpacked bytes are; 0: these are none that were packed so, or not all of them.
__attribute__((export_name("unpack"))) Byte *unpack(void) {
  if (length < HEAD) return NULL;
  unsigned order = packed[1];
  UInt32 memory = (UInt32)packed[2] << 20, table = number(packed + 8);
  size = number(packed + 4);
  if (order < PPMD7_MIN_ORDER || order > PPMD7_MAX_ORDER || !memory || memory > MOST || size > MOST || table > MOST)
    return NULL;
  Byte *base = (Byte *)(((size_t)packed + length + 3) & ~(size_t)3);
  out = base + memory;
  if (!has(out + size + table)) return NULL;
  from.at = packed + HEAD;
  from.end = packed + length;
  Ppmd7_Construct(&model);
  model.Base = base;
  model.Size = memory;
  model.AlignOffset = 0;
  Ppmd7_Init(&model, order);
  if (!Ppmd7z_RangeDec_Init(&code)) return NULL;
  if (!(packed[3] ? text(out + size, out + size + table) : symbols(out, out + size))) return NULL;
  return from.at == from.end && sum(out, out + size) == number(packed + 16) ? out : NULL;
}

// How many they are.
__attribute__((export_name("size"))) UInt32 size_of(void) { return size; }
