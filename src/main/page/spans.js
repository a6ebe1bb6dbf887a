/** Where frames lie in a system of bars. */

import { film, indexAt, startOf } from "./film.js";

/** The score on the page: its bars by index, how many a system has, which one sounds. */
export const score = { systems: [], bars: [], columns: 4, current: null };

/** Where a frame lies in a system, from 0 at its first bar line to 1 at its last. */
export function along(bars, frame) {
  const at = indexAt(bars, startOf, frame);
  const bar = bars[at];
  const into = bar.frames === 0 ? 0 : (frame - bar.start) / bar.frames;
  return (at + Math.max(0, Math.min(1, into))) / score.columns;
}

const percent = (share) => (100 * share).toFixed(3) + "%";

/** Puts a box over the frames it covers. */
export function span(node, bars, start, end) {
  const left = along(bars, start);
  const right = along(bars, end);
  node.style.left = percent(left);
  node.style.width = percent(Math.max(0, right - left));
  return { left, right };
}

export function systemFrames(bars) {
  const first = bars[0];
  const last = bars[bars.length - 1];
  return {
    start: first.index === 0 ? 0 : first.start,
    end: last.index === film.bars.length - 1 ? film.length : last.start + last.frames,
  };
}

export const overlaps = (one, other) => one.start < other.end && one.end > other.start;
