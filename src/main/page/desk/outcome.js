/** Says what came of an edit, or why it cannot be, with buttons for what would help. */

import { button, element } from "../page.js";
import { ask } from "./live.js";

/**
 * A refusal with its fixes: each is taken together with what was asked.
 * @param {{sentence: string, remedy: string, fixes?: object[]}} problem
 * @param {object[]} edits that were asked for
 * @param {(told: object) => void} done hears what came of a fix
 */
export function refusal({ sentence, remedy, fixes }, edits, done) {
  const buttons = (fixes ?? []).map((fix) => (fix.edits
    ? button(fix.words, "Take this fix", async () => done(await ask({ edits: [...edits, ...fix.edits] })), { class: "fix" })
    : element("span", { class: "quiet", text: fix.words })));
  return element("div", { class: "refusal" },
    element("p", {}, element("b", { text: "× " + sentence })),
    ...(buttons.length ? [element("div", { class: "fixes" }, ...buttons)] : remedy ? [element("p", { class: "quiet", text: remedy })] : []));
}

/** Asks which of two changes of one place counts. */
function question(places, edits, done) {
  const words = (value) => (value === "" ? "nothing" : value);
  return element("div", { class: "refusal" },
    element("p", {}, element("b", { text: "? The file was changed meanwhile, at the same place." })),
    ...places.map(({ place, mine, theirs }) => element("p", { text: place + ": you say " + words(mine) + ", the file says " + words(theirs) + "." })),
    element("div", { class: "fixes" },
      button("Keep mine", "Write it over what the file says", async () => done(await ask({ edits })), { class: "fix" }),
      button("Keep the file's", "Leave the file as it is", () => done({ moved: [] }), { class: "fix" })));
}

/**
 * Shows why an edit cannot be, or what would come of one that was only tried; what came of one is told above.
 * @param {HTMLElement} node filled with it
 * @param {object} told by the desk
 * @param {object[]} edits that were asked for
 * @param {boolean} [tried] whether it was only tried
 */
export function showOutcome(node, told, edits, tried = false) {
  if (told.asked) {
    node.replaceChildren(question(told.asked, edits, (next) => showOutcome(node, next, edits)));
  } else if (told.refused) {
    node.replaceChildren(...told.refused.map((each) => refusal(each, edits, (next) => showOutcome(node, next, edits))));
  } else if (tried) {
    const found = (told.found ?? []).map((words) => "! " + words);
    const words = [...found, ...(told.moved.length ? told.moved : ["nothing moves"])];
    node.replaceChildren(element("p", { class: "quiet", text: "→ " + words.slice(0, 4).join("; ") + (words.length > 4 ? " …" : "") }));
  } else {
    node.replaceChildren();
  }
}
