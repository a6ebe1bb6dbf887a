import assert from "node:assert/strict";
import { readFileSync } from "node:fs";
import { test } from "node:test";
import { answersIn, unusedMotif } from "../../main/page/desk/answerwords.js";

/** What the program says, word for word. */
const said = (conversation) => readFileSync(new URL("../resources/org/barsheet/cli/conversations/" + conversation, import.meta.url), "utf8");

const asked = (sentence, tree) => answersIn({ sentence, remedy: "" }, tree);

test("returns that no panel uses are known by the words in which check tells them", () => {
  const line = said("07-cannot-be.txt").split("\n").map((each) => each.replace(/^\W+/, "")).find((each) => each.startsWith("no panel uses"));
  assert.equal(unusedMotif(line), "glimmer");
  assert.equal(unusedMotif("panel 3 gets 1 bar"), undefined);
});

test("a question about the tempo is answered by the value it names", () => {
  assert.deepEqual(asked("is the beat you hear 90 or 180 bpm? 90 is followed; for 180 write bpm: 180 under music"),
    [{ words: "bpm: 180", edits: [{ put: ["music", "bpm"], value: "180" }] }]);
  assert.deepEqual(asked("do bars have 3 or 2 dotted beats? 3/4 is followed; for the other write meter: 6/8 under music"),
    [{ words: "meter: 6/8", edits: [{ put: ["music", "meter"], value: "6/8" }] }]);
});

test("a question about where a bar begins is answered by a pin beside those that are there", () => {
  const sentence = "does bar 17 begin at 0.78 s or 0.28 s? 0.78 s is followed; for the other write pins: [{bar: 17, at: 0.28 s}] under music";
  const pin = { bar: "17", at: "0.28 s" };
  assert.deepEqual(asked(sentence), [{ words: "bar 17 at 0.28 s", edits: [{ put: ["music", "pins"], value: [pin] }] }]);
  const first = { bar: "1", at: "0 s" };
  assert.deepEqual(asked(sentence, { music: { pins: [first] } })[0].edits[0].value, [first, pin]);
});

test("other words are no answers", () => {
  assert.deepEqual(answersIn({ sentence: "panel 3 gets 1 bar", remedy: "move a neighbor, or accept it" }), []);
});
