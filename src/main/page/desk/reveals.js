/** The reveals of a panel and who is seen in it, to be changed. */

import { film } from "../film.js";
import { button, count, drawn, element } from "../page.js";
import { timecode } from "../timecode.js";
import { chosenField, typedField } from "./fields.js";
import { desk } from "./live.js";
import { indexOf, typedOf } from "./panels.js";

const RATES = ["", "on ones", "on twos", "on threes", "on fours"];
const SLOW = [["", "even"], ["start", "at the start"], ["end", "at the end"], ["both", "at both"]];
const LANDS = [["", "fully open"], ["half open", "half open"], ["first gap", "first gap"]];
const same = (list) => list.map((each) => [each, each || "as the film"]);

/** What is written as a list, or as its only item. */
const listed = (value) => (value === undefined || value === "" ? [] : Array.isArray(value) ? value : [value]);

const names = (key) => Object.keys(desk.tree?.[key] ?? {});

/** The way of a movement over time, as its photographs set it: from closed to open. */
function curve(reveal) {
  const { amounts } = film.movements[reveal.movement];
  const [first] = reveal.exposures;
  const last = reveal.exposures.at(-3) + reveal.exposures.at(-2);
  const most = Math.max(...amounts, 1e-9);
  let line = "";
  for (let i = 0; i < reveal.exposures.length; i += 3) {
    const [start, frames, photograph] = reveal.exposures.slice(i, i + 3);
    const at = (frame) => (100 * (frame - first)) / Math.max(1, last - first);
    const level = (30 * (1 - amounts[photograph] / most) + 1).toFixed(1);
    line += (line ? "V" + level : "M" + at(start).toFixed(1) + " " + level) + "H" + at(start + frames).toFixed(1);
  }
  return drawn("svg", { class: "curve", viewBox: "0 0 100 32", preserveAspectRatio: "none", role: "img", "aria-label": "How far it stands open, photograph by photograph" },
    drawn("path", { d: line }));
}

function revealPart(shot, typed, index, make) {
  const way = ["panels", indexOf(shot), "reveals", index];
  const laid = shot.reveals[index];
  const id = "reveal-" + index + "-";
  const openings = names("openings").map((each) => [each, each]);
  const field = (key, words, choices) => chosenField({ id: id + key, words, choices }, [...way, key], typed[key], make);
  const lands = laid ? "♦ lands " + timecode(laid.lands) + ", " + laid.landing + (laid.squeeze ? " · " + laid.squeeze : "") : "";
  return element("fieldset", {},
    element("legend", { text: typed.opening || "a reveal" }),
    element("div", { class: "fields" },
      field("opening", "Opening", openings),
      field("moves", "Moves", [["", "opens"], ["closes", "closes"]]),
      typedField({ id: id + "photographs", words: "Photographs", small: true }, [...way, "photographs"], typed.photographs, make),
      field("shown", "Shown", same(RATES)),
      field("slow", "Slow", SLOW),
      field("lands", "Lands", LANDS),
      typedField({ id: id + "lands-on", words: "Lands on", hint: "accent, notes, or a place", list: "place-list" }, [...way, "lands-on"], typed["lands-on"], make)),
    ...(laid ? [element("p", { class: "quiet", text: lands }), curve(laid)] : []),
    button("Take out", "Take this reveal out of the panel", () => make([{ remove: way }]), { id: id + "remove", class: "small" }));
}

/** The reveals of a panel. */
export function revealsOf(shot, make) {
  const reveals = listed(typedOf(shot).reveals);
  const free = names("openings");
  const add = () => make([{ insert: ["panels", indexOf(shot), "reveals", reveals.length], value: { opening: free[0], photographs: "24" } }]);
  return element("details", { open: reveals.length > 0, id: "panel-reveals" },
    element("summary", { text: count(reveals.length, "reveal") }),
    ...reveals.map((typed, i) => revealPart(shot, typed, i, make)),
    free.length
      ? button("Add a reveal", "Something opens in this panel", add, { id: "add-reveal", class: "small" })
      : element("p", { class: "quiet", text: "Draw an opening first: choose Whole artwork, then Artwork." }));
}

function appearancePart(shot, typed, index, make) {
  const way = ["panels", indexOf(shot), "appears", index];
  const id = "appears-" + index + "-";
  const field = (key, words, list) => chosenField({ id: id + key, words, choices: names(list).map((each) => [each, each]) }, [...way, key], typed[key], make);
  return element("div", { class: "fields" }, field("performer", "Who", "performers"), field("opening", "seen in", "openings"),
    button("Take out", "This performer is not seen in the panel", () => make([{ remove: way }]), { id: id + "remove", class: "small" }));
}

/** Who is seen in a panel. */
export function appearancesOf(shot, make) {
  const appears = listed(typedOf(shot).appears);
  const [who] = names("performers");
  const [where] = names("openings");
  const value = { performer: who, opening: listed(typedOf(shot).reveals)[0]?.opening ?? where };
  const add = () => make([{ insert: ["panels", indexOf(shot), "appears", appears.length], value }]);
  return element("details", { open: appears.length > 0, id: "panel-appears" },
    element("summary", { text: count(appears.length, "performer") + " seen" }),
    ...appears.map((typed, i) => appearancePart(shot, typed, i, make)),
    who && where
      ? button("Add a performer", "Somebody is seen in this panel", add, { id: "add-appears", class: "small" })
      : element("p", { class: "quiet", text: "Name performers and openings in the plan first." }));
}
