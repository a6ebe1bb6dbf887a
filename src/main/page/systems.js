/** The music in systems of bars, as on a printed score: panels above, returns and reveals below. */

import { cueBoxes, cutsBefore, linesOf, panelBoxes, revealBoxes, seenBoxes } from "./boxes.js";
import { barName, film } from "./film.js";
import { notesDrawn } from "./notation.js";
import { byId, element } from "./page.js";
import { reader } from "./reader.js";
import { score, systemFrames } from "./spans.js";
import { goTo } from "./steps.js";
import { timecode } from "./timecode.js";

function barButton(bar) {
  const beats = bar.beats.map((_, i) => element("i", { text: i + 1 }));
  const made = element("button", {
    type: "button",
    class: "bar" + (bar.short ? " short" : ""),
    tabindex: -1,
    "aria-label": "bar " + barName(bar) + ", " + timecode(bar.start),
    "data-bar": bar.index,
    onclick: () => goTo(bar.start),
  }, element("b", { text: barName(bar) }), tempoChange(bar), element("span", { class: "beats", "aria-hidden": "true" }, ...beats));
  score.bars[bar.index] = made;
  return made;
}

/** Frames per beat and meter, where they are others than in the bar before. */
function tempoChange(bar) {
  const before = film.bars[bar.index - 1];
  const changes = [];
  if (!before || before.meter !== bar.meter) {
    changes.push(bar.meter);
  }
  if (!before || before.framesPerBeat !== bar.framesPerBeat) {
    changes.push(bar.framesPerBeat);
  }
  return element("span", { class: "quiet", text: changes.join(" · ") });
}

function buildSystem(bars) {
  const frames = systemFrames(bars);
  const row = element("div", { class: "bars" }, ...bars.map(barButton));
  const made = element("div", { class: "system", role: "group", "aria-label": "bars " + barName(bars[0]) + " to " + barName(bars[bars.length - 1]) },
    element("div", { class: "panels" }, ...panelBoxes(bars, frames)),
    ...cutsBefore(bars, frames),
    element("div", { class: "staff" }, notesDrawn(bars), row),
    linesOf(cueBoxes(bars, frames), "cues"),
    linesOf(revealBoxes(bars, frames), "reveals"),
    linesOf(seenBoxes(bars, frames), "reveals"));
  score.systems.push({ made, bars, ...frames });
  return made;
}

/** Builds all systems, as many bars to each as there is room for, with what the reader looks for. */
export function buildSystems() {
  const columns = byId("score").clientWidth < 460 ? 2 : 4;
  const forPerformer = reader.view === "performer";
  if (score.columns !== columns || score.forPerformer !== forPerformer || score.systems.length === 0) {
    score.columns = columns;
    score.forPerformer = forPerformer;
    rebuildSystems();
  }
}

/** Builds all systems anew. */
export function rebuildSystems() {
  const { columns } = score;
  score.systems = [];
  score.drawn = new Set();
  score.current = null;
  score.shot = null;
  const paper = element("div", { class: "paper" });
  paper.style.setProperty("--columns", columns);
  for (let i = 0; i < film.bars.length; i += columns) {
    paper.append(buildSystem(film.bars.slice(i, i + columns)));
  }
  byId("score").replaceChildren(paper);
}
