/** Rules for the page's modules, beside those that ESLint recommends. */
export default [
  {
    files: ["src/main/page/*.js"],
    languageOptions: {
      globals: readonly(
        "Audio", "AudioContext", "Blob", "IntersectionObserver", "OfflineAudioContext", "URL",
        "document", "getComputedStyle", "performance", "window"),
    },
  },
  {
    files: ["src/main/page/desk/*.js"],
    languageOptions: { globals: readonly("DOMPoint", "EventSource", "document", "performance", "window") },
  },
  {
    files: ["src/test/page/*.mjs"],
    languageOptions: { globals: readonly("URL", "console", "document", "process") },
  },
  {
    rules: {
      eqeqeq: "error",
      "no-shadow-restricted-names": "error",
      "no-unused-vars": ["error", { caughtErrors: "none" }],
      "no-use-before-define": ["error", { functions: false, variables: false }],
      "no-var": "error",
      "prefer-const": "error",
    },
  },
];

function readonly(...names) {
  return Object.fromEntries(names.map((name) => [name, "readonly"]));
}
