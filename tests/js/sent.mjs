// What eslint looks for in the scripts as they are sent: names that are no more, and names read before they have a value,
// which the library that shortens them would leave without `apart` of server/lean.py.
import ours from "./eslint.config.mjs";

const { globals } = ours.find((one) => one.languageOptions).languageOptions;
const VENDORED = [
  "DOMRectReadOnly", "IDBCursor", "IDBDatabase", "IDBIndex", "IDBObjectStore", "IDBRequest", "IDBTransaction", "OffscreenCanvas",
  "createImageBitmap",
];

export default [
  {
    files: ["**/*.{js,mjs}"],
    languageOptions: {
      ecmaVersion: 2024, sourceType: "module",
      globals: { ...globals, ...Object.fromEntries(VENDORED.map((name) => [name, "readonly"])) },
    },
    // what a function reads when it is called has its value by then
    rules: { "no-undef": "error", "no-use-before-define": ["error", { functions: false, classes: true, variables: false }] },
  },
];
