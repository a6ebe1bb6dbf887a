/** Where a step leads: to bar lines, cues, photographs and shots. */

import { clock, seek } from "./clock.js";
import { film, placeWords, shotAt, startOf } from "./film.js";
import { announce } from "./page.js";

/** The bar line before or after a frame. */
export function barStep(frame, direction) {
  const starts = film.bars.map(startOf);
  return direction > 0
    ? starts.find((start) => start > frame) ?? film.last
    : starts.filter((start) => start < frame).pop() ?? 0;
}

/** The accent of the cue before or after a frame. */
export function cueStep(frame, direction) {
  const accents = film.steps.map((cue) => cue.accent).filter((accent) => accent >= 0 && accent <= film.last);
  return direction > 0
    ? accents.find((accent) => accent > frame) ?? film.last
    : accents.filter((accent) => accent < frame).pop() ?? 0;
}

/** The frame on which the photograph before or after comes under the camera. */
export function photographStep(frame, direction) {
  return direction > 0
    ? film.photographFrames.find((start) => start > frame) ?? film.last
    : film.photographFrames.filter((start) => start < frame).pop() ?? 0;
}

/** The first frame of the shot before or after a frame's shot. */
export function shotStep(frame, direction) {
  const next = film.shots[shotAt(frame).index + direction];
  return next ? next.start : direction > 0 ? film.last : 0;
}

export function goTo(frame) {
  seek(frame);
  announce("frame " + clock.frame + ", " + placeWords(clock.frame));
}
