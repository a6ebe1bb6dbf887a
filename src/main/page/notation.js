/** The notes of a system as fine strokes, each at its pitch; a motif's own stand out. */

import { film, indexAt, onFilm, startOf } from "./film.js";
import { notes, UNITS } from "./music.js";
import { drawn } from "./page.js";
import { along } from "./spans.js";

/** The pitches between which the notes are drawn. */
export const range = { lowest: 60, highest: 72 };

onFilm(() => {
  const pitches = notes.filter((note) => !film.parts[note.part].drums).map((note) => note.pitch);
  range.lowest = pitches.reduce((least, pitch) => Math.min(least, pitch), 60);
  range.highest = pitches.reduce((most, pitch) => Math.max(most, pitch), 72);
});

const framesOf = (time) => (time / UNITS) * film.fps;

function stroke(bars, start, end, pitch) {
  const from = 1000 * along(bars, framesOf(start));
  const to = Math.max(from + 2, 1000 * along(bars, framesOf(end)) - 1);
  const level = (100 * (range.highest - pitch)) / Math.max(1, range.highest - range.lowest);
  return "M" + from.toFixed(1) + " " + level.toFixed(1) + "H" + to.toFixed(1);
}

export function strokesOf(bars) {
  const last = bars[bars.length - 1];
  const from = (bars[0].start / film.fps) * UNITS;
  const to = ((last.start + last.frames) / film.fps) * UNITS;
  let lines = "";
  for (let i = indexAt(notes, startOf, from - 1); i < notes.length && notes[i].start < to; i++) {
    const note = notes[i];
    if (note.start >= from - 1 && !film.parts[note.part].drums) {
      lines += stroke(bars, note.start, Math.min(to, note.start + note.length), note.pitch);
    }
  }
  return lines;
}

export function motifStrokes(bars, cue) {
  const last = bars[bars.length - 1];
  const end = last.start + last.frames;
  return cue.onsets.map((onset, i) => {
    const next = cue.onsets[i + 1] ?? (cue.end / film.fps) * UNITS;
    const frame = Math.round(framesOf(onset));
    return cue.pitches[i] < 0 || frame < bars[0].start || frame >= end ? "" : stroke(bars, onset, next, cue.pitches[i]);
  }).join("");
}

/** The drawing of a system's notes; filled in when it comes into sight. */
export function notesDrawn(bars) {
  const made = drawn("svg", { class: "notes", viewBox: "0 -6 1000 112", preserveAspectRatio: "none", "aria-hidden": "true" });
  made.fill = () => {
    made.append(drawn("path", { d: strokesOf(bars) }));
    film.cues.filter((cue) => cue.number > 0 && cue.onsets).forEach((cue) => {
      const lines = motifStrokes(bars, cue);
      if (lines) {
        made.append(drawn("path", { d: lines, class: "motif-" + (cue.motif % 2) }));
      }
    });
  };
  inSight.observe(made);
  return made;
}

const inSight = new IntersectionObserver((entries) => {
  for (const { isIntersecting, target } of entries) {
    if (isIntersecting) {
      inSight.unobserve(target);
      target.fill();
    }
  }
}, { rootMargin: "400px" });
