// The bundle: engine, pages and the scripts of later, each with a NUL behind it; its first line says what is there.
// room: "engine", "pages" or "scripts". Returns [[path, bytes]]. The service worker has this in front of it.
export const texts = (bundle, room) => {
  let at = bundle.indexOf(10) + 1; // behind the first line
  const index = JSON.parse(new TextDecoder().decode(bundle.subarray(0, at)));
  const found = [];
  for (const [name, paths] of Object.entries(index)) {
    for (const path of paths) {
      const end = bundle.indexOf(0, at);
      if (end < 0) throw new Error("not whole");
      const bytes = bundle.subarray(at, end);
      if (name === room) found.push([path, name === "pages" ? named(bytes) : bytes]);
      at = end + 1;
    }
  }
  if (at !== bundle.length) throw new Error("not whole");
  return found;
};

// a page of the bundle has ~ where the name of the field stands that it is in
const named = (bytes) => {
  const fields = new TextDecoder().decode(bytes).split('data-field="');
  return new TextEncoder().encode(fields.map((field, place) => (place ? field.replaceAll("~", field.slice(0, field.indexOf('"'))) : field))
    .join('data-field="'));
};
