import assert from "node:assert/strict";
import { afterEach, test } from "node:test";
import "./film.mjs";
import { film } from "../../main/page/film.js";
import { amountsAt, coverOf, handWords, isOnOnes, revealsAt, shownBy, toggleOnes } from "../../main/page/openings.js";

const shot = film.shots[1];
const [opens, closes] = shot.reveals;
const [lamp] = film.openings;
const numbers = (outline) => outline.match(/-?[\d.]+/g).map(Number);

afterEach(() => isOnOnes() && toggleOnes());

test("of two reveals of an opening the one that has begun last is in force", () => {
  assert.deepEqual([90, 100, 179, 180, 209].map((frame) => revealsAt(shot, frame)[0]), [opens, opens, opens, closes, closes]);
  assert.equal(amountsAt(shot, 150).get(0), 90);
  assert.equal(amountsAt(shot, 190).get(0), 0);
});

test("on ones the amount between two photographs is between theirs", () => {
  assert.equal(shownBy(opens, 101).amount, 30);
  toggleOnes();
  assert.equal(shownBy(opens, 101).amount, 60);
  assert.equal(shownBy(opens, 101).words, "60.0°");
  assert.equal(shownBy(opens, 100).amount, 30);
});

test("the hand is told how much more or less to set, as finely as it is set", () => {
  const [movement] = film.movements;
  assert.equal(handWords(movement, 2, 1), "89.5°, 59.5° more, thread");
  assert.equal(handWords(movement, 1, 2), "30.0°, 59.5° less, putty");
  assert.equal(handWords(movement, 1, 1), "30.0°, putty");
});

test("a shut flap covers its opening; its free edge comes back to half its width at 60 degrees", () => {
  assert.deepEqual(numbers(coverOf(lamp, 0).outline), [2, 3, 6, 3, 6, 5, 2, 5]);
  const [hinge, , free] = numbers(coverOf(lamp, 60).outline);
  assert.equal(hinge, 2);
  assert.ok(Math.abs(free - (2 + 4 * Math.cos(Math.PI / 3))) < 1e-9);
});

test("a shutter goes its travel to its side, and no further", () => {
  const shutter = { ...lamp, kind: "slide", side: "right", full: 20, travel: 4 };
  assert.equal(numbers(coverOf(shutter, 10).outline)[0], 4);
  assert.equal(numbers(coverOf(shutter, 40).outline)[0], 6);
});
