/** What stands above and below the bars of a system: panels, cues, reveals and who is seen. */

import { compared, cutMoved, movedWords } from "./cuts.js";
import { film } from "./film.js";
import { count, element } from "./page.js";
import { seenByReader } from "./chosen.js";
import { overlaps, score, span } from "./spans.js";
import { goTo } from "./steps.js";
import { timecode } from "./timecode.js";

/** Bars of room under which a panel is named without its drawing. */
const LEAST_ROOM = 0.6;

export function panelBoxes(bars, frames) {
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

/** The sign of a cue's motif in a ring, or nothing. */
function signOf(cue) {
  return cue.motif === undefined ? "" : element("span", { class: "ring", text: film.motifs[cue.motif].sign });
}

export function cueBoxes(bars, frames) {
  const shown = film.cues.filter((cue) =>
    (cue.number > 0 || cue.kind === "mark") && overlaps({ start: cue.frame, end: (cue.end || cue.frame) + 1 }, frames));
  return shown.map((cue) => {
    const doubt = cue.certainty === "likely" || cue.certainty === "possible" ? "? " : "";
    const words = cue.kind === "mark" ? ["▾ " + cue.title.replace(/^mark /, "")] : [doubt, signOf(cue), " " + cue.title];
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

export function revealBoxes(bars, frames) {
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
    title: name + " " + reveal.way + ", " + count(reveal.photographs, "photograph") + ", lands on frame " + reveal.lands,
    onclick: () => goTo(reveal.lands),
  }, element("span", { class: "run" }), element("span", { text: (lands ? "♦ " : "") + name }));
  const at = span(made, bars, Math.max(run.start, frames.start), Math.min(run.end, frames.end));
  return { made, left: at.left, right: Math.max(at.right, at.left + 0.5 / score.columns) };
}

/** Where the performer who reads is seen. */
export function seenBoxes(bars, frames) {
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
export function linesOf(boxes, name) {
  const lines = onLines(boxes);
  boxes.forEach(({ made, line }) => {
    made.style.top = "calc(" + line + " * var(--line))";
  });
  const holder = element("div", { class: name }, ...boxes.map(({ made }) => made));
  holder.style.height = "calc(" + lines + " * var(--line))";
  return holder;
}

/** The cuts as they were, under the bars of a system; nothing where none is compared or all stayed. */
export function cutsBefore(bars, frames) {
  if (!film.shots.some((shot) => overlaps(shot, frames) && compared.shots.length > 0 && cutMoved(shot))) {
    return [];
  }
  const boxes = compared.shots.filter((before) => overlaps(before, frames)).map((before) => {
    const now = film.shots.find((shot) => shot.panel === before.panel);
    const words = now ? (cutMoved(now) ? "was here, now " + movedWords(now.start, before.start) : "as before") : "gone";
    const made = element("span", { class: "was" + (now && !cutMoved(now) ? " same" : ""), title: before.panel + " " + before.action + ": " + words, text: "was " + before.panel });
    span(made, bars, Math.max(before.start, frames.start), Math.min(before.end, frames.end));
    return made;
  });
  return [element("div", { class: "before", role: "group", "aria-label": "cuts of the earlier sheets" }, ...boxes)];
}
