/** The panel that plays, to be changed: its place, length and words, and what becomes of it. */

import { film, shotAt } from "../film.js";
import { severitySign } from "../findings.js";
import { button, element } from "../page.js";
import { addTab } from "../reader.js";
import { goTo } from "../steps.js";
import { secondsOf } from "../timecode.js";
import { drawingFields } from "./drawings.js";
import { typedField } from "./fields.js";
import { ask, tryOut } from "./live.js";
import { showOutcome } from "./outcome.js";
import { allPlaces, completions, placeStep } from "./places.js";
import { indexOf, joinWithNext, movePanel, newPanelHere, putInPanel, removePanel, splitHere, typedOf } from "./panels.js";
import { appearancesOf, revealsOf } from "./reveals.js";

const form = { node: null, shot: null, outcome: null, timer: 0 };

/** What a place may look like, with a motif of this plan. */
const placeHint = () => (film.motifs.length ? film.motifs[0].name + " near bar 9, " : "") + "bar 12 beat 3, mark B, or nothing";

const FIELDS = [
  { key: "action", words: "Shows" },
  { key: "cue", words: "Place", list: "place-list", hint: placeHint },
  { key: "length", words: "Length", hint: "4 bars, 2.5 s, at least 8 bars, or nothing" },
  { key: "cut", words: "Cut", hint: "auto, on cue, 1 beat before, bar 12" },
];

export async function make(edits) {
  const told = await ask({ edits });
  if (form.outcome) {
    showOutcome(form.outcome, told, edits);
  }
  return told;
}

/** Says what would come of what is being typed, without doing it. */
function tryLater(edits) {
  window.clearTimeout(form.timer);
  form.timer = window.setTimeout(async () => {
    const { outcome } = form;
    showOutcome(outcome, await tryOut({ edits }), edits, true);
  }, 250);
}

function field(shot, { key, words, list, hint }) {
  const way = ["panels", indexOf(shot), key];
  const send = (edits) => {
    window.clearTimeout(form.timer);
    make(edits);
  };
  return typedField({ id: "panel-" + key, words, list, hint: typeof hint === "function" ? hint() : hint }, way, typedOf(shot)[key], send, tryLater);
}

/** Puts the panel on the place before or after the one it is on. */
function stepPlace(way) {
  const { shot } = form;
  const place = placeStep(film.cues[shot.cue]?.frame ?? shot.start, way);
  if (place) {
    make([putInPanel(shot, "cue", place.words)]);
  }
}

function deeds(shot) {
  const last = shot.index === film.shots.length - 1;
  const locked = shot.locked;
  const press = (id, words, title, act, off = false) => button(words, title, act, { id: "panel-do-" + id, disabled: off });
  return element("div", { class: "deeds", role: "group", "aria-label": "What to do with panel " + shot.panel },
    press("before", "◄ place", "Put it on the place before", () => stepPlace(-1)),
    press("after", "place ►", "Put it on the place after", () => stepPlace(1)),
    press("new", "New panel here", "A new panel begins where the film stands", () => addHere(newPanelHere())),
    press("split", "Split here", "Two panels: the second begins where the film stands, with the same drawing", () => addHere(splitHere(form.shot))),
    press("join", "Join with next", "One panel of this and the next", () => make(joinWithNext(shot)), last),
    press("up", "Earlier in the story", "Swap it with the panel before", () => make(movePanel(shot, -1)), shot.index === 0),
    press("down", "Later in the story", "Swap it with the panel after", () => make(movePanel(shot, 1)), last),
    press("lock", locked ? "Unlock" : "Lock", "Keep its frames, whatever else moves", () => make([putInPanel(shot, "locked", locked ? "" : "yes")])),
    press("remove", "Delete panel", "Take it out of the plan (undo brings it back)", () => make(removePanel(shot)), film.shots.length === 1));
}

async function addHere({ name, edits }) {
  const told = await make(edits);
  const made = film.shots.find((shot) => shot.panel === name);
  if (!told.refused && made) {
    goTo(made.start);
    document.getElementById("panel-action")?.select();
  }
}

/** A button that takes the second-best place, where its words name one. */
function taking(shot) {
  const place = allPlaces().find(({ title }) => shot.alternative.startsWith(title + " "));
  return place ? [button("Take it", "Put the panel there", () => make([putInPanel(shot, "cue", place.words)]), { id: "panel-take", class: "small" })] : [];
}

/** The findings about a panel, where it is changed. */
const about = (shot) => film.findings.filter((finding) => finding.panel === shot.panel && finding.severity !== "remark").map((finding) =>
  element("p", { class: "finding " + finding.severity }, element("b", { text: severitySign(finding) + " " }), finding.sentence
    + (finding.remedy ? " · " + finding.remedy : "")));

function fill(shot) {
  form.shot = shot;
  const options = completions().map((words) => element("option", { value: words }));
  form.node.replaceChildren(
    element("h2", { text: "Panel " + shot.panel + (shot.locked ? " (locked)" : "") }),
    element("div", { class: "fields" }, ...FIELDS.map((each) => field(shot, each)), ...drawingFields(shot, make, (told) => showOutcome(form.outcome, told, []))),
    element("datalist", { id: "place-list" }, ...options),
    form.outcome,
    element("dl", { class: "pairs" },
      element("dt", { text: "Gets" }), element("dd", { text: shot.got + ", " + secondsOf(shot.end - shot.start) + ", from " + shot.place }),
      element("dt", { text: "Why here" }), element("dd", { text: shot.reason }),
      ...(shot.alternative ? [element("dt", { text: shot.free ? "Free choice" : "Alternative" }), element("dd", {}, shot.alternative + " ", ...taking(shot))] : [])),
    deeds(shot), ...about(shot), revealsOf(shot, make), appearancesOf(shot, make));
}

const build = () => {
  form.node = element("div", { class: "panel-form" });
  form.outcome = form.outcome ?? element("div", { class: "outcome", role: "status" });
  form.shot = null;
  return form.node;
};

/** Another panel comes into the form only while nobody types in it. */
const show = (frame) => {
  const shot = shotAt(frame);
  if (form.shot === null || (form.shot !== shot && !form.node.contains(document.activeElement))) {
    if (form.shot !== null) {
      form.outcome.replaceChildren();
    }
    fill(shot);
  }
};

addTab("panel", () => "Panel", { build, show });

/** For what else sends edits: shows a refusal in the form. */
export const refuse = (told) => form.outcome && showOutcome(form.outcome, told, []);
