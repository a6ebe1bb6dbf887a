import { film } from "./film.js";

/** The timecode of a film frame, from 0. */
export const timecode = (frame) => labelOf(film.firstLabel + frame, film.rate);

/**
 * The timecode of a frame counted from 00:00:00:00. Drop-frame skips labels, never frames
 * (SMPTE ST 12-1).
 * @param {number} frame
 * @param {{nominal: number, dropFrame: boolean}} rate
 */
export function labelOf(frame, { nominal, dropFrame }) {
  const dropped = dropFrame ? nominal / 15 : 0;
  const perDay = 86400 * nominal - 1296 * dropped;
  const inDay = ((frame % perDay) + perDay) % perDay;
  const label = inDay + skippedLabels(inDay, nominal, dropped);
  const seconds = Math.floor(label / nominal);
  const two = (number) => String(number).padStart(2, "0");
  return two(Math.floor(seconds / 3600)) + ":" + two(Math.floor(seconds / 60) % 60) + ":"
    + two(seconds % 60) + (dropFrame ? ";" : ":") + two(label % nominal);
}

/** Labels that drop-frame skips before a frame of the day. */
function skippedLabels(frame, nominal, dropped) {
  if (dropped === 0) {
    return 0;
  }
  const perMinute = 60 * nominal - dropped;
  const perTen = 600 * nominal - 9 * dropped;
  const inTen = frame % perTen;
  const inThisTen = inTen < dropped ? 0 : dropped * Math.floor((inTen - dropped) / perMinute);
  return 9 * dropped * Math.floor(frame / perTen) + inThisTen;
}

/** Seconds of a number of frames, to two decimals. */
export const secondsOf = (frames) => (frames / film.fps).toFixed(2) + " s";
