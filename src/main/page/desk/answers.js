/** Findings that the plan can answer at once, with a button that writes the answer. */

import { film } from "../film.js";
import { button, element } from "../page.js";
import { reader } from "../reader.js";
import { answersIn, unusedMotif } from "./answerwords.js";
import { ask, desk } from "./live.js";
import { showOutcome } from "./outcome.js";
import { newPanelAt } from "./panels.js";

/** Most new panels offered at once. */
const MOST = 6;

/** A new panel on each return that no panel uses. */
function newPanels(motif) {
  const index = film.motifs.findIndex(({ name }) => name === motif);
  return film.cues
    .filter((cue) => cue.motif === index && cue.number > 0 && cue.certainty === "certain" && cue.shot === undefined)
    .slice(0, MOST)
    .map((cue) => ({ words: "new panel on " + cue.title + " (" + cue.place + ")", edits: newPanelAt(cue.frame).edits }));
}

/** The edits that a finding's own words ask for. */
function answersOf(finding) {
  const motif = unusedMotif(finding.sentence);
  return motif ? newPanels(motif) : answersIn(finding, desk.tree);
}

function answered(finding) {
  const outcome = element("div", { class: "outcome", role: "status" });
  const buttons = answersOf(finding).map(({ words, edits }) =>
    button(words, "Write this into the plan", async () => showOutcome(outcome, await ask({ edits }), edits), { class: "fix" }));
  return buttons.length ? [element("div", { class: "fixes" }, ...buttons), outcome] : [];
}

/** Only some findings are shown: those for one who acts. */
const shown = { concerns: "" };

function filter(rebuild) {
  const people = [...new Set(film.findings.map(({ concerns }) => concerns))];
  const select = element("select", { id: "findings-for", onchange: () => {
    shown.concerns = select.value;
    rebuild();
  } }, element("option", { value: "", text: "everybody" }),
  ...people.map((each) => element("option", { value: each, text: each, selected: each === shown.concerns })));
  return element("p", {}, element("label", {}, "Findings for ", select));
}

/** Puts the answers under the findings of the page's own view. */
export function buildAnswers() {
  const plain = reader.views.findings;
  const build = () => {
    const all = film.findings;
    film.findings = all.filter(({ concerns }) => !shown.concerns || concerns === shown.concerns);
    const view = plain.build();
    const sorted = ordered(film.findings);
    view.querySelectorAll(".finding").forEach((node, i) => node.append(...answered(sorted[i])));
    film.findings = all;
    const holder = element("div", {}, filter(() => holder.replaceWith(build())), view);
    return holder;
  };
  reader.views.findings = { build, show: plain.show };
}

/** In the order of the view: for the reader first. */
function ordered(findings) {
  const concerned = reader.view === "performer" ? "performers" : reader.view;
  return [...findings.filter(({ concerns }) => concerns === concerned), ...findings.filter(({ concerns }) => concerns !== concerned)];
}
