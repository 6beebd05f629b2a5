// What comes packed on every host alike: the bundle and the interpreter, as server/packed.py packs them.
const PACKED = 1; // the first byte of what is packed
const TWO = 2; // and of two such: the length of the first follows
export const isPacked = (bytes) => bytes[0] === PACKED || bytes[0] === TWO;

// unpacker: the bytes of vendor/ppmd/unpack.wasm, or a promise of them. What is not packed comes back as it is.
export const unpacked = async (bytes, unpacker) => {
  if (!isPacked(bytes)) return bytes;
  const tool = await unpacker;
  if (bytes[0] === PACKED) return alone(bytes, tool);
  const end = 5 + (bytes[1] | bytes[2] << 8 | bytes[3] << 16 | bytes[4] << 24);
  const both = [await alone(bytes.subarray(5, end), tool), await alone(bytes.subarray(end), tool)];
  return new Uint8Array(await new Blob(both).arrayBuffer());
};

const alone = async (bytes, tool) => {
  const { instance } = await WebAssembly.instantiate(tool);
  /** @type {any} */
  const { memory, room, unpack, size } = instance.exports;
  const at = room(bytes.length);
  if (at) new Uint8Array(memory.buffer, at, bytes.length).set(bytes);
  const from = at && unpack();
  if (!from) throw new Error("not whole");
  return new Uint8Array(memory.buffer, from, size()).slice();
};
