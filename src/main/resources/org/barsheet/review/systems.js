/** The music in systems of bars, as on a printed score: panels above, returns and reveals below. */

const score = { systems: [], bars: [], columns: 4, current: null };

/** Where a frame lies in a system, from 0 at its first bar line to 1 at its last. */
function along(bars, frame) {
  const at = indexAt(bars, startOf, frame);
  const bar = bars[at];
  const into = bar.frames === 0 ? 0 : (frame - bar.start) / bar.frames;
  return (at + Math.max(0, Math.min(1, into))) / score.columns;
}

const percent = (share) => (100 * share).toFixed(3) + "%";

/** Puts a box over the frames it covers. */
function span(node, bars, start, end) {
  const left = along(bars, start);
  const right = along(bars, end);
  node.style.left = percent(left);
  node.style.width = percent(Math.max(0, right - left));
  return { left, right };
}

function systemFrames(bars) {
  const first = bars[0];
  const last = bars[bars.length - 1];
  return {
    start: first.index === 0 ? 0 : first.start,
    end: last.index === film.bars.length - 1 ? film.length : last.start + last.frames,
  };
}

const overlaps = (one, other) => one.start < other.end && one.end > other.start;

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
function buildSystems() {
  const columns = byId("score").clientWidth < 460 ? 2 : 4;
  const forPlayer = reader.view === "player";
  if (score.columns !== columns || score.forPlayer !== forPlayer || score.systems.length === 0) {
    score.columns = columns;
    score.forPlayer = forPlayer;
    rebuildSystems();
  }
}

/** Builds all systems anew. */
function rebuildSystems() {
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
