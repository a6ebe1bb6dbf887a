/** The names of openings on the whole artwork: above their openings, none over another. */

import { film } from "./film.js";
import { drawn } from "./page.js";

const NAME_SIZE = 0.34;
const NAME_LINE = 1.1 * NAME_SIZE;
const NAME_LETTER = 0.56 * NAME_SIZE;
const NAME_GAP = 0.12;
/** Lines further up that a name may go where neither above nor below its opening is room. */
const MOST_LINES = 8;

const crosses = (one, other) =>
  one.left < other.right && one.right > other.left && one.top < other.bottom && one.bottom > other.top;

const edges = ([left, top, width, height]) => ({ left, top, right: left + width, bottom: top + height });

/** A name in lines, a new one after each hyphen, at the first free place; above where none is free. */
function namePlace(opening, taken) {
  const lines = opening.name.split(/(?<=-)/);
  const height = lines.length * NAME_LINE;
  const half = (NAME_LETTER * Math.max(...lines.map((line) => line.length))) / 2;
  const { top, bottom, left, right } = edges(opening.rect);
  const middle = (left + right) / 2;
  const at = (y) => ({ left: middle - half, right: middle + half, top: y, bottom: y + height });
  const above = at(top - NAME_GAP - height);
  const further = Array.from({ length: MOST_LINES }, (_, i) => at(above.top - (i + 1) * NAME_LINE));
  const places = [above, at(bottom + NAME_GAP), ...further];
  const free = places.find((place) => place.top >= 0 && place.bottom <= film.artwork.height && !taken.some((other) => crosses(place, other)));
  return { lines, middle, ...(free || above) };
}

/** One drawing for each opening's name, in the order of the openings. */
export function openingNames() {
  const taken = film.openings.map((opening) => edges(opening.rect));
  return film.openings.map((opening) => {
    const { lines, middle, ...place } = namePlace(opening, taken);
    taken.push(place);
    const spans = lines.map((line, i) =>
      drawn("tspan", { x: middle, y: (place.top + (i + 0.85) * NAME_LINE).toFixed(3), text: line }));
    return drawn("text", { class: "opening-name", "font-size": NAME_SIZE }, ...spans);
  });
}
