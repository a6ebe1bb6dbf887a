/** Buttons and keys that move through the film. */

import { clock, pause, play, seek, setSpeed, show, step, toggleLoop } from "./clock.js";
import { film } from "./film.js";
import { setClick, toggleSound } from "./mixer.js";
import { isOnOnes, toggleOnes } from "./openings.js";
import { button, byId, element, say } from "./page.js";
import { chooseReader, chooseTab } from "./reader.js";
import { sounding } from "./sounding.js";
import { barStep, cueStep, goTo, photographStep, shotStep } from "./steps.js";
import { timecode } from "./timecode.js";

const transport = {};

/** What can be done: a key, what it is called, and what it does. */
const deeds = [
  { id: "play", keys: [" ", "k"], sign: "Space", words: "play or pause", act: () => (clock.playing ? pause() : play()) },
  { id: "frame-back", keys: ["ArrowLeft"], sign: "←", words: "one frame back", act: () => step(-1) },
  { id: "frame-on", keys: ["ArrowRight"], sign: "→", words: "one frame forward", act: () => step(1) },
  { id: "bar-back", keys: ["Shift+ArrowLeft", "ArrowUp"], sign: "↑", words: "to the previous bar line", act: () => goTo(barStep(clock.frame, -1)) },
  { id: "bar-on", keys: ["Shift+ArrowRight", "ArrowDown"], sign: "↓", words: "to the next bar line", act: () => goTo(barStep(clock.frame, 1)) },
  { id: "cue-back", keys: ["["], sign: "[", words: "to the previous cue", act: () => goTo(cueStep(clock.frame, -1)) },
  { id: "cue-on", keys: ["]"], sign: "]", words: "to the next cue", act: () => goTo(cueStep(clock.frame, 1)) },
  { id: "photograph-back", keys: [","], sign: ",", words: "to the previous photograph", act: () => goTo(photographStep(clock.frame, -1)) },
  { id: "photograph-on", keys: ["."], sign: ".", words: "to the next photograph", act: () => goTo(photographStep(clock.frame, 1)) },
  { id: "panel-back", keys: ["PageUp"], sign: "Page up", words: "to the previous panel", act: () => goTo(shotStep(clock.frame, -1)) },
  { id: "panel-on", keys: ["PageDown"], sign: "Page down", words: "to the next panel", act: () => goTo(shotStep(clock.frame, 1)) },
  { id: "first", keys: ["Home"], sign: "Home", words: "to the first frame", act: () => goTo(0) },
  { id: "last", keys: ["End"], sign: "End", words: "to the last frame", act: () => goTo(film.last) },
  { id: "loop", keys: ["l"], sign: "L", words: "loop this shot", act: toggleLoop },
  { id: "half", keys: ["h"], sign: "H", words: "half speed", act: () => setSpeed(clock.speed === 1 ? 0.5 : 1) },
  { id: "ones", keys: ["o"], sign: "O", words: "as if on ones: a photograph for every frame", act: changeOnes },
  { id: "click", keys: ["c"], sign: "C", words: "click on or off", act: () => setClick(!sounding.click) },
  { id: "mute", keys: ["m"], sign: "M", words: "sound on or off", act: toggleSound },
  { id: "note", keys: ["n"], sign: "N", words: "write a note on this frame", act: writeNote },
  { id: "findings", keys: ["f"], sign: "F", words: "findings", act: () => chooseTab("findings") },
  ...["director", "animator", "editor", "performer"].map((name, i) => (
    { id: name, keys: [String(i + 1)], sign: String(i + 1), words: "the page for the " + name, act: () => chooseReader(name) })),
  { id: "help", keys: ["?"], sign: "?", words: "these keys", act: showHelp },
];

const deed = (id) => deeds.find((each) => each.id === id);

function changeOnes() {
  toggleOnes();
  show(clock.frame);
}

function writeNote() {
  pause();
  chooseTab("notes");
  byId("note-text").focus();
}

function deedButton(id, words, toggles = false) {
  const { sign, words: title, act } = deed(id);
  const label = /[◄►]/.test(words) ? title : undefined;
  const made = button(words, title + " (" + sign + ")", act, { id: "do-" + id, "aria-label": label });
  if (toggles) {
    made.setAttribute("aria-pressed", "false");
  }
  transport[id] = made;
  return made;
}

export function buildTransport() {
  transport.play = deedButton("play", "Play");
  transport.play.classList.add("first");
  byId("transport").append(
    transport.play,
    element("span", { class: "pair" }, deedButton("frame-back", "◄ frame"), deedButton("frame-on", "frame ►")),
    element("span", { class: "pair for-animator" }, deedButton("photograph-back", "◄ photograph"), deedButton("photograph-on", "photograph ►")),
    element("span", { class: "pair" }, deedButton("bar-back", "◄ bar"), deedButton("bar-on", "bar ►")),
    element("span", { class: "pair" }, deedButton("cue-back", "◄ cue"), deedButton("cue-on", "cue ►")),
    element("span", { class: "pair" }, deedButton("loop", "Loop shot", true), deedButton("half", "½ speed", true), deedButton("ones", "On ones", true)),
    deedButton("help", "?"));
  transport.help.setAttribute("aria-label", "Keys");
  transport.slider = element("input", {
    type: "range", id: "slider", min: 0, step: 1, "aria-label": "Frame of the film", oninput: () => seek(Number(transport.slider.value)),
  });
  byId("transport").prepend(transport.slider);
  document.addEventListener("keydown", pressed);
  document.addEventListener("mousedown", keepKeysFree);
}

/** A button pressed with a pointer does not take the keys: the space bar plays on after it. */
function keepKeysFree(event) {
  if (event.target.closest("button") && !event.target.closest("dialog")) {
    event.preventDefault();
    document.activeElement?.blur();
  }
}

/** Keys by which a list that has the focus is scrolled. */
const SCROLLING = ["ArrowUp", "ArrowDown", "PageUp", "PageDown", "Home", "End"];

function pressed(event) {
  const typing = /^(INPUT|TEXTAREA|SELECT)$/.test(event.target.tagName) && (event.target !== transport.slider || /^(Arrow|Page|Home|End)/.test(event.key));
  const open = document.querySelector("dialog[open]");
  if (typing || open || event.ctrlKey || event.metaKey || event.altKey) {
    return;
  }
  const inList = event.target.id === "reader-body" && SCROLLING.includes(event.key);
  if (inList || (event.key === " " && event.target.closest("button"))) {
    return;
  }
  const key = event.key.length === 1 ? event.key.toLowerCase() : (event.shiftKey ? "Shift+" : "") + event.key;
  const found = deeds.find((each) => each.keys.includes(key));
  if (found) {
    event.preventDefault();
    found.act();
  }
}

export function showTransport() {
  transport.slider.max = film.last;
  transport.slider.value = clock.frame;
  transport.slider.setAttribute("aria-valuetext", timecode(clock.frame));
  say(transport.play, clock.playing ? "Pause" : "Play");
  transport.loop.setAttribute("aria-pressed", String(clock.loop !== null));
  transport.half.setAttribute("aria-pressed", String(clock.speed !== 1));
  transport.ones.setAttribute("aria-pressed", String(isOnOnes()));
}

function showHelp() {
  pause();
  const list = element("dl", { class: "keys" });
  deeds.forEach(({ sign, words }) =>
    list.append(element("dt", {}, element("kbd", { text: sign })), element("dd", { text: words })));
  const dialog = element("dialog", { "aria-labelledby": "keys-title", onclose: () => dialog.remove() },
    element("h2", { id: "keys-title", text: "Keys" }), list,
    button("Close", "Close (Escape)", () => dialog.close(), { class: "first" }));
  document.body.append(dialog);
  dialog.showModal();
}
