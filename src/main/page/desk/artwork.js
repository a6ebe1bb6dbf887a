/** The openings of the artwork: drawn and moved on the squared map, or typed in squares. */

import { clock } from "../clock.js";
import { film } from "../film.js";
import { box } from "../openings.js";
import { button, byId, drawn, element } from "../page.js";
import { addTab, reader } from "../reader.js";
import { drawFrame, scene } from "../scene.js";
import { chosenField, put, typedField } from "./fields.js";
import { ask, desk, tryOut } from "./live.js";
import { showOutcome } from "./outcome.js";

/** What is drawn or moved keeps to half squares. */
const SNAP = 0.5;
const CORNER = 0.5;
const SIDES = ["left", "right", "top", "bottom"].map((each) => [each, each]);
const KEYS = ["left", "top", "width", "height"];

const held = { way: null, outcome: null };

const round = (value) => Math.round(value / SNAP) * SNAP;

const words = (value) => String(Math.round(1000 * value) / 1000);

async function make(edits) {
  const told = await ask({ edits });
  if (held.outcome) {
    showOutcome(held.outcome, told, edits);
  }
  return told;
}

const modelChoices = () => Object.keys(desk.tree?.artwork?.models ?? {}).map((each) => [each, each]);

function openingPart(name, typed, index) {
  const way = ["openings", name];
  const id = "opening-" + index + "-";
  const field = (key) => typedField({ id: id + key, words: key, small: true }, [...way, key], typed[key], make);
  const moves = ["hinge", "slides", "lifts", "brightens", "iris"].find((key) => typed[key] !== undefined) ?? "hinge";
  const how = moves === "hinge" || moves === "slides"
    ? [chosenField({ id: id + "how", words: moves, choices: SIDES }, [...way, moves], typed[moves], make)]
    : [typedField({ id: id + "how", words: moves, small: true }, [...way, moves], typed[moves], make)];
  const to = moves === "hinge" ? [typedField({ id: id + "to", words: "to", small: true, hint: "90 deg" }, [...way, "to"], typed.to, make)] : [];
  return element("details", { id: id + "part" },
    element("summary", { text: name + " · " + KEYS.map((key) => typed[key]).join(", ") }),
    element("div", { class: "fields" }, ...KEYS.map(field), ...how, ...to,
      chosenField({ id: id + "model", words: "model", choices: [["", "the artwork"], ...modelChoices()] }, [...way, "model"], typed.model, make)),
    button("Take out", "Take this opening out of the plan", () => make([{ remove: way }]), { class: "small", id: id + "remove" }));
}

const build = () => {
  held.outcome = held.outcome ?? element("div", { class: "outcome", role: "status" });
  const openings = Object.entries(desk.tree?.openings ?? {});
  return element("div", { class: "panel-form" },
    element("p", { class: "deeds" }, button("Add an opening", "In the middle of the artwork", addInTheMiddle, { class: "first", id: "add-opening" })),
    element("p", { class: "quiet", text: "Or draw a rectangle on the artwork above; drag an opening to move it, its lower right corner to size it. All in squares of the graph paper." }),
    held.outcome, ...openings.map(([name, typed], i) => openingPart(name, typed, i)));
};

addTab("artwork", () => "Artwork", { build, show: () => {} });

function freeName() {
  let number = film.openings.length + 1;
  while (desk.tree?.openings?.["opening-" + number]) {
    number++;
  }
  return "opening-" + number;
}

function newOpening([left, top, width, height]) {
  const rect = { left: words(left), top: words(top), width: words(width), height: words(height) };
  return [{ put: ["openings", freeName()], value: { ...rect, hinge: "left", to: "90 deg" } }];
}

const addInTheMiddle = () =>
  make(newOpening([round(film.artwork.width / 2 - 1), round(film.artwork.height / 2 - 1), 2, 2]));

/** The place of a pointer on the artwork, in squares. */
function squareAt({ clientX, clientY }) {
  const { x, y } = new DOMPoint(clientX, clientY).matrixTransform(scene.svg.getScreenCTM().inverse());
  return [x, y];
}

/** What a press on the map takes hold of: an opening, its corner, or free paper. */
function grip([x, y]) {
  for (const [index, { rect: [left, top, width, height] }] of film.openings.entries()) {
    const [right, bottom] = [left + width, top + height];
    if (Math.hypot(x - right, y - bottom) < CORNER) {
      return { index, corner: true };
    }
    if (x >= left && x <= right && y >= top && y <= bottom) {
      return { index };
    }
  }
  return {};
}

function rectNow([x, y]) {
  const [fromX, fromY] = held.from;
  const { rect } = film.openings[held.index] ?? {};
  if (!rect) {
    return [round(Math.min(x, fromX)), round(Math.min(y, fromY)), Math.max(SNAP, round(Math.abs(x - fromX))), Math.max(SNAP, round(Math.abs(y - fromY)))];
  }
  const [left, top, width, height] = rect;
  return held.corner
    ? [left, top, Math.max(SNAP, round(x) - left), Math.max(SNAP, round(y) - top)]
    : [round(left + x - fromX), round(top + y - fromY), width, height];
}

function editsOf(rect) {
  const opening = film.openings[held.index];
  if (!opening) {
    return newOpening(rect);
  }
  return KEYS.flatMap((key, i) => (rect[i] === opening.rect[i] ? [] : [put(["openings", opening.name, key], words(rect[i]))]));
}

function pressed(event) {
  if (scene.mode !== "map" || event.button !== 0 || reader.tab !== "artwork") {
    return;
  }
  Object.assign(held, { way: "drag", from: squareAt(event), index: undefined, corner: false, rect: null }, grip(squareAt(event)));
  held.ghost = drawn("path", { class: "ghost" });
  scene.svg.append(held.ghost);
  byId("frame").setPointerCapture(event.pointerId);
}

function moved(event) {
  if (held.way !== "drag") {
    return;
  }
  const rect = rectNow(squareAt(event));
  if (String(rect) !== String(held.rect)) {
    held.rect = rect;
    held.ghost.setAttribute("d", box(rect));
    window.clearTimeout(held.timer);
    held.timer = window.setTimeout(foresee, 120);
  }
}

/** Says what is wrong with a place while an opening is drawn. */
async function foresee() {
  const { rect, ghost } = held;
  const edits = editsOf(rect);
  const told = await tryOut({ edits });
  if (held.rect === rect) {
    ghost.classList.toggle("refused", told.refused !== undefined || (told.found ?? []).length > 0);
    showOutcome(held.outcome, told, edits, true);
  }
}

async function released() {
  if (held.way !== "drag") {
    return;
  }
  window.clearTimeout(held.timer);
  const edits = held.rect ? editsOf(held.rect) : [];
  held.ghost.remove();
  Object.assign(held, { way: null, rect: null });
  if (edits.length) {
    await make(edits);
    drawFrame(clock.frame);
  }
}

const choose = (mode) => document.querySelector("#modes [data-value='" + mode + "']").click();

/** The whole artwork comes with its tab, and goes with it. */
function showMapWithTab() {
  const wanted = reader.tab === "artwork";
  if (wanted !== held.tab) {
    held.tab = wanted;
    if (wanted || scene.mode === "map") {
      choose(wanted ? "map" : "camera");
    }
  }
}

/** The map takes openings while the tab of the artwork is chosen. */
export function listenToMap() {
  const frame = byId("frame");
  frame.addEventListener("pointerdown", pressed);
  frame.addEventListener("pointermove", moved);
  frame.addEventListener("pointerup", released);
  for (const event of ["click", "keydown"]) {
    document.querySelector("#reader .tabs").addEventListener(event, showMapWithTab);
  }
}
