import assert from "node:assert/strict";
import { test } from "node:test";
import "./film.mjs";
import { labelOf, secondsOf, timecode } from "../../main/page/timecode.js";

const NTSC_DROP = { nominal: 30, dropFrame: true };
const NTSC = { nominal: 30, dropFrame: false };
const FAST_DROP = { nominal: 60, dropFrame: true };
const PAL = { nominal: 25, dropFrame: false };

/** Pairs of OpenTimelineIO tests/test_opentime.py and npm smpte-timecode 1.3.6. */
for (const [rate, frame, label] of [
  [NTSC_DROP, 0, "00:00:00;00"],
  [NTSC_DROP, 1799, "00:00:59;29"],
  [NTSC_DROP, 1800, "00:01:00;02"],
  [NTSC_DROP, 3597, "00:01:59;29"],
  [NTSC_DROP, 10789, "00:05:59;29"],
  [NTSC_DROP, 10790, "00:06:00;02"],
  [NTSC_DROP, 17981, "00:09:59;29"],
  [NTSC_DROP, 17982, "00:10:00;00"],
  [NTSC_DROP, 107957, "01:00:02;05"],
  [NTSC_DROP, 150606, "01:23:45;06"],
  [NTSC_DROP, 1078920, "10:00:00;00"],
  [NTSC_DROP, 1084319, "10:03:00;05"],
  [NTSC, 1084319, "10:02:23:29"],
  [FAST_DROP, 7195, "00:01:59;59"],
  [FAST_DROP, 35964, "00:10:00;00"],
  [FAST_DROP, 1084319, "05:01:30;03"],
  [FAST_DROP, 2157840, "10:00:00;00"],
  [PAL, 15000, "00:10:00:00"],
]) {
  test(`frame ${frame} at nominal ${rate.nominal}${rate.dropFrame ? " drop-frame" : ""} is ${label}`, () => {
    assert.equal(labelOf(frame, rate), label);
  });
}

/** SMPTE ST 12-1: the first labels of every minute but each tenth are skipped. The day is counted label by label. */
for (const [rate, frames] of [[NTSC_DROP, 2589408], [FAST_DROP, 5178816]]) {
  test(`a day at nominal ${rate.nominal} drop-frame has every label but the skipped ones, in order`, () => {
    const two = (number) => String(number).padStart(2, "0");
    const skipped = rate.nominal / 15;
    let frame = 0;
    for (let second = 0; second < 86400; second++) {
      const minute = Math.floor(second / 60);
      const first = second % 60 === 0 && minute % 10 !== 0 ? skipped : 0;
      const clock = two(Math.floor(minute / 60)) + ":" + two(minute % 60) + ":" + two(second % 60) + ";";
      for (const label of [first, rate.nominal - 1]) {
        assert.equal(labelOf(frame + label - first, rate), clock + two(label));
      }
      frame += rate.nominal - first;
    }
    assert.equal(frame, frames);
    assert.equal(labelOf(frame, rate), "00:00:00;00");
    assert.equal(labelOf(-1, rate), "23:59:59;" + two(rate.nominal - 1));
  });
}

test("film frame 0 has the label that the plan gives the first frame", () => {
  assert.equal(timecode(0), "01:00:00;00");
  assert.equal(timecode(65), "01:00:02;05");
});

test("seconds of frames have two decimals", () => {
  assert.equal(secondsOf(30), "1.00 s");
  assert.equal(secondsOf(1), "0.03 s");
});
