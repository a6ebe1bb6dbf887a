/** How far every opening stands open, and how it looks so. */

import { exposureAt, film, photographName } from "./film.js";

/** Whether photographs are drawn as if there were one for every frame. */
let onOnes = false;

export const isOnOnes = () => onOnes;

export function toggleOnes() {
  onOnes = !onOnes;
}

/** What a reveal shows on a frame: the photograph, and the amount it stands at. */
export function shownBy(reveal, frame) {
  const movement = film.movements[reveal.movement];
  const { amounts } = movement;
  const now = exposureAt(reveal, frame);
  let amount = amounts[now.photograph];
  let words = setWords(movement, now.photograph);
  const next = reveal.exposures[3 * (now.index + 1) + 2];
  if (onOnes && next !== undefined && now.frames <= reveal.shown && frame > now.start) {
    amount += ((amounts[next] - amount) * (frame - now.start)) / now.frames;
    words = amount.toFixed(1) + sign(movement);
  }
  return { photograph: now.photograph, name: photographName(reveal, now.photograph), amount, words, now };
}

export const sign = ({ unit }) => (unit === "deg" ? "°" : " " + unit);

/** `75.5°`, `12.0 mm`: what the hand sets for a photograph. */
export const setWords = (movement, photograph) => movement.sets[photograph] + sign(movement);

/** The same, how much more or less that is than another photograph, and what holds it. */
export function handWords(movement, photograph, from) {
  const { sets, holds } = movement;
  const by = Number(sets[photograph]) - Number(sets[from]);
  const places = Math.max(...[photograph, from].map((each) => (sets[each].split(".")[1] || "").length));
  const step = by === 0 ? "" : ", " + Math.abs(by).toFixed(places) + sign(movement) + (by > 0 ? " more" : " less");
  return setWords(movement, photograph) + step + holds[photograph];
}

export const beginsAt = (reveal) => reveal.exposures[0];

/**
 * The reveal in force of every opening that moves in a shot: where it opens and later closes, the
 * one that has begun last, and before any has begun the first.
 */
export function revealsAt(shot, frame) {
  const inForce = new Map();
  for (const reveal of shot.reveals) {
    const other = inForce.get(reveal.opening);
    const [early, late] = other && beginsAt(other) > beginsAt(reveal) ? [reveal, other] : [other || reveal, reveal];
    inForce.set(reveal.opening, beginsAt(late) <= frame ? late : early);
  }
  return [...inForce.values()];
}

/**
 * The amount of every opening that is not closed on a frame.
 * @returns {Map<number, number>} by the opening's place in the list
 */
export function amountsAt(shot, frame) {
  const amounts = new Map(shot.open);
  for (const reveal of revealsAt(shot, frame)) {
    amounts.set(reveal.opening, shownBy(reveal, frame).amount);
  }
  return amounts;
}

/** Free edges of a flap stand nearer to the camera and look so much longer at a right angle. */
const NEARER = 0.16;

/** The corners of a flap at an angle, from the hinge on, as the camera above sees them. */
function flapCorners([left, top, width, height], side, degrees) {
  const angle = (degrees * Math.PI) / 180;
  const reach = Math.cos(angle);
  const more = NEARER * Math.sin(angle);
  const right = left + width;
  const bottom = top + height;
  if (side === "left" || side === "right") {
    const hinge = side === "left" ? left : right;
    const free = hinge + (side === "left" ? 1 : -1) * width * reach;
    const grown = (height * more) / 2;
    return [[hinge, top], [free, top - grown], [free, bottom + grown], [hinge, bottom]];
  }
  const hinge = side === "top" ? top : bottom;
  const free = hinge + (side === "top" ? 1 : -1) * height * reach;
  const grown = (width * more) / 2;
  return [[left, hinge], [left - grown, free], [right + grown, free], [right, hinge]];
}

const path = (corners) => "M" + corners.map((corner) => corner.join(" ")).join("L") + "Z";

export const box = ([left, top, width, height]) =>
  path([[left, top], [left + width, top], [left + width, top + height], [left, top + height]]);

/** The way a shutter has gone, in squares. */
function slideBy(opening, share) {
  const way = opening.travel * share;
  return { left: [-way, 0], right: [way, 0], top: [0, -way], bottom: [0, way] }[opening.side];
}

/**
 * The outline of what covers an opening.
 * @returns {{outline: string, solid: number, height: number}} path, opacity, and how high over the
 *     paper it stands, 0 to 1
 */
export function coverOf(opening, amount) {
  const share = opening.full > 0 ? opening.share * Math.max(0, Math.min(1, amount / opening.full)) : 0;
  const [left, top, width, height] = opening.rect;
  if (opening.kind === "flap") {
    const outline = path(flapCorners(opening.rect, opening.side, amount));
    return { outline, solid: 1, height: Math.sin((amount * Math.PI) / 180) };
  }
  if (opening.kind === "slide") {
    const [x, y] = slideBy(opening, share);
    return { outline: box([left + x, top + y, width, height]), solid: 1, height: 0.1 };
  }
  if (opening.kind === "iris") {
    const hole = box([left + (width * (1 - share)) / 2, top + (height * (1 - share)) / 2, width * share, height * share]);
    return { outline: box(opening.rect) + hole, solid: 1, height: 0 };
  }
  if (opening.kind === "lift") {
    const grown = 0.12 * share;
    const outline = box([left - (width * grown) / 2, top - (height * grown) / 2, width * (1 + grown), height * (1 + grown)]);
    return { outline, solid: 1 - 0.85 * share, height: share };
  }
  return { outline: box(opening.rect), solid: 1 - 0.85 * share, height: 0 };
}
