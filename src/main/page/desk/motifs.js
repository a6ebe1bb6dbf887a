/** Motifs: those named, with every return; figures that may be more; and naming what is selected. */

import { clock, pause, play, seek } from "../clock.js";
import { barAt, barName, film } from "../film.js";
import { notes, UNITS } from "../music.js";
import { button, byId, count, element } from "../page.js";
import { addTab, chooseTab } from "../reader.js";
import { goLink } from "../tables.js";
import { ask, desk, offered, tryOut } from "./live.js";
import { showOutcome } from "./outcome.js";

const CERTAINTIES = ["certain", "likely", "possible"];

const returnsOf = (motif) => film.cues.filter((cue) => cue.motif === motif && cue.onsets);

/** `20 times: 17 certain, 3 likely`. */
function tally(cues) {
  const each = CERTAINTIES.map((certainty) => [cues.filter((cue) => cue.certainty === certainty).length, certainty]);
  return count(cues.length, "return") + (cues.length ? ": " + each.filter(([many]) => many).map((pair) => pair.join(" ")).join(", ") : "");
}

/** Plays a return again and again, until playing stops. */
function hear({ frame, end }) {
  pause();
  seek(frame);
  clock.loop = { start: frame, end: Math.max(frame + 1, end) };
  play();
}

function returnItem(cue) {
  const sure = cue.certainty === "certain" ? "√ " : "? ";
  return element("li", {}, goLink(cue.title, cue.frame), " " + cue.place + " · " + sure + cue.certainty + " · " + cue.form + " ",
    button("play", "Hear " + cue.title, () => hear(cue), { class: "small" }));
}

function motifPart({ name, sign }, index) {
  const outcome = element("div", { class: "outcome", role: "status" });
  const make = async (edits) => showOutcome(outcome, await ask({ edits }), edits);
  const typed = desk.tree?.motifs?.[name] ?? {};
  const match = element("select", { id: "match-" + index, onchange: () => make([{ put: ["motifs", name, "match"], value: match.value }]) },
    ...["exact", "transposed", "tonal", "free"].map((each) => element("option", { value: each, text: each, selected: each === (typed.match ?? "tonal") })));
  const called = element("input", { id: "name-" + index, value: name, autocomplete: "off", spellcheck: "false", onchange: () =>
    make([{ name: "motif", before: name, now: called.value.trim() }]) });
  return element("section", { class: "motif" },
    element("h2", {}, element("span", { class: "ring", text: sign }), " " + name),
    element("p", { text: tally(returnsOf(index)) }),
    element("p", { class: "deeds" },
      element("label", {}, "called ", called), element("label", {}, "alike ", match),
      button("Delete motif", "Take it out of the plan", () => make([{ remove: ["motifs", name] }]))),
    outcome,
    element("details", {}, element("summary", { text: "Every return of " + name }),
      element("ul", { class: "returns" }, ...returnsOf(index).map(returnItem))));
}

const build = () => element("div", {},
  element("p", { class: "deeds" },
    button("Name a motif", "Say where it is heard; or drag over its notes in the score", () => nameMotif(selectionHere()), { class: "first", id: "do-name" }),
    button("Look for figures", "Figures that return and that nobody has named yet", suggest, { id: "do-suggest" })),
  element("p", { class: "quiet", text: "Or drag over its notes in the score." }),
  element("div", { id: "suggestions" }, ...(offers.figures ?? []).map(suggestion)),
  ...film.motifs.map(motifPart));

addTab("motifs", () => "Motifs " + film.motifs.length, { build, show: () => {} });

/** Figures found last that nobody has named yet; they stay until they are looked for again. */
const offers = { figures: null };

async function suggest() {
  const node = byId("suggestions");
  node.replaceChildren(element("p", { role: "status", text: "Looking …" }));
  const told = await offered("figures");
  offers.figures = told.figures;
  node.replaceChildren(...(told.figures?.length ? told.figures.map(suggestion) : [element("p", { text: told.refused?.[0].sentence ?? "No more figures that return." })]));
}

function suggestion(figure) {
  const { notes: line, words, frame } = figure;
  const end = frame + 2 * barAt(frame).frames;
  const outcome = element("div", { class: "outcome", role: "status" });
  const name = element("input", { value: freeName(), "aria-label": "Name for this figure", autocomplete: "off", spellcheck: "false" });
  const keep = async () => {
    const edits = [{ put: ["motifs", name.value.trim()], value: { notes: line } }];
    offers.figures = offers.figures.filter((other) => other !== figure);
    const told = await ask({ edits });
    if (told.refused || told.asked) {
      offers.figures = [figure, ...offers.figures];
    }
    showOutcome(outcome, told, edits);
  };
  return element("div", { class: "suggestion" }, element("p", { text: words }),
    element("p", { class: "deeds" }, name, button("Name it", "Keep this figure as a motif", keep), button("play", "Hear this figure", () => hear({ frame, end }), { class: "small" })), outcome);
}

function freeName() {
  const taken = new Set(film.motifs.map(({ name }) => name));
  let number = 1;
  while (taken.has("motif-" + number)) {
    number++;
  }
  return "motif-" + number;
}

/** Where the film stands, as a selection of one bar of the part that is busiest in it. */
function selectionHere() {
  const bar = barAt(clock.frame);
  return selectionOf(bar.start, bar.start + bar.frames, () => true);
}

const frameOf = (time) => (time / UNITS) * film.fps;

/** Beats with their frames over the whole music. */
const allBeats = () => film.bars.flatMap((bar) => bar.beats.map((frame, beat) => ({ bar, beat, frame })));

/**
 * The notes between two frames, of the part that plays most of them, as the plan says where they are.
 * @param {(note: object) => boolean} within which notes count
 */
export function selectionOf(from, to, within) {
  const inside = notes.filter((note) => !film.parts[note.part].drums && frameOf(note.start) >= from - 0.5 && frameOf(note.start) < to && within(note));
  const byPart = film.parts.map((_, part) => inside.filter((note) => note.part === part));
  const most = byPart.reduce((best, each) => (each.length > best.length ? each : best), []);
  if (most.length === 0) {
    return null;
  }
  const beats = allBeats();
  const first = beats.findLastIndex(({ frame }) => frame <= frameOf(most[0].start) + 0.5);
  const last = beats.findLastIndex(({ frame }) => frame <= frameOf(most.at(-1).start) + 0.5);
  const { bar, beat } = beats[Math.max(0, first)];
  return {
    notes: most, part: film.parts[most[0].part].name,
    place: "bar " + barName(bar) + (beat ? " beat " + (beat + 1) : ""), length: count(last - first + 1, "beat"),
  };
}

const dialog = {};

/** Asks for the name of what is selected, and says how often it returns. */
export function nameMotif(selection) {
  closeNaming();
  const chosen = selection ?? { notes: [], part: film.parts[0].name, place: "bar 1", length: "1 bar" };
  const input = (id, value) => element("input", { id, value, autocomplete: "off", spellcheck: "false", oninput: foreseeLater });
  dialog.name = input("motif-name", freeName());
  dialog.place = input("motif-place", chosen.place);
  dialog.length = input("motif-length", chosen.length);
  dialog.part = element("select", { id: "motif-part", onchange: foreseeLater }, ...film.parts.filter((part) => !part.drums).map(({ name }) =>
    element("option", { value: name, text: name, selected: name === chosen.part })));
  dialog.as = element("select", { id: "motif-as", onchange: foreseeLater }, element("option", { value: "", text: "a new motif" }),
    ...film.motifs.map(({ name }) => element("option", { value: name, text: "one more shape of " + name })));
  dialog.told = element("div", { class: "outcome", role: "status" });
  const words = chosen.notes.length ? count(chosen.notes.length, "note") + " of the " + chosen.part : "Where is it heard?";
  dialog.node = element("dialog", { id: "naming", "aria-labelledby": "naming-title", onclose: closeNaming },
    element("h2", { id: "naming-title", text: words }),
    element("div", { class: "fields" },
      ...[["Name this motif", dialog.name], ["This is", dialog.as], ["From", dialog.place], ["Length", dialog.length], ["Part", dialog.part]]
        .map(([label, node]) => element("label", {}, element("span", { text: label }), node))),
    dialog.told,
    element("p", { class: "deeds" }, button("Keep", "Write it into the plan", keepMotif, { class: "first", id: "do-keep" }),
      button("Cancel", "Close (Escape)", closeNaming)));
  document.body.append(dialog.node);
  dialog.node.showModal();
  dialog.name.select();
  foreseeLater();
}

function namingEdits() {
  const heard = { place: dialog.place.value.trim(), length: dialog.length.value.trim(), part: dialog.part.value };
  const motif = dialog.as.value;
  if (!motif) {
    return [{ put: ["motifs", dialog.name.value.trim(), "heard-at"], value: heard }];
  }
  const also = desk.tree?.motifs?.[motif]?.also;
  const known = also === undefined ? [] : Array.isArray(also) ? also : [also];
  return [{ put: ["motifs", motif, "also"], value: [...known, heard] }];
}

function foreseeLater() {
  window.clearTimeout(dialog.timer);
  dialog.name.disabled = dialog.as.value !== "";
  dialog.timer = window.setTimeout(foresee, 200);
}

async function foresee() {
  const name = dialog.as.value || dialog.name.value.trim();
  const told = await tryOut({ edits: namingEdits(), motif: name });
  if (!dialog.node) {
    return;
  }
  if (told.refused) {
    showOutcome(dialog.told, told, []);
  } else {
    dialog.told.replaceChildren(element("p", { text: "→ " + tally(told.returns) }), element("p", { class: "quiet", text: told.returns.slice(0, 8).map(({ place, form }) => place + " " + form.split(",")[0]).join(" · ") }));
  }
}

async function keepMotif() {
  const edits = namingEdits();
  const told = await ask({ edits });
  if (told.refused) {
    showOutcome(dialog.told, told, edits);
  } else {
    closeNaming();
    chooseTab("motifs");
  }
}

function closeNaming() {
  window.clearTimeout(dialog.timer);
  dialog.node?.remove();
  dialog.node = null;
}
