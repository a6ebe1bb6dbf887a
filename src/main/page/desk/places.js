/** Places of the music as the plan writes them: what a panel snaps to, and what typing completes to. */

import { barAt, barName, film } from "../film.js";

/** How near a place must be to be snapped to, in shares of a bar, the more telling the further. */
const REACH = { return: 0.3, mark: 0.25, bar: 0.2, beat: 1 };

/** `bar 12`, `bar 12 beat 3`. */
const beatWords = (bar, beat) => "bar " + barName(bar) + (beat ? " beat " + (beat + 1) : "");

/** The printed bar in which a frame lies, in words of the plan. */
const nearWords = (frame) => "near bar " + barAt(frame).number;

/** How the plan asks for a return: by the bar it is near, so that it stays when others come or go. */
function returnWords(cue) {
  const motif = film.motifs[cue.motif].name;
  const twins = film.cues.filter((other) => other.motif === cue.motif && other.number > 0
    && barAt(other.frame) === barAt(cue.frame));
  return twins.length > 1 ? motif + " " + cue.number : motif + " " + nearWords(cue.frame);
}

const cuePlaces = () => film.cues.filter((cue) => cue.number > 0 || cue.kind === "mark").map((cue) =>
  (cue.kind === "mark"
    ? { kind: "mark", frame: cue.frame, words: cue.title, title: cue.title }
    : { kind: "return", frame: cue.frame, words: returnWords(cue), title: cue.title }));

const beatPlaces = () => film.bars.flatMap((bar) => bar.beats.map((frame, beat) =>
  ({ kind: beat ? "beat" : "bar", frame, words: beatWords(bar, beat), title: beatWords(bar, beat) })));

/** Every place in order; of several on one frame the most telling first. */
export function allPlaces() {
  const order = { return: 0, mark: 1, bar: 2, beat: 3 };
  return [...cuePlaces(), ...beatPlaces()].sort((one, other) => one.frame - other.frame || order[one.kind] - order[other.kind]);
}

/** The place that a frame snaps to: of those in reach the most telling, or else the nearest. */
export function placeNear(frame) {
  const bar = barAt(frame);
  const places = allPlaces();
  const away = (place) => Math.abs(place.frame - frame) / Math.max(1, bar.frames);
  for (const kind of ["return", "mark", "bar"]) {
    const near = places.filter((place) => place.kind === kind && away(place) <= REACH[kind]);
    if (near.length) {
      return near.reduce((best, place) => (away(place) < away(best) ? place : best));
    }
  }
  return places.reduce((best, place) => (away(place) < away(best) ? place : best));
}

/** The place before or after a frame. */
export function placeStep(frame, way) {
  const places = allPlaces();
  return way > 0 ? places.find((place) => place.frame > frame) : places.filter((place) => place.frame < frame).pop();
}

/** What a place typed so far may become, as the grammar of places allows. */
export function completions() {
  const motifs = film.motifs.flatMap(({ name }) => [name, name + " near bar "]);
  const cues = cuePlaces().map(({ words }) => words);
  const bars = film.bars.map((bar) => "bar " + barName(bar));
  return [...new Set([...motifs, ...cues, ...bars])];
}
