import assert from "node:assert/strict";
import { test } from "node:test";
import "./film.mjs";
import { barName, beatAt, barAt, exposureAt, film, indexAt, photographName, placeWords, shotAt } from "../../main/page/film.js";
import { barStep, cueStep, goTo, photographStep, shotStep } from "../../main/page/steps.js";

const [opens] = film.shots[1].reveals;

test("the last of a list that begins at or before a number is found as by looking at each", () => {
  for (let size = 1; size < 20; size++) {
    const list = Array.from({ length: size }, (_, i) => 3 * i + (i % 2));
    for (let at = -1; at < 70; at++) {
      const looked = Math.max(0, list.filter((begin) => begin <= at).length - 1);
      assert.equal(indexAt(list, (begin) => begin, at), looked);
    }
  }
});

test("a shot shows its frames from its first to the one before its end", () => {
  assert.deepEqual([0, 89, 90, 209, 210, 299].map((frame) => shotAt(frame).panel), ["1", "1", "2", "2", "3", "3"]);
});

test("a place is said in bars and felt beats, and which time a bar is played", () => {
  assert.deepEqual([29, 30, 44, 45, 149, 150, 209, 210].map(placeWords), [
    "before the music", "bar 1 beat 1", "bar 1 beat 1", "bar 1 beat 2", "bar 2 beat 4",
    "bar 2 time 2 beat 1", "bar 2 time 2 beat 4", "after the music",
  ]);
  assert.equal(barName(film.bars[2]), "2 time 2");
  assert.equal(beatAt(barAt(120), 120), 3);
});

test("an exposure is held until the next begins", () => {
  assert.deepEqual(exposureAt(opens, 101), { index: 0, start: 100, frames: 2, photograph: 1 });
  assert.deepEqual(exposureAt(opens, 102), { index: 1, start: 102, frames: 98, photograph: 2 });
  assert.equal(photographName(opens, 2), "lamp 002");
});

test("steps lead to the next or the one before, never to where one stands", () => {
  assert.deepEqual([barStep(30, 1), barStep(31, -1), barStep(30, -1), barStep(150, 1)], [90, 30, 0, 299]);
  assert.deepEqual([photographStep(100, 1), photographStep(102, -1), photographStep(0, -1)], [102, 100, 0]);
  assert.deepEqual([shotStep(100, 1), shotStep(100, -1), shotStep(250, 1)], [210, 0, 299]);
});

test("cues to step to are counted returns, marks and what a panel sits on", () => {
  assert.deepEqual([cueStep(0, 1), cueStep(45, 1), cueStep(90, 1), cueStep(210, 1)], [45, 90, 210, 299]);
});

test("going somewhere is said", () => {
  goTo(45);
  assert.equal(document.getElementById("said").textContent, "frame 45, bar 1 beat 2");
});
