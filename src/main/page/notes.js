/** Notes of the viewer: the tab that writes, lists and saves them. */

import { clock } from "./clock.js";
import { film, placeWords, shotAt } from "./film.js";
import { noted, notedPanel, notesCsv, notesJson, storeNotes } from "./notebook.js";
import { announce, button, element, say } from "./page.js";
import { addView, chooseTab, reader } from "./reader.js";
import { goLink } from "./tables.js";
import { timecode } from "./timecode.js";

/** By it spreadsheet programs know the letters of a table opened by a double click. */
const BYTE_ORDER_MARK = "\uFEFF";

function save(ending, type, text) {
  const address = URL.createObjectURL(new Blob([text], { type }));
  element("a", { href: address, download: film.name + "-notes" + ending }).click();
  window.setTimeout(() => URL.revokeObjectURL(address), 10000);
}

let frameWords;
let text;

const keep = () => {
  storeNotes();
  chooseTab("notes");
};

const add = () => {
  const words = text.value.trim();
  if (words) {
    noted.list.push({ frame: clock.frame, panel: shotAt(clock.frame).panel, text: words });
    keep();
    reader.body.querySelector("textarea").focus();
    announce("Note added at frame " + clock.frame);
  }
};

const item = (note) =>
  element("li", { class: "note" },
    goLink(timecode(note.frame), note.frame), " " + placeWords(note.frame) + ", " + notedPanel(note) + " ",
    button("remove", "Remove this note", () => {
      noted.list.splice(noted.list.indexOf(note), 1);
      keep();
    }, { class: "small" }),
    element("p", { text: note.text }));

const build = () => {
  frameWords = element("b");
  text = element("textarea", { id: "note-text", rows: 3, onkeydown: (event) => {
    if (event.key === "Enter" && (event.ctrlKey || event.metaKey)) {
      add();
    }
  } });
  const unkept = noted.kept ? [] : [element("p", { class: "notice", text: "This browser won't keep your notes. Save them before you close the page." })];
  const saved = "Put the saved file beside the plan or in the sheets folder; the next time you run make, the notes are listed on the workbook's first sheet.";
  return element("div", {},
    element("label", { for: "note-text" }, "Note on ", frameWords), text,
    button("Add note", "Add this note (Ctrl+Enter)", add, { class: "first", id: "add-note" }), ...unkept,
    element("ul", { class: "findings" }, ...noted.list.map(item)),
    element("p", {},
      button("Save as CSV", "A table", () => save(".csv", "text/csv", BYTE_ORDER_MARK + notesCsv()), { id: "save-csv" }), " ",
      button("Save as JSON", "For programs", () => save(".json", "application/json", notesJson()), { id: "save-json" })),
    element("p", { class: "quiet", text: saved }));
};

const show = (frame) => say(frameWords, "frame " + frame + ", " + placeWords(frame) + ", panel " + shotAt(frame).panel);

addView("notes", { build, show });
