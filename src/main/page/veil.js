/** Blurs the frame where openings follow one another too fast, until the viewer asks to see it. */

import { clock } from "./clock.js";
import { film } from "./film.js";
import { button, byId, element } from "./page.js";

const veil = { lifted: new Set(), node: null };

export function buildVeil() {
  const words = "Openings come faster here than three flashes a second (WCAG 2.3.1). "
    + "Flashing images can hurt people with photosensitive epilepsy.";
  veil.node = element("div", { id: "veil", hidden: true },
    element("p", { text: words }),
    button("Show it", "Show the film without blur", liftVeil, { class: "first", id: "do-show" }));
  byId("frame").append(veil.node);
}

const flashAt = (frame) => film.flashes.findIndex((flash) => frame >= flash.start && frame < flash.end);

function liftVeil() {
  veil.lifted.add(flashAt(clock.frame));
  showVeil(clock.frame);
}

export function showVeil(frame) {
  const flash = flashAt(frame);
  const veiled = flash >= 0 && !veil.lifted.has(flash);
  veil.node.hidden = !veiled;
  byId("frame").classList.toggle("veiled", veiled);
}
