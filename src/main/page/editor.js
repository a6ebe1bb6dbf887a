/** For the editor: in and out of the shot, and every cue with its frame. */

import { film, shotAt } from "./film.js";
import { count, element } from "./page.js";
import { addView } from "./reader.js";
import { goLink, markRow, pairs, row, table } from "./tables.js";
import { secondsOf, timecode } from "./timecode.js";

let about;
let rows = [];

const cueRow = (cue) => row({},
  goLink(cue.title, cue.accent), cue.place, timecode(cue.frame), String(cue.frame), String(cue.accent),
  cue.shot === undefined ? "" : film.shots[cue.shot].panel);

const build = () => {
  about = element("dl", { class: "pairs" });
  rows = film.steps.map(cueRow);
  return element("div", {}, about,
    table("Cues", ["cue", "at", "timecode", "frame", "accent", "panel"], rows));
};

const clips = (shot) => shot.seen.map((each) => {
  const { name, clip } = film.performers[each.performer];
  const from = each.clipFrame === undefined ? "" : ", clip frame " + each.clipFrame;
  return name + " in " + film.openings[each.opening].name + ", " + timecode(each.start) + " to " + timecode(each.end)
    + (clip ? " (" + clip + from + ")" : "");
});

const show = (frame) => {
  const shot = shotAt(frame);
  const after = film.steps.find((cue) => cue.accent > frame);
  pairs(about, [
    ["Shot", element("b", { text: shot.panel + " " + shot.action })],
    ["In", goLink(timecode(shot.start), shot.start), " frame " + shot.start],
    ["Out", timecode(shot.end), " frame " + shot.end + ", exclusive; " + count(shot.end - shot.start, "frame")],
    ["Next cue", after ? after.title + " in " + count(after.accent - frame, "frame") + " (" + secondsOf(after.accent - frame) + ")" : "none"],
    ["Clips", clips(shot).join("; ") || "none"],
  ]);
  const last = film.steps.filter((cue) => cue.accent <= frame).length - 1;
  markRow(rows, rows[last]);
};

addView("editor", { build, show });
