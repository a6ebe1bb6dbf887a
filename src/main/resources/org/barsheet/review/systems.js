/** The music in systems of bars, as on a printed score: panels above, returns and reveals below. */

const score = { systems: [], bars: [], columns: 4, current: null, follow: true };

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

/** Puts boxes on as few lines as they need, so that none covers another. */
function onLines(boxes) {
  const lines = [];
  for (const each of boxes) {
    let line = lines.findIndex((end) => end <= each.left + 1e-9);
    if (line < 0) {
      line = lines.length;
    }
    lines[line] = each.right;
    each.line = line;
  }
  return lines.length;
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

/** Bars of room under which a panel is named without its drawing. */
const LEAST_ROOM = 0.6;

function panelBoxes(bars, frames) {
  return film.shots.filter((shot) => overlaps(shot, frames)).map((shot) => {
    const goesOn = shot.start < frames.start;
    const made = element("button", {
      type: "button",
      class: "panel" + (goesOn ? " goes-on" : ""),
      tabindex: -1,
      title: shot.panel + " " + shot.action + " · " + timecode(shot.start),
      "data-shot": shot.index,
      onclick: () => goTo(Math.max(shot.start, goesOn ? frames.start : 0)),
    });
    const { left, right } = span(made, bars, Math.max(shot.start, frames.start), Math.min(shot.end, frames.end));
    const roomy = (right - left) * score.columns >= LEAST_ROOM;
    if (roomy && shot.drawing !== undefined && !score.drawn.has(shot)) {
      score.drawn.add(shot);
      made.append(element("img", { src: film.drawings[shot.drawing], alt: "", loading: "lazy", decoding: "async" }));
    }
    const moved = compared.shots.length > 0 && cutMoved(shot) ? "≠ " : "";
    made.append(element("span", { class: "words" }, moved, element("b", { text: shot.panel }), roomy ? " " + shot.action : ""));
    return made;
  });
}

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

function cueBoxes(bars, frames) {
  const shown = film.cues.filter((cue) =>
    (cue.number > 0 || cue.kind === "mark") && overlaps({ start: cue.frame, end: (cue.end || cue.frame) + 1 }, frames));
  return shown.map((cue) => {
    const doubt = cue.certainty === "likely" || cue.certainty === "possible" ? "? " : "";
    const words = cue.kind === "mark" ? ["▾ " + cue.title.replace(/^mark /, "")] : [doubt, letterOf(cue), " " + cue.number];
    const made = element("button", {
      type: "button",
      class: "cue " + (cue.kind === "mark" ? "mark" : "motif-" + (cue.motif % 2)) + (cue.shot === undefined ? " spare" : ""),
      tabindex: -1,
      title: cue.title + (cue.form ? ", " + cue.form + " (" + cue.parts.join(", ") + ")" : "") + " · " + cue.place,
      onclick: () => goTo(cue.accent),
    }, ...words);
    const at = span(made, bars, Math.max(cue.frame, frames.start), Math.min(cue.end || cue.frame, frames.end));
    return { made, left: at.left, right: Math.max(at.right, at.left + 0.2 / score.columns) };
  });
}

function revealBoxes(bars, frames) {
  const found = [];
  for (const shot of film.shots) {
    for (const reveal of shot.reveals) {
      const run = { start: reveal.firstGap, end: reveal.lands + 1 };
      if (overlaps(run, frames)) {
        found.push(revealBox(bars, frames, reveal, run));
      }
    }
  }
  return found.sort((one, other) => one.left - other.left);
}

function revealBox(bars, frames, reveal, run) {
  const name = film.openings[reveal.opening].name;
  const lands = run.end <= frames.end;
  const made = element("button", {
    type: "button",
    class: "reveal" + (reveal.way === "closes" ? " closes" : ""),
    tabindex: -1,
    title: name + " " + reveal.way + ", " + count(reveal.pictures, "picture") + ", lands on frame " + reveal.lands,
    onclick: () => goTo(reveal.lands),
  }, element("span", { class: "run" }), element("span", { text: (lands ? "◆ " : "") + name }));
  const at = span(made, bars, Math.max(run.start, frames.start), Math.min(run.end, frames.end));
  return { made, left: at.left, right: Math.max(at.right, at.left + 0.5 / score.columns) };
}

/** Where the performer who reads is seen. */
function seenBoxes(bars, frames) {
  return seenByReader().filter((each) => overlaps(each, frames)).map((each) => {
    const name = film.openings[each.opening].name;
    const made = element("button", {
      type: "button",
      class: "appears",
      tabindex: -1,
      title: "seen in " + name + " from " + timecode(each.start) + " to " + timecode(each.end),
      onclick: () => goTo(Math.max(each.start, frames.start)),
    }, "seen in " + name);
    const at = span(made, bars, Math.max(each.start, frames.start), Math.min(each.end, frames.end));
    return { made, ...at };
  });
}

/** Lines of boxes, or nothing where there are none. */
function linesOf(boxes, name) {
  const lines = onLines(boxes);
  boxes.forEach(({ made, line }) => {
    made.style.top = "calc(" + line + " * var(--line))";
  });
  const holder = element("div", { class: name }, ...boxes.map(({ made }) => made));
  holder.style.height = "calc(" + lines + " * var(--line))";
  return holder;
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

/** Marks the bar and the beat that sound, and keeps their system in sight. */
function showSystems(frame) {
  const bar = barAt(frame);
  const node = bar && score.bars[bar.index];
  if (!node) {
    return;
  }
  if (score.current !== node) {
    markBar(node);
    keepInSight(node.closest(".system"));
  }
  const inside = frame >= bar.start && frame < bar.start + bar.frames;
  node.classList.toggle("silent", !inside);
  const beat = inside ? beatAt(bar, frame) : 0;
  node.querySelectorAll(".beats i").forEach((each, i) => each.classList.toggle("now", i + 1 === beat));
  const shot = String(shotAt(frame).index);
  if (score.shot !== shot) {
    score.shot = shot;
    byId("score").querySelectorAll(".panel").forEach((each) => each.classList.toggle("now", each.dataset.shot === shot));
  }
}

function markBar(node) {
  if (score.current) {
    score.current.removeAttribute("aria-current");
    score.current.tabIndex = -1;
    score.current.querySelectorAll(".now").forEach((each) => each.classList.remove("now"));
  }
  node.setAttribute("aria-current", "true");
  node.tabIndex = 0;
  score.current = node;
}

/** How often a leap is looked at again, a screen picture each. */
const LOOKS = 8;

/**
 * Turns the page of the score, never the page as a whole. A leap is made at once and looked at again:
 * systems that were out of sight may be higher than they were taken to be.
 */
function keepInSight(system, looks = LOOKS) {
  const view = byId("score");
  if (view.scrollHeight <= view.clientHeight + 1 || !system.isConnected) {
    return;
  }
  const top = system.getBoundingClientRect().top - view.getBoundingClientRect().top + view.scrollTop;
  const out = top < view.scrollTop || top + system.offsetHeight > view.scrollTop + view.clientHeight;
  const leap = looks < LOOKS || Math.abs(top - view.scrollTop) > view.clientHeight;
  if (out) {
    const calm = window.matchMedia("(prefers-reduced-motion: reduce)").matches;
    view.scrollTo({ top: Math.max(0, top - 8), behavior: calm || leap ? "instant" : "smooth" });
  }
  if (leap && looks > 0 && score.current?.closest(".system") === system) {
    window.requestAnimationFrame(() => keepInSight(system, looks - 1));
  }
}
