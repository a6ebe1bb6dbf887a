/** Notes selected by dragging over them in the score: what they are may be named. */

import { film } from "../film.js";
import { UNITS } from "../music.js";
import { range } from "../notation.js";
import { byId, drawn, element } from "../page.js";
import { along, score } from "../spans.js";
import { frameAt } from "./dragging.js";
import { nameMotif, selectionOf } from "./motifs.js";

const STILL = 6;

const select = { system: null };

function pressed(event) {
  const staff = event.target.closest(".staff");
  if (!staff || event.button !== 0 || event.pointerType === "touch") {
    return;
  }
  Object.assign(select, { system: score.systems.find(({ made }) => made.contains(staff)), staff, x: event.clientX, y: event.clientY, box: null });
}

function moved(event) {
  if (!select.system || (!select.box && Math.hypot(event.clientX - select.x, event.clientY - select.y) < STILL)) {
    return;
  }
  event.preventDefault();
  if (!select.box) {
    select.box = element("div", { class: "selecting" });
    select.staff.append(select.box);
    select.staff.setPointerCapture(event.pointerId);
  }
  const outer = select.staff.getBoundingClientRect();
  const [left, right] = [Math.min(select.x, event.clientX), Math.max(select.x, event.clientX)];
  const [top, bottom] = [Math.min(select.y, event.clientY), Math.max(select.y, event.clientY)];
  Object.assign(select.box.style, { left: left - outer.left + "px", width: right - left + "px", top: top - outer.top + "px", height: bottom - top + "px" });
  Object.assign(select, { left, right, top, bottom });
  mark(chosen());
}

/** The notes inside the rectangle. */
function chosen() {
  const drawing = select.staff.querySelector(".notes").getBoundingClientRect();
  const pitchAt = (y) => range.highest - (((y - drawing.top) / drawing.height) * 112 - 6) / 100 * (range.highest - range.lowest);
  const middle = (select.top + select.bottom) / 2;
  const from = frameAt(select.left, middle);
  const to = frameAt(select.right, middle);
  const [high, low] = [pitchAt(select.top) + 0.7, pitchAt(select.bottom) - 0.7];
  return selectionOf(from, to, ({ pitch }) => pitch <= high && pitch >= low);
}

/** Marks the notes that are chosen. */
function mark(selection) {
  select.staff.querySelector(".notes .chosen")?.remove();
  if (selection) {
    const { bars } = select.system;
    const lines = selection.notes.map(({ start, length, pitch }) => {
      const at = (time) => 1000 * along(bars, (time / UNITS) * film.fps);
      const level = (100 * (range.highest - pitch)) / Math.max(1, range.highest - range.lowest);
      return "M" + at(start).toFixed(1) + " " + level.toFixed(1) + "H" + Math.max(at(start) + 2, at(start + length) - 1).toFixed(1);
    });
    select.staff.querySelector(".notes").append(drawn("path", { class: "chosen", d: lines.join("") }));
  }
}

function released() {
  if (select.system && select.box) {
    const { staff } = select;
    const swallow = (event) => event.stopImmediatePropagation();
    staff.addEventListener("click", swallow, { capture: true });
    window.setTimeout(() => staff.removeEventListener("click", swallow, { capture: true }), 50);
    const selection = chosen();
    select.box.remove();
    if (selection) {
      nameMotif(selection);
    }
  }
  select.system = null;
}

export function listenToSelections() {
  const view = byId("score");
  view.addEventListener("pointerdown", pressed);
  view.addEventListener("pointermove", moved);
  view.addEventListener("pointerup", released);
  view.addEventListener("pointercancel", () => {
    select.box?.remove();
    select.system = null;
  });
}
