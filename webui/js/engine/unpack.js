// What comes packed on every host alike: the bundle and the interpreter, as server/packed.py packs them.
const PACKED = 1; // the first byte of what is packed
export const isPacked = (bytes) => bytes[0] === PACKED;

// unpacker: the bytes of vendor/ppmd/unpack.wasm, or a promise of them. What is not packed comes back as it is.
export const unpacked = async (bytes, unpacker) => {
  if (!isPacked(bytes)) return bytes;
  const { instance } = await WebAssembly.instantiate(await unpacker);
  /** @type {any} */
  const { memory, room, unpack, size } = instance.exports;
  const at = room(bytes.length);
  if (at) new Uint8Array(memory.buffer, at, bytes.length).set(bytes);
  const from = at && unpack();
  if (!from) throw new Error("not whole");
  return new Uint8Array(memory.buffer, from, size()).slice();
};
