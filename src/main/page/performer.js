/** For a performer: the count-in, when to be ready, and their bars. */

import { clock, pause, play, seek } from "./clock.js";
import { barAt, barName, film, indexAt, onFilm, placeWords, startOf } from "./film.js";
import { setClick } from "./mixer.js";
import { button, count, element, say } from "./page.js";
import { performer } from "./chosen.js";
import { addView, chooseTab, reader } from "./reader.js";
import { rebuildSystems } from "./systems.js";
import { goLink, markRow, row, table } from "./tables.js";
import { secondsOf, timecode } from "./timecode.js";

/** Be ready and still so long before being seen (common practice, no source). */
const READY_SECONDS = 2;
const COUNT_IN_BARS = 2;
const BIG_BEATS = 8;

let rows = [];
let board;

const mine = () => film.appearances.filter((each) => each.performer === performer.chosen);
const readyFrame = (each) => Math.max(0, Math.floor(each.start - READY_SECONDS * film.fps));
let beats = [];

onFilm(() => {
  beats = film.bars.flatMap((bar) => bar.beats);
  performer.chosen = Math.min(performer.chosen, Math.max(0, film.performers.length - 1));
});

const countIn = (each) => {
  const bar = indexAt(film.bars, startOf, each.start);
  const from = film.bars[Math.max(0, bar - COUNT_IN_BARS)];
  return Math.max(0, from.start);
};

const rehearse = (each) => {
  pause();
  setClick(true);
  seek(countIn(each));
  play();
};

const barsOf = (each) => {
  const [first, last] = [barAt(each.start), barAt(each.end - 1)].map(barName);
  return first === last ? "bar " + first : "bars " + first + " to " + last;
};

const appearanceRow = (each) => {
  const shot = film.shots[each.shot];
  const lines = (...texts) => element("span", {}, ...texts.map((text) => element("div", { text })));
  return row({}, goLink(shot.panel, each.start),
    lines(film.openings[each.opening].name, barsOf(each)),
    lines("ready " + timecode(readyFrame(each)), "seen " + timecode(each.start)),
    element("span", {}, each.sounding === 0 ? "silent " : "sounds " + each.sounding + " % ",
      button("count me in", "Play from two bars before, with the click", () => rehearse(each), { class: "small" })));
};

const list = () => {
  rows = mine().map(appearanceRow);
  return rows.length
    ? table("Seen", ["panel", "where", "from", "your part"], rows)
    : element("p", { text: film.performers[performer.chosen].name + " isn't in any shot yet." });
};

const build = () => {
  if (film.performers.length === 0) {
    board = null;
    return element("p", { text: "The plan names no performers." });
  }
  const picker = element("select", { id: "performer", onchange: () => {
    performer.chosen = Number(picker.value);
    chooseTab("own");
    rebuildSystems();
    show(clock.frame);
    reader.body.querySelector("select").focus();
  } }, ...film.performers.map((each, i) => element("option", { value: i, selected: i === performer.chosen, text: each.name + (each.part ? " (" + each.part + ")" : "") })));
  board = { numeral: element("p", { class: "numeral" }), words: element("p", { class: "board-words" }) };
  return element("div", {}, element("label", {}, "Performer ", picker),
    element("div", { class: "board" }, board.numeral, board.words), list());
};

const beatsUntil = (frame, to) => beats.filter((beat) => beat > frame && beat <= to).length;

const standing = (frame) => {
  const now = mine().find((each) => frame >= each.start && frame < each.end);
  if (now) {
    return { numeral: "seen", words: "in " + film.openings[now.opening].name + " for " + secondsOf(now.end - frame) + " more", state: "seen" };
  }
  const next = mine().find((each) => each.start > frame);
  if (!next) {
    return { numeral: "", words: "not seen again", state: "" };
  }
  const left = beatsUntil(frame, next.start);
  const ready = frame >= readyFrame(next);
  return {
    numeral: left <= BIG_BEATS ? String(left) : "",
    words: (ready ? "ready and still: " : "") + "seen in " + secondsOf(next.start - frame) + ", " + count(left, "beat") + ", at " + placeWords(next.start),
    state: ready ? "ready" : "",
  };
};

const show = (frame) => {
  if (!board) {
    return;
  }
  const { numeral, words, state } = standing(frame);
  say(board.numeral, numeral);
  say(board.words, words);
  board.numeral.parentNode.className = "board " + state;
  markRow(rows, rows[mine().findIndex((each) => frame >= each.start && frame < each.end)]);
};

addView("performer", { build, show });
