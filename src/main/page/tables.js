/** Tables, rows and links that the views of all readers share. */

import { button, element } from "./page.js";
import { goTo } from "./steps.js";

/** A button that goes to a frame. */
export const goLink = (words, frame, title) => button(words, title || "Go to frame " + frame, () => goTo(frame), { class: "link" });

/** A table with a heading row. */
export function table(caption, heads, rows) {
  const head = heads.map((words) => element("th", { scope: "col", text: words }));
  return element("div", { class: "table" },
    element("table", {},
      element("caption", { text: caption }),
      element("thead", {}, element("tr", {}, ...head)),
      element("tbody", {}, ...rows)));
}

/** A row; numbers do not wrap. */
export function row(traits, ...cells) {
  return element("tr", traits, ...cells.map((cell) =>
    element("td", typeof cell === "string" && /^[\d:;]+$/.test(cell) ? { class: "number" } : {}, cell)));
}

/** Marks one row of many as the one that goes on now. */
export function markRow(rows, now) {
  rows.forEach((each) => each.toggleAttribute("aria-current", each === now));
}

/** Fills a list of pairs. */
export function pairs(list, entries) {
  list.replaceChildren(...entries.flatMap(([words, ...children]) =>
    [element("dt", { text: words }), element("dd", {}, ...children)]));
}
