/** Notes of the viewer on frames of the film, kept in this browser and saved to files. */

import { film, placeWords, shotAt } from "./film.js";
import { kept } from "./page.js";
import { timecode } from "./timecode.js";

export const noted = { list: [], key: "barsheet-notes " + film.name + " " + film.title, kept: true };

function loadNotes() {
  try {
    const list = JSON.parse(kept.get(noted.key) || "[]");
    noted.list = list.filter((note) => Number.isInteger(note.frame) && typeof note.text === "string");
  } catch (damaged) {
    noted.list = [];
  }
}

export function storeNotes() {
  noted.list.sort((one, other) => one.frame - other.frame);
  noted.kept = kept.set(noted.key, JSON.stringify(noted.list));
}

/** A note as it is handed on. */
function noteWords({ frame, panel, text }) {
  return { frame, timecode: timecode(frame), place: placeWords(frame), panel: panel ?? shotAt(frame).panel, note: text };
}

/** The panel that a note was written on, and the one that a later make shows there instead. */
export function notedPanel(note) {
  const { panel } = noteWords(note);
  const now = shotAt(note.frame).panel;
  return "panel " + panel + (panel === now ? "" : ", now panel " + now);
}

export function notesJson() {
  return JSON.stringify({ format: "barsheet-notes", version: 1, film: film.title, notes: noted.list.map(noteWords) }, null, 1) + "\n";
}

/** A cell of CSV (RFC 4180); a text that a spreadsheet would calculate is kept text by an apostrophe. */
function csvCell(value) {
  const text = String(value);
  const safe = /^[=+\-@\t\r]/.test(text) ? "'" + text : text;
  return '"' + safe.replace(/"/g, '""') + '"';
}

export function notesCsv() {
  const heads = ["frame", "timecode", "place", "panel", "note"];
  const rows = noted.list.map(noteWords).map((note) => heads.map((head) => csvCell(note[head])).join(","));
  return [heads.join(","), ...rows].join("\r\n") + "\r\n";
}

loadNotes();
