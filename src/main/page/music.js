/** The notes of the score, as the film is laid to them. */

import { film, onFilm } from "./film.js";

/** One of `film.notes`: time, length, part, pitch, velocity, times from film frame 0. */
const NOTE = 5;
export const UNITS = 100000;

/** Every note with its time from film frame 0, in order. */
export const notes = [];

onFilm(() => {
  notes.length = 0;
  let soundsAt = 0;
  for (let i = 0; i < film.notes.length; i += NOTE) {
    soundsAt += film.notes[i];
    const [, length, part, pitch, velocity] = film.notes.slice(i, i + NOTE);
    notes.push({ start: soundsAt, length, part, pitch, velocity });
  }
});
