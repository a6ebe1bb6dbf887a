/** Drawings dropped on the film, or chosen from disk: kept beside the plan, and put in the panel. */

import { clock } from "../clock.js";
import { shotAt } from "../film.js";
import { byId, element } from "../page.js";
import { typedField } from "./fields.js";
import { sendDrawing } from "./live.js";
import { indexOf, typedOf } from "./panels.js";

/** Keeps a file beside the plan and puts it in a panel. */
async function take(file, shot, make, told) {
  const kept = await sendDrawing(file);
  if (kept.refused) {
    told(kept);
  } else {
    make([{ put: ["panels", indexOf(shot), "drawing"], value: kept.file }]);
  }
}

/** The drawing of a panel: where it lies, and another one. */
export function drawingFields(shot, make, told) {
  const file = element("input", {
    type: "file", accept: "image/png,image/jpeg", id: "panel-drawing-file", onchange: () => file.files[0] && take(file.files[0], shot, make, told),
  });
  return [
    typedField({ id: "panel-drawing", words: "Drawing", hint: "drop a PNG or JPEG on the film" }, ["panels", indexOf(shot), "drawing"], typedOf(shot).drawing, make),
    element("label", {}, element("span", { text: "or choose" }), file),
  ];
}

/** The film takes drawings that are dropped on it. */
export function listenToDrops(make, told) {
  const frame = byId("frame");
  frame.addEventListener("dragover", (event) => event.preventDefault());
  frame.addEventListener("drop", (event) => {
    event.preventDefault();
    const [file] = event.dataTransfer.files;
    if (file) {
      take(file, shotAt(clock.frame), make, told);
    }
  });
}
