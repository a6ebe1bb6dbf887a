/** An earlier make beside this one: old and new cuts together, moved cuts marked. */

import { film, onFilm } from "./film.js";
import { count } from "./page.js";

export const compared = { shots: [], words: "" };

export const cutBefore = (panel) => compared.shots.find((shot) => shot.panel === panel);

/** Whether a panel begins or ends elsewhere than it did, or is new. */
export function cutMoved(shot) {
  const before = cutBefore(shot.panel);
  return !before || before.start !== shot.start || before.end !== shot.end;
}

/** `12 f later`, `3 f earlier`, `as before`. */
export function movedWords(now, before) {
  const by = now - before;
  return by === 0 ? "as before" : Math.abs(by) + " f " + (by > 0 ? "later" : "earlier");
}

const hasFrames = (shot) => Number.isInteger(shot?.startFrame) && Number.isInteger(shot?.endFrameExclusive);

/**
 * Takes an earlier `timing.json`.
 * @param {string} text of the file
 * @returns {string} what is wrong with it, or ""
 */
export function compareWith(text) {
  let earlier;
  try {
    earlier = JSON.parse(text);
  } catch (damaged) {
    return "The file is damaged: this is not JSON.";
  }
  if (earlier?.format !== "barsheet-timing" || !Array.isArray(earlier.shots)) {
    return "This is not the timing.json of a film.";
  }
  if (typeof earlier.film?.frameRate !== "string") {
    return "The file is damaged: it doesn't give the film's frame rate. Choose the timing.json that make wrote.";
  }
  if (!earlier.shots.every(hasFrames)) {
    return "The file is damaged: a shot in it has no first frame or no end. Choose the timing.json that make wrote.";
  }
  const rate = film.rate.numerator + (film.rate.denominator === 1 ? "" : "/" + film.rate.denominator);
  if (earlier.film.frameRate !== rate) {
    return "It runs at " + earlier.film.frameRate + " fps, this film at " + rate + ": their frames can't be compared.";
  }
  takeCuts(earlier.shots.map((shot) =>
    ({ panel: String(shot.panel), action: String(shot.action), start: Number(shot.startFrame), end: Number(shot.endFrameExclusive) })));
  return "";
}

/** Takes cuts to compare with: panel, action, first frame, end. */
function takeCuts(shots) {
  compared.shots = shots;
  const gone = compared.shots.filter((before) => !film.shots.some((shot) => shot.panel === before.panel));
  const moved = film.shots.filter(cutMoved).length;
  compared.words = moved === 0 && gone.length === 0
    ? "√ Every cut is where it was."
    : count(moved, "panel") + " changed" + (gone.length ? ", gone: " + gone.map((shot) => shot.panel).join(", ") : "");
}

onFilm(() => {
  if (film.earlier) {
    takeCuts(film.earlier);
  }
});
