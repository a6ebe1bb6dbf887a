import assert from "node:assert/strict";
import { test } from "node:test";
import "./film.mjs";
import { film } from "../../main/page/film.js";
import { notes } from "../../main/page/music.js";
import { along, overlaps, score, systemFrames } from "../../main/page/spans.js";

globalThis.IntersectionObserver = class {};
const { motifStrokes, strokesOf } = await import("../../main/page/notation.js");

test("a note's time is the sum of those before it", () => {
  assert.deepEqual(notes.map(({ start }) => start), [100100, 100100, 300300]);
});

test("a frame lies in a system by its share of its bar", () => {
  score.columns = 4;
  assert.deepEqual([0, 30, 60, 90, 105, 210, 290].map((frame) => along(film.bars, frame)), [0, 0, 0.125, 0.25, 0.3125, 0.75, 0.75]);
});

test("the first system reaches back to the film's beginning, the last on to its end", () => {
  assert.deepEqual(systemFrames(film.bars.slice(0, 2)), { start: 0, end: 150 });
  assert.deepEqual(systemFrames(film.bars.slice(2)), { start: 150, end: 300 });
});

test("what only touches does not overlap", () => {
  assert.equal(overlaps({ start: 0, end: 90 }, { start: 90, end: 100 }), false);
  assert.equal(overlaps({ start: 0, end: 91 }, { start: 90, end: 100 }), true);
});

/** 1.001 s at 29.97 fps is frame 30, the first bar line; half a second more is a quarter of the bar. */
test("a note is a stroke from its beginning to its end, the highest on top; drums have none", () => {
  assert.equal(strokesOf(film.bars), "M0.0 0.0H61.5M250.0 100.0H311.5");
});

test("a motif's own notes are drawn over them", () => {
  assert.equal(motifStrokes(film.bars, film.cues[0]), "M0.0 0.0H124.0");
  assert.equal(motifStrokes(film.bars.slice(1), film.cues[0]), "");
});
