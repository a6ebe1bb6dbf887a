/** Notes of the viewer on frames of the film, kept in this browser and saved to files. */

const noted = { list: [], key: "barsheet-notes " + film.name + " " + film.title, kept: true };

function loadNotes() {
  try {
    const list = JSON.parse(kept.get(noted.key) || "[]");
    noted.list = list.filter((note) => Number.isInteger(note.frame) && typeof note.text === "string");
  } catch (damaged) {
    noted.list = [];
  }
}

function storeNotes() {
  noted.list.sort((one, other) => one.frame - other.frame);
  noted.kept = kept.set(noted.key, JSON.stringify(noted.list));
  chooseTab("notes");
}

/** A note as it is handed on. */
function noteWords({ frame, panel, text }) {
  return { frame, timecode: timecode(frame), place: placeWords(frame), panel: panel ?? shotAt(frame).panel, note: text };
}

/** The panel that a note was written on, and the one that a later make shows there instead. */
function notedPanel(note) {
  const { panel } = noteWords(note);
  const now = shotAt(note.frame).panel;
  return "panel " + panel + (panel === now ? "" : ", now panel " + now);
}

function notesJson() {
  return JSON.stringify({ format: "barsheet-notes", version: 1, film: film.title, notes: noted.list.map(noteWords) }, null, 1) + "\n";
}

/** A cell of CSV (RFC 4180); a text that a spreadsheet would calculate is kept text by an apostrophe. */
function csvCell(value) {
  const text = String(value);
  const safe = /^[=+\-@\t\r]/.test(text) ? "'" + text : text;
  return '"' + safe.replace(/"/g, '""') + '"';
}

function notesCsv() {
  const heads = ["frame", "timecode", "place", "panel", "note"];
  const rows = noted.list.map(noteWords).map((note) => heads.map((head) => csvCell(note[head])).join(","));
  return [heads.join(","), ...rows].join("\r\n") + "\r\n";
}

function save(ending, type, text) {
  const address = URL.createObjectURL(new Blob([text], { type }));
  element("a", { href: address, download: film.name + "-notes" + ending }).click();
  window.setTimeout(() => URL.revokeObjectURL(address), 10000);
}

loadNotes();

{
  let frameWords;
  let text;

  const add = () => {
    const words = text.value.trim();
    if (words) {
      noted.list.push({ frame: clock.frame, panel: shotAt(clock.frame).panel, text: words });
      storeNotes();
      reader.body.querySelector("textarea").focus();
      announce("Note added at frame " + clock.frame);
    }
  };

  const item = (note) =>
    element("li", { class: "note" },
      goLink(timecode(note.frame), note.frame), " " + placeWords(note.frame) + ", " + notedPanel(note) + " ",
      button("remove", "Remove this note", () => {
        noted.list.splice(noted.list.indexOf(note), 1);
        storeNotes();
      }, { class: "small" }),
      element("p", { text: note.text }));

  const build = () => {
    frameWords = element("b");
    text = element("textarea", { id: "note-text", rows: 3, onkeydown: (event) => {
      if (event.key === "Enter" && (event.ctrlKey || event.metaKey)) {
        add();
      }
    } });
    const unkept = noted.kept ? [] : [element("p", { class: "notice", text: "This browser keeps nothing for this page. Save the notes before you close it." })];
    const saved = "Put the saved file beside the plan, or in the folder of the sheets: the next make lists the notes on the workbook's first sheet.";
    return element("div", {},
      element("label", { for: "note-text" }, "Note on ", frameWords), text,
      button("Add note", "Add this note (Ctrl+Enter)", add, { class: "first", id: "add-note" }), ...unkept,
      element("ul", { class: "findings" }, ...noted.list.map(item)),
      element("p", {},
        button("Save as CSV", "A table", () => save(".csv", "text/csv", notesCsv()), { id: "save-csv" }), " ",
        button("Save as JSON", "For programs", () => save(".json", "application/json", notesJson()), { id: "save-json" })),
      element("p", { class: "quiet", text: saved }));
  };

  const show = (frame) => say(frameWords, "frame " + frame + ", " + placeWords(frame) + ", panel " + shotAt(frame).panel);

  addView("notes", { build, show });
}
