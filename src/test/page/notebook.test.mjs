import assert from "node:assert/strict";
import { test } from "node:test";
import "./film.mjs";

const disk = new Map([["barsheet-notes quay Quay", '[{"frame":45,"text":"Darker"},{"frame":"x","text":"damaged"}]']]);
globalThis.window = { localStorage: { getItem: (key) => disk.get(key) ?? null, setItem: (key, value) => disk.set(key, value) } };
const { noted, notedPanel, notesCsv, notesJson, storeNotes } = await import("../../main/page/notebook.js");
const { compared, compareWith, cutMoved, movedWords } = await import("../../main/page/cuts.js");
const { film } = await import("../../main/page/film.js");

test("notes kept in the browser are taken up, damaged ones left out", () => {
  assert.deepEqual(noted.list, [{ frame: 45, text: "Darker" }]);
});

/** RFC 4180: lines end in CRLF, quotes are doubled. A cell that a spreadsheet would calculate stays text. */
test("notes are saved as a table in the order of the film", () => {
  noted.list.push({ frame: 0, panel: "0", text: '=1+1, "now"' });
  storeNotes();
  assert.equal(notesCsv(), [
    "frame,timecode,place,panel,note",
    `"0","01:00:00;00","before the music","0","'=1+1, ""now"""`,
    '"45","01:00:01;15","bar 1 beat 2","1","Darker"',
    "",
  ].join("\r\n"));
  assert.deepEqual(JSON.parse(disk.get(noted.key)), noted.list);
  assert.equal(JSON.parse(notesJson()).notes[1].place, "bar 1 beat 2");
});

test("a note names the panel that shows its frame now", () => {
  assert.equal(notedPanel({ frame: 0, panel: "9" }), "panel 9, now panel 1");
  assert.equal(notedPanel({ frame: 0 }), "panel 1");
});

const cut = (panel, startFrame, endFrameExclusive) => ({ panel, action: "", startFrame, endFrameExclusive });
const timing = (shots, frameRate = "30000/1001") => JSON.stringify({ format: "barsheet-timing", film: { frameRate }, shots });

test("an earlier make that cannot be compared says why", () => {
  assert.match(compareWith("{"), /not JSON/);
  assert.match(compareWith("{}"), /not the timing\.json/);
  assert.match(compareWith(timing([{ panel: "1" }])), /no first frame/);
  assert.match(compareWith(timing([], "24")), /runs at 24 fps, this film at 30000\/1001/);
});

test("cuts are compared by panel", () => {
  assert.equal(compareWith(timing([cut("1", 0, 90), cut("2", 90, 200), cut("2a", 200, 300)])), "");
  assert.deepEqual(film.shots.map(cutMoved), [false, true, true]);
  assert.equal(compared.words, "2 panels changed, gone: 2a");
  assert.deepEqual([movedWords(5, 3), movedWords(3, 5), movedWords(3, 3)], ["2 f later", "2 f earlier", "as before"]);
});
