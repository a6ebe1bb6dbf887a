/** Fields of a form that change one value of the plan each. */

import { element } from "../page.js";

const text = (value) => (value === undefined || typeof value === "object" ? "" : String(value));

/** An edit that puts a value, or takes its key out where there is none. */
export const put = (way, value) => (value === "" ? { remove: way } : { put: way, value });

/**
 * A field to type in.
 * @param {{id: string, words: string, hint?: string, list?: string, small?: boolean}} as
 * @param {string[]} way to the value in the plan
 * @param {(edits: object[]) => void} make told of each change
 * @param {(edits: object[]) => void} [attempt] told of what is typed so far
 */
export function typedField({ id, words, hint, list, small }, way, value, make, attempt) {
  const edits = () => [put(way, input.value.trim())];
  const input = element("input", {
    id, value: text(value), placeholder: hint, list, autocomplete: "off", spellcheck: "false", size: small ? 7 : undefined,
    oninput: () => attempt?.(edits()),
    onchange: () => make(edits()),
  });
  return element("label", { class: small ? "short" : "" }, element("span", { text: words }), input);
}

/** A field to choose from; `""` among the choices takes the key out. */
export function chosenField({ id, words, choices }, way, value, make) {
  const now = text(value);
  const all = choices.some(([each]) => each === now) ? choices : [...choices, [now, now]];
  const select = element("select", { id, onchange: () => make([put(way, select.value)]) },
    ...all.map(([each, name]) => element("option", { value: each, text: name, selected: each === now })));
  return element("label", { class: "short" }, element("span", { text: words }), select);
}
