// The bundle: engine, pages and the scripts of later, one after the other; its first line says what is there and how long.
// room: "engine", "pages" or "scripts". Returns [[path, bytes]]. The service worker has this in front of it.
export const texts = (bundle, room) => {
  const end = bundle.indexOf(10); // of the first line
  const index = JSON.parse(new TextDecoder().decode(bundle.subarray(0, end)));
  const found = [];
  let at = end + 1;
  for (const [name, files] of Object.entries(index)) {
    for (const [path, length] of files) {
      if (name === room) found.push([path, bundle.subarray(at, at + length)]);
      at += length;
    }
  }
  if (at !== bundle.length) throw new Error("not whole");
  return found;
};
