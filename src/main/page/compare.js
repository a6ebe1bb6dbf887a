/** The part of the director's view that compares with an earlier make. */

import { clock, show } from "./clock.js";
import { compared, compareWith, cutBefore, cutMoved, movedWords } from "./cuts.js";
import { film } from "./film.js";
import { announce, element, say } from "./page.js";
import { chooseTab } from "./reader.js";
import { rebuildSystems } from "./systems.js";
import { goLink, row, table } from "./tables.js";
import { timecode } from "./timecode.js";

/** The part of the director's view that compares. */
export function comparison() {
  const told = element("p", { role: "status", text: compared.words });
  const file = element("input", { type: "file", accept: ".json,application/json", id: "earlier-file", onchange: async () => {
    const problem = file.files[0] ? compareWith(await file.files[0].text()) : "";
    if (problem) {
      say(told, problem);
      return;
    }
    rebuildSystems();
    chooseTab("own");
    show(clock.frame);
    announce(compared.words);
  } });
  const changed = compared.shots.length ? film.shots.filter(cutMoved).map(changeRow) : [];
  return element("section", { class: "comparison" },
    element("h2", { text: "Compare with earlier sheets" }),
    element("label", {}, "Its timing.json ", file), told,
    ...(changed.length ? [table("Changed", ["panel", "began", "begins", "moved", "length"], changed)] : []));
}

function changeRow(shot) {
  const before = cutBefore(shot.panel);
  if (!before) {
    return row({}, goLink(shot.panel, shot.start), "", timecode(shot.start), "new", (shot.end - shot.start) + " f");
  }
  const longer = shot.end - shot.start - (before.end - before.start);
  return row({}, goLink(shot.panel, shot.start), timecode(before.start), timecode(shot.start), movedWords(shot.start, before.start),
    (shot.end - shot.start) + " f" + (longer === 0 ? "" : " (" + (longer > 0 ? "+" : "−") + Math.abs(longer) + ")"));
}
