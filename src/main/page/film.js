import { byId, count } from "./page.js";

/** Everything the page knows, laid down by the program that wrote it. */
export const film = JSON.parse(byId("film").textContent);

const laying = [];

/** Does what follows from the film: now, and whenever another one is laid in its place. */
export function onFilm(derive) {
  laying.push(derive);
  derive();
}

/** Lays another film in the place of this one. */
export function layFilm(other) {
  Object.keys(film).forEach((key) => delete film[key]);
  Object.assign(film, other);
  laying.forEach((derive) => derive());
}

/**
 * The last of a list that begins at or before a frame; the first where none does.
 * @param {object[]} list in order
 * @param {(item: object) => number} startOf
 */
export function indexAt(list, startOf, frame) {
  let low = 0;
  let high = list.length - 1;
  while (low < high) {
    const middle = (low + high + 1) >> 1;
    if (startOf(list[middle]) <= frame) {
      low = middle;
    } else {
      high = middle - 1;
    }
  }
  return low;
}

export const startOf = (item) => item.start;

/** The shot that shows a frame. */
export const shotAt = (frame) => film.shots[indexAt(film.shots, startOf, frame)];

/** The bar that sounds on a frame: the first before the music, the last after it. */
export const barAt = (frame) => film.bars[indexAt(film.bars, startOf, frame)];

/** The felt beat that sounds on a frame, from 1. */
export const beatAt = (bar, frame) => indexAt(bar.beats, (beat) => beat, frame) + 1;

/** `12`, or `12 time 2` where a bar is played again. */
export const barName = (bar) => bar.number + (bar.time > 1 ? " time " + bar.time : "");

/** `bar 12 beat 3`, or what goes on before and after the music. */
export function placeWords(frame) {
  if (film.bars.length === 0 || frame < film.bars[0].start) {
    return "before the music";
  }
  const bar = barAt(frame);
  if (frame >= bar.start + bar.frames) {
    return "after the music";
  }
  return "bar " + barName(bar) + " beat " + beatAt(bar, frame);
}

/** The exposure of a reveal at a frame: its first frame, how many frames, which photograph. */
export function exposureAt(reveal, frame) {
  const list = reveal.exposures;
  let low = 0;
  let high = list.length / 3 - 1;
  while (low < high) {
    const middle = (low + high + 1) >> 1;
    if (list[3 * middle] <= frame) {
      low = middle;
    } else {
      high = middle - 1;
    }
  }
  return { index: low, start: list[3 * low], frames: list[3 * low + 1], photograph: list[3 * low + 2] };
}

/** A photograph's permanent name, `small-lamp 014`. */
export function photographName(reveal, photograph) {
  return film.movements[reveal.movement].name + " " + String(photograph).padStart(3, "0");
}

onFilm(() => {
  /** Frames in a second, as a number for clocks. */
  film.fps = film.rate.numerator / film.rate.denominator;
  film.last = film.length - 1;
  film.shots.forEach((shot, index) => {
    shot.index = index;
    shot.seen = film.appearances.filter((appearance) => appearance.shot === index);
  });
  film.bars.forEach((bar, index) => {
    bar.index = index;
  });

  /** Cues somebody would step to: counted returns, marks and whatever a panel sits on. */
  film.steps = film.cues
    .filter((cue) => cue.shot !== undefined || cue.kind === "mark" || cue.number > 0)
    .sort((one, other) => one.accent - other.accent);

  /** Every frame on which another photograph comes under the camera, in order. */
  film.photographFrames = [...new Set(film.shots.flatMap((shot) => shot.reveals.flatMap((reveal) =>
    reveal.exposures.filter((_, i) => i % 3 === 0))))].sort((one, other) => one - other);
});

/** What the film is and what it was made from, in a line. */
export function subtitle() {
  const versions = film.inputs.map((input) => input.role + " " + input.version).join(" · ");
  return [film.rate.words, film.duration, count(film.shots.length, "panel"), film.taken, film.ticked, versions].filter(Boolean).join(" · ");
}
