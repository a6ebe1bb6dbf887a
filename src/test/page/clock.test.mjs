import assert from "node:assert/strict";
import { beforeEach, test } from "node:test";
import "./film.mjs";
import {
  clock, frameAtSeconds, onFrame, pause, play, secondsAtFrame, seek, setSource, step, toggleLoop,
} from "../../main/page/clock.js";

/** A source whose time the test sets, and the browser's frames, shown when the test says so. */
const source = { calls: [], now: 0, start: (...begin) => source.calls.push(begin), stop: () => source.calls.push("stop"), seconds: () => source.now };
let frames = [];
const shown = [];

globalThis.window = { requestAnimationFrame: (next) => frames.push(next) };
onFrame((frame) => shown.push(frame));

function frame(seconds) {
  source.now = seconds;
  const due = frames;
  frames = [];
  due.forEach((next) => next());
}

beforeEach(() => {
  pause();
  frames = [];
  clock.loop = null;
  clock.speed = 1;
  clock.source = source;
  seek(0);
  source.calls.length = 0;
  shown.length = 0;
});

test("every frame of a day is the frame shown when it begins, and until the next begins", () => {
  for (let frame = 0; frame < 2589408; frame += 7) {
    assert.equal(frameAtSeconds(secondsAtFrame(frame)), frame);
    assert.equal(frameAtSeconds(secondsAtFrame(frame + 0.999)), frame);
  }
});

test("the clock stays inside the film", () => {
  seek(-5);
  assert.equal(clock.frame, 0);
  seek(1000);
  assert.equal(clock.frame, 299);
  step(-1);
  assert.equal(clock.frame, 298);
  assert.deepEqual(shown, [0, 299, 298]);
});

test("while it plays, the frame shown is the one that sounds", () => {
  seek(40);
  play();
  assert.deepEqual(source.calls, [[secondsAtFrame(40), 1]]);
  frame(secondsAtFrame(43));
  assert.equal(clock.frame, 43);
  frame(secondsAtFrame(43.5));
  assert.deepEqual(shown, [40, 40, 43]);
});

test("it stands still on the last frame, and plays from the beginning after that", () => {
  seek(298);
  play();
  frame(secondsAtFrame(300));
  assert.equal(clock.frame, 299);
  assert.equal(clock.playing, false);
  assert.equal(source.calls.at(-1), "stop");
  play();
  assert.deepEqual(source.calls.at(-1), [0, 1]);
});

test("a shot in a loop begins anew at its end", () => {
  seek(100);
  toggleLoop();
  assert.deepEqual(clock.loop, { start: 90, end: 210 });
  play();
  frame(secondsAtFrame(210));
  assert.equal(clock.frame, 90);
  assert.deepEqual(source.calls.at(-1), [secondsAtFrame(90), 1]);
});

test("going elsewhere leaves the loop", () => {
  seek(100);
  toggleLoop();
  seek(209);
  assert.notEqual(clock.loop, null);
  seek(210);
  assert.equal(clock.loop, null);
});

test("another source goes on where the one before stopped", () => {
  const other = { ...source, begun: [], start: (...begin) => other.begun.push(begin) };
  seek(60);
  play();
  setSource(other);
  assert.equal(source.calls.at(-1), "stop");
  assert.deepEqual(other.begun, [[secondsAtFrame(60), 1]]);
});
