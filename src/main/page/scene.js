/** What is seen: the artwork through the camera, the panel's drawing, or the whole artwork. */

import { film, onFilm, shotAt } from "./film.js";
import { openingNames } from "./names.js";
import { amountsAt, box, coverOf } from "./openings.js";
import { byId, drawn, element, say } from "./page.js";
import { photographsDrawn, showPhotographs } from "./photographs.js";

export const scene = { mode: "camera", svg: null, parts: {}, covers: [], shot: null };

const WHOLE = [0, 0, 1, 1];

onFilm(() => WHOLE.splice(2, 2, film.artwork.width, film.artwork.height));

/** The field that the camera sees on a frame: left, top, width, height in squares. */
function fieldAt(shot, frame) {
  if (!shot.from) {
    return WHOLE;
  }
  const at = 4 * (frame - shot.start);
  return shot.fields ? shot.fields.slice(at, at + 4) : shot.from;
}

function image(id) {
  return drawn("image", { id, preserveAspectRatio: "none", class: "drawing" });
}

function place(node, drawing, [left, top, width, height]) {
  if (drawing === undefined) {
    node.setAttribute("visibility", "hidden");
    return;
  }
  node.setAttribute("visibility", "visible");
  if (node.dataset.drawing !== String(drawing)) {
    node.dataset.drawing = drawing;
    node.setAttribute("href", film.drawings[drawing]);
  }
  Object.entries({ x: left, y: top, width, height })
    .forEach(([name, value]) => node.setAttribute(name, value));
}

function cover(opening, index, name) {
  const parts = {
    hole: drawn("path", { d: box(opening.rect), class: "hole" }),
    who: drawn("text", { class: "who", x: opening.rect[0] + opening.rect[2] / 2, y: opening.rect[1] + opening.rect[3] * 0.58 }),
    seat: drawn("path", { d: box(opening.rect), class: "seat" }),
    shadow: drawn("path", { class: "shadow" }),
    flap: drawn("path", { class: "flap", "fill-rule": "evenodd" }),
  };
  parts.group = drawn("g", { "data-opening": index }, parts.hole, parts.seat, parts.who, parts.shadow, parts.flap, name);
  scene.covers.push(parts);
  return parts.group;
}

/** Builds the frame. */
export function buildScene() {
  scene.covers = [];
  scene.shot = null;
  const paper = drawn("path", { d: box(WHOLE), class: "sheet" });
  const squares = drawn("path", { d: graphPaper(), class: "squares" });
  scene.parts = { whole: image("whole-drawing"), own: image("own-drawing"), panel: image("panel-drawing") };
  scene.parts.openings = drawn("g", {}, ...openingNames().map((name, index) => cover(film.openings[index], index, name)));
  scene.parts.shade = drawn("path", { class: "shade", "fill-rule": "evenodd" });
  scene.parts.field = drawn("path", { class: "field" });
  scene.parts.artwork = drawn("g", {}, paper, scene.parts.whole, squares, scene.parts.own,
    scene.parts.openings, photographsDrawn(), scene.parts.shade, scene.parts.field);
  const light = drawn("radialGradient", { id: "light" },
    drawn("stop", { offset: "0", "stop-color": "#FFF3CF" }), drawn("stop", { offset: "1", class: "light-edge" }));
  scene.svg = drawn("svg", { role: "img", preserveAspectRatio: "xMidYMid meet" }, light,
    scene.parts.artwork, scene.parts.panel);
  const [cloth, inside] = film.artwork.palette;
  scene.svg.style.setProperty("--cloth", cloth ? "#" + cloth : "#5B7F95");
  scene.svg.style.setProperty("--inside", inside ? "#" + inside : "#E9B949");
  scene.slate = element("div", { id: "slate", hidden: true }, element("b"), element("span"));
  byId("frame").replaceChildren(scene.svg, scene.slate);
  byId("frame").style.setProperty("--shape", film.width / film.height);
}

function graphPaper() {
  let lines = "";
  for (let x = 1; x < film.artwork.width; x++) {
    lines += "M" + x + " 0V" + film.artwork.height;
  }
  for (let y = 1; y < film.artwork.height; y++) {
    lines += "M0 " + y + "H" + film.artwork.width;
  }
  return lines;
}

/** A panel that nothing is drawn for yet is named in the frame instead, but not over the whole artwork. */
function nameUndrawn(shot, mode) {
  const [number, action] = scene.slate.children;
  scene.slate.hidden = !shot.undrawn || mode === "map";
  say(number, shot.panel);
  say(action, shot.action);
}

/** Puts the drawings of a shot in their places. */
function dressShot(shot) {
  place(scene.parts.whole, shot.whole, WHOLE);
  place(scene.parts.own, shot.fields ? undefined : shot.drawing, shot.from || WHOLE);
  place(scene.parts.panel, shot.drawing, [0, 0, film.width, film.height]);
}

/** Who is seen in an opening on a frame, by name. */
function seenIn(shot, opening, frame) {
  return shot.seen
    .filter((each) => each.opening === opening && frame >= each.start && frame < each.end)
    .map((each) => film.performers[each.performer].name)
    .join(", ");
}

/**
 * Draws every opening at its planned state. What the camera sees in a drawing already is not painted
 * over: only openings that move in the shot, or stand otherwise than in the drawing.
 */
function drawOpenings(shot, frame, mode) {
  const photographed = showPhotographs(shot, frame, mode);
  const amounts = amountsAt(shot, frame);
  film.openings.forEach((opening, index) => {
    const amount = amounts.get(index) || 0;
    const parts = scene.covers[index];
    parts.group.classList.toggle("as-drawn", mode === "camera" && shot.asDrawn.includes(index));
    parts.group.classList.toggle("taken", photographed.has(index));
    const { outline, solid, height } = coverOf(opening, amount);
    parts.flap.setAttribute("d", outline);
    parts.flap.setAttribute("fill-opacity", solid);
    parts.shadow.setAttribute("d", outline);
    parts.shadow.setAttribute("transform", "translate(" + (0.05 + 0.25 * height) + " " + (0.06 + 0.3 * height) + ")");
    parts.shadow.setAttribute("opacity", 0.3 * solid);
    parts.group.classList.toggle("ajar", amount > 0);
    const who = amount > 0 ? seenIn(shot, index, frame) : "";
    say(parts.who, who);
    parts.group.classList.toggle("seen", who !== "");
    const size = Math.min(opening.rect[3] * 0.16, (opening.rect[2] * 1.5) / Math.max(6, who.length));
    parts.who.setAttribute("font-size", size.toFixed(3));
  });
}

/** Shows a frame in the mode chosen. */
export function drawFrame(frame) {
  const shot = shotAt(frame);
  if (scene.shot !== shot) {
    scene.shot = shot;
    dressShot(shot);
  }
  const mode = modeFor(shot);
  nameUndrawn(shot, mode);
  const field = fieldAt(shot, frame);
  scene.svg.setAttribute("class", "mode-" + mode);
  const view = mode === "drawing" ? [0, 0, film.width, film.height] : mode === "map" ? WHOLE : field;
  scene.svg.setAttribute("viewBox", view.map((value) => value.toFixed(4)).join(" "));
  drawOpenings(shot, frame, mode);
  scene.parts.field.setAttribute("d", box(field));
  scene.parts.shade.setAttribute("d", box(WHOLE) + box(field));
  scene.svg.setAttribute("aria-label", "Panel " + shot.panel + ", " + shot.action);
}

/** A panel without a drawing is shown through the camera. */
const modeFor = (shot) => (scene.mode === "drawing" && shot.drawing === undefined ? "camera" : scene.mode);
