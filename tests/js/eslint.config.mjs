// What eslint looks for in the page's scripts: its recommended rules, and those that keep a script's state plain.
import js from "@eslint/js";

const PAGE = ["AbortController", "Audio", "AudioContext", "BroadcastChannel", "CSS", "DOMException", "DOMParser", "Element", "Event",
  "FileReader", "HTMLElement", "Image", "IntersectionObserver", "MutationObserver", "Node", "Notification", "ResizeObserver", "Response", "TextDecoder", "TextEncoder",
  "URL", "URLSearchParams", "Blob", "File", "WebAssembly", "Worker", "addEventListener", "caches", "clearInterval", "clearTimeout", "console", "crypto",
  "customElements", "document", "fetch", "getComputedStyle", "history", "indexedDB", "localStorage", "location",
  "matchMedia", "navigator", "performance", "queueMicrotask", "removeEventListener", "requestAnimationFrame",
  "requestIdleCallback", "screen", "self", "sessionStorage", "setInterval", "setTimeout", "speechSynthesis",
  "SpeechSynthesisUtterance", "structuredClone", "window", "btoa", "atob", "BUILD", "DECLARED", "LANGUAGES", "texts", "unpacked", "sentencesOf", "clients"];

export default [
  js.configs.recommended,
  {
    languageOptions: { ecmaVersion: 2024, sourceType: "module", globals: Object.fromEntries(PAGE.map((name) => [name, "readonly"])) },
    rules: {
      eqeqeq: "error",
      "max-lines-per-function": ["error", { max: 60 }],  // or it says why not
      "no-var": "error",
      "prefer-const": "error",
      "no-shadow": "error",
      "no-unused-vars": ["error", { ignoreRestSiblings: true }],
      "no-implicit-globals": "error",
      "no-unused-expressions": ["error", { allowShortCircuit: true, allowTernary: true }],
    },
  },
];
