/** For the director: why the panel is here, what else could be, and all panels in order. */

import { comparison } from "./compare.js";
import { film, shotAt } from "./film.js";
import { severitySign } from "./findings.js";
import { button, element } from "./page.js";
import { addView } from "./reader.js";
import { goLink, markRow, pairs, row, table } from "./tables.js";
import { timecode } from "./timecode.js";

let rows = [];
let why;
let current = null;

const build = () => {
  why = element("dl", { class: "pairs" });
  rows = film.shots.map((shot) =>
    row({}, goLink(shot.panel, shot.start, "Go to panel " + shot.panel), shot.action, shot.place, timecode(shot.start), shot.got));
  current = null;
  return element("div", {}, why, table("All panels", ["panel", "action", "at", "timecode", "length"], rows),
    comparison(),
    element("p", {}, button("Print the storyboard", "Six panels a page", () => window.print(), { id: "do-print" })));
};

const show = (frame) => {
  const shot = shotAt(frame);
  if (current === shot) {
    return;
  }
  current = shot;
  const entries = [
    ["Panel", element("b", { text: shot.panel + " " + shot.action }), shot.locked ? " (locked)" : ""],
    ["Asked", shot.asked],
    ["Got", shot.got + " from " + shot.place],
    ["Why here", shot.reason],
  ];
  if (shot.alternative) {
    entries.push([shot.free ? "Free choice" : "Alternative", shot.alternative]);
  }
  if (shot.leftOut) {
    entries.push(["! drawing", shot.leftOut]);
  }
  const about = film.findings.filter((finding) => finding.panel === shot.panel && finding.severity !== "remark");
  about.forEach((finding) => entries.push([severitySign(finding) + " " + finding.severity, finding.sentence]));
  pairs(why, entries);
  markRow(rows, rows[shot.index]);
};

addView("director", { build, show });
