/** Photographs in the place of drawings, wherever they were taken. */

import { exposureAt, film } from "./film.js";
import { box, revealsAt } from "./openings.js";
import { drawn } from "./page.js";

/** Around its hole a photograph shows its flap: so much of the hole's size, where others lie below. */
const MARGIN = 0.35;

const layers = [];
const group = drawn("g", { id: "photographs" });

export const photographsDrawn = () => group;

function layer(index) {
  while (layers.length <= index) {
    const id = "photograph-" + layers.length;
    const key = drawn("image", { preserveAspectRatio: "xMidYMid slice" });
    const window = drawn("path");
    const image = drawn("image", { preserveAspectRatio: "xMidYMid slice", mask: "url(#" + id + "-key)" });
    const whole = drawn("g", { "clip-path": "url(#" + id + "-window)" }, image);
    group.append(
      drawn("mask", { id: id + "-key", maskUnits: "userSpaceOnUse", x: -1e4, y: -1e4, width: 2e4, height: 2e4 }, key),
      drawn("clipPath", { id: id + "-window" }, window), whole);
    layers.push({ id, key, window, image, whole });
  }
  return layers[index];
}

function place(node, address, [left, top, width, height]) {
  if (node.getAttribute("href") !== address) {
    node.setAttribute("href", address);
  }
  Object.entries({ x: left, y: top, width, height }).forEach(([name, value]) => node.setAttribute(name, value));
}

/** The photograph of a reveal on a frame, if it was taken, and where it lies in squares. */
export function photographOf(reveal, frame) {
  const movement = film.movements[reveal.movement];
  const number = exposureAt(reveal, frame).photograph;
  const address = movement.photographs ? movement.photographs[number] : "";
  if (!address) {
    return undefined;
  }
  const [left, top, width, height] = movement.view;
  const { rect } = film.openings[reveal.opening];
  const across = rect[0] - movement.about[0];
  const down = rect[1] - movement.about[1];
  return { address, key: movement.keys[number], rect: [left + across, top + down, width, height] };
}

function around([left, top, width, height]) {
  const margin = MARGIN * Math.max(width, height);
  return [left - margin, top - margin, width + 2 * margin, height + 2 * margin];
}

function show(shown, opening, index, isWhole) {
  const { id, key, window, image, whole } = layer(index);
  place(image, shown.address, shown.rect);
  window.setAttribute("d", box(isWhole ? shown.rect : around(film.openings[opening].rect)));
  if (shown.key) {
    place(key, shown.key, shown.rect);
    image.setAttribute("mask", "url(#" + id + "-key)");
  } else {
    image.removeAttribute("mask");
  }
  whole.removeAttribute("display");
}

/**
 * Puts the photographs of a frame over the drawings. The first one fills the field, others show
 * what is about their holes; where one of several is missing, so does the first.
 * @returns {Set<number>} openings that photographs show
 */
export function showPhotographs(shot, frame, mode) {
  const reveals = mode === "camera" ? revealsAt(shot, frame) : [];
  const shown = reveals.map((reveal) => [reveal.opening, photographOf(reveal, frame)]).filter(([, one]) => one);
  const isWhole = shown.length === reveals.length;
  shown.forEach(([opening, one], index) => show(one, opening, index, index === 0 && isWhole));
  layers.slice(shown.length).forEach(({ whole }) => whole.setAttribute("display", "none"));
  return new Set(shown.map(([opening]) => opening));
}
