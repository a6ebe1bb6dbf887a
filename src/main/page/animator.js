/** For the animator: the shot's exposure column beside the frame, and the next photograph's measure. */

import { film, photographName, shotAt } from "./film.js";
import { beginsAt, handWords, revealsAt, setWords, shownBy } from "./openings.js";
import { byId, count, element } from "./page.js";
import { addView } from "./reader.js";
import { goTo } from "./steps.js";
import { goLink, pairs } from "./tables.js";
import { timecode } from "./timecode.js";

/** As many rows as there is room for beside the frame, so many on a small screen. */
const FEW_ROWS = 15;
const ROW_REMS = 1.45;
const HEAD_REMS = 3.6;
let lines = [];
let shotOfHead = null;
let cards;

const rowsThatFit = () => {
  const rem = parseFloat(getComputedStyle(document.documentElement).fontSize);
  const beside = window.matchMedia("(min-width: 1180px)").matches;
  return beside ? Math.floor((window.innerHeight / rem - byId("column").offsetTop / rem - HEAD_REMS - 1) / ROW_REMS) : FEW_ROWS;
};

const buildColumn = () => {
  lines = Array.from({ length: rowsThatFit() }, () => {
    const line = element("tr", { onclick: () => line.frame !== undefined && goTo(line.frame) });
    return line;
  });
  byId("column").replaceChildren(element("table", {},
    element("caption", { text: "Exposure column" }),
    element("thead", {}, element("tr", { id: "column-head" })),
    element("tbody", {}, ...lines)));
  shotOfHead = null;
};

const head = (shot) => {
  const names = revealsAt(shot, shot.start).map((reveal) => film.openings[reveal.opening].name);
  byId("column-head").replaceChildren(...["frame", "time", ...(names.length ? names : ["under the camera"])]
    .map((words) => element("th", { scope: "col", text: words })));
};

/** What stands in a cell: the photograph on its first frame, then a line as long as it is held. */
const cell = (shot, reveal, frame) => {
  const { now, name } = shownBy(reveal, frame);
  const lands = shot.reveals.some((each) => each.opening === reveal.opening && each.lands === frame) ? " ♦" : "";
  return (now.start === frame ? name : "│") + lands;
};

const fill = (line, shot, frame, current) => {
  const inside = frame >= shot.start && frame < shot.end;
  line.frame = inside ? frame : undefined;
  const texts = inside
    ? [String(frame - shot.start + 1), timecode(frame).slice(6), ...(shot.reveals.length ? revealsAt(shot, frame).map((reveal) => cell(shot, reveal, frame)) : ["at rest"])]
    : [];
  line.replaceChildren(...texts.map((text) => element("td", { text })));
  line.className = inside ? "" : "outside";
  line.toggleAttribute("aria-current", frame === current);
  line.classList.toggle("lands", shot.reveals.some((reveal) => reveal.lands === frame));
};

const showColumn = (shot, frame) => {
  if (shotOfHead !== shot) {
    shotOfHead = shot;
    head(shot);
  }
  const first = Math.max(shot.start, Math.min(frame - Math.floor(lines.length / 3), shot.end - lines.length));
  lines.forEach((line, i) => fill(line, shot, first + i, frame));
};

/** The next other photograph of an opening, large: its name, its measure and in how many frames. */
const next = (shot, reveal, frame) => {
  const { now } = shownBy(reveal, frame);
  const at = 3 * (now.index + 1);
  if (at < reveal.exposures.length) {
    return nextWords(reveal, at, frame, now.photograph);
  }
  const after = shot.reveals.find((each) => each.opening === reveal.opening && beginsAt(each) > frame);
  if (!after) {
    return [element("b", { text: "no more photographs" })];
  }
  return nextWords(after, 0, frame, after.movement === reveal.movement ? now.photograph : after.exposures[2]);
};

const nextWords = (reveal, at, frame, from) => {
  const [start, , photograph] = reveal.exposures.slice(at, at + 3);
  const movement = film.movements[reveal.movement];
  const set = setWords(movement, photograph);
  return [
    element("b", { class: "next", text: photographName(reveal, photograph) + ", " + set }),
    handWords(movement, photograph, from).slice(set.length + 2) + " ",
    goLink("in " + count(start - frame, "frame"), start),
  ];
};

/** The photograph that an exposure follows, maybe of an earlier reveal; itself where it is the first. */
const photographBefore = (shot, reveal, now) => {
  if (now.index > 0) {
    return reveal.exposures[3 * (now.index - 1) + 2];
  }
  const earlier = shot.reveals.filter((each) => each.opening === reveal.opening && beginsAt(each) < beginsAt(reveal)
    && each.movement === reveal.movement);
  earlier.sort((one, other) => beginsAt(other) - beginsAt(one));
  return earlier.length ? earlier[0].exposures.at(-1) : now.photograph;
};

/** What a reveal shows now and next; where another of its opening is in force, when it begins or ended. */
const nowAndNext = (shot, reveal, frame) => {
  if (revealsAt(shot, frame).includes(reveal)) {
    const { name, photograph, now } = shownBy(reveal, frame);
    return [
      ["Now", element("b", { text: name }), ", " + handWords(film.movements[reveal.movement], photograph, photographBefore(shot, reveal, now)) + "; shown for " + count(now.frames, "frame")],
      ["Next", ...next(shot, reveal, frame)],
    ];
  }
  const begins = reveal.exposures[0];
  const [last, frames] = reveal.exposures.slice(-3);
  return [begins > frame
    ? ["Begins", goLink(timecode(begins), begins), ", in " + count(begins - frame, "frame")]
    : ["Ended", goLink(timecode(last + frames), last + frames)]];
};

const card = (shot, reveal, frame) => {
  const opening = film.openings[reveal.opening];
  const list = element("dl", { class: "pairs" });
  const entries = [
    ...nowAndNext(shot, reveal, frame),
    ["Shown", count(reveal.photographs, "photograph") + " on " + (["", "ones", "twos", "threes", "fours"][reveal.shown] || reveal.shown + "s") + ", " + opening.motion],
    [reveal.way === "closes" ? "Begins to close" : "First gap", goLink(timecode(reveal.firstGap), reveal.firstGap)],
    ["Lands", goLink(timecode(reveal.lands), reveal.lands), ", " + reveal.landing],
  ];
  if (opening.heldBy.length) {
    entries.push(["Held by", opening.heldBy.join(", ")]);
  }
  if (reveal.squeeze) {
    entries.push(["! squeezed", reveal.squeeze]);
  }
  pairs(list, entries);
  return element("section", { class: "card" }, element("h2", { text: opening.name + " " + reveal.way + " (" + opening.model + ")" }), list);
};

const build = () => {
  buildColumn();
  cards = element("div");
  return cards;
};

const show = (frame) => {
  const shot = shotAt(frame);
  showColumn(shot, frame);
  cards.replaceChildren(...(shot.reveals.length
    ? shot.reveals.map((reveal) => card(shot, reveal, frame))
    : [element("p", { text: "Nothing moves in panel " + shot.panel + ". " + nextReveal(frame) })]));
};

const nextReveal = (frame) => {
  const shot = film.shots.find((each) => each.start > frame && each.reveals.length);
  return shot ? "The next movement is in panel " + shot.panel + ", at " + timecode(shot.start) + "." : "Nothing moves after this.";
};

addView("animator", { build, show });
