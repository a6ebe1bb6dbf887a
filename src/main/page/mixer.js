/** What is heard: the score, a recording or nothing; each part; the click. */

import { underClick } from "./clicking.js";
import { clock, frameAtSeconds, secondsAtFrame, seek, setSource, silence } from "./clock.js";
import { film } from "./film.js";
import { button, byId, choice, count, element, say } from "./page.js";
import { recording } from "./recording.js";
import { isHeard, sounding } from "./sounding.js";
import { timecode } from "./timecode.js";

const mixer = { source: "score", before: "score" };

const SOURCES = [
  { value: "score", words: "Score", title: "The score's notes, played by the page" },
  { value: "recording", words: "Recording", title: "The production's own recording" },
  { value: "silence", words: "Silent", title: "No sound" },
];

/** Pixels kept free beside the panel. */
const MARGIN = 16;

export function buildMixer() {
  mixer.panel = element("div", { id: "mixer", hidden: true });
  mixer.opener = button("Sound", "What is heard", toggleMixer, { id: "do-sound", "aria-expanded": "false", "aria-controls": "mixer" });
  mixer.summary = element("span", { class: "quiet", id: "sound-summary" });
  mixer.told = element("p", { class: "quiet", id: "sound-told", role: "status" });
  byId("sound").append(mixer.summary, mixer.opener, mixer.panel);
  document.addEventListener("keydown", closeMixer);
  byId("sound").parentNode.after(mixer.told);
  const sources = element("div", { class: "choice small", role: "radiogroup", "aria-label": "What is heard" });
  mixer.showSource = choice(sources, SOURCES, chooseSource);
  mixer.click = element("input", { type: "checkbox", id: "click", onchange: () => setClick(mixer.click.checked) });
  mixer.volume = element("input", { type: "range", id: "volume", min: 0, max: 100, step: 1, value: 100, oninput: setVolume });
  mixer.panel.append(sources, element("label", { class: "volume" }, "Volume ", mixer.volume), element("label", {}, mixer.click, " click on every beat (C)"), recordingPart(), partsTable());
  chooseSource(film.recording ? "recording" : "score");
}

function toggleMixer() {
  showMixerPanel(mixer.panel.hidden);
}

/** Opens the panel to the side of its button on which there is more room, or closes it. */
function showMixerPanel(open) {
  mixer.panel.hidden = !open;
  mixer.opener.setAttribute("aria-expanded", String(open));
  const { top, bottom } = mixer.opener.getBoundingClientRect();
  const below = window.innerHeight - bottom;
  mixer.panel.style.maxHeight = Math.max(top, below) - MARGIN + "px";
  mixer.panel.style.top = below >= top ? "100%" : "auto";
  mixer.panel.style.bottom = below >= top ? "auto" : "100%";
}

function closeMixer(event) {
  if (event.key === "Escape" && !mixer.panel.hidden) {
    if (mixer.panel.contains(document.activeElement)) {
      mixer.opener.focus();
    }
    showMixerPanel(false);
  }
}

function recordingPart() {
  mixer.file = element("input", { type: "file", accept: "audio/*,video/*", id: "recording-file", onchange: takeFile });
  mixer.first = element("input", { type: "number", id: "recording-first", value: film.musicStart, onchange: () => {
    recording.starts = secondsAtFrame(Math.round(Number(mixer.first.value)) || 0);
    seek(clock.frame);
    showMixer();
  } });
  const planned = film.recording
    ? [button("The plan's: " + film.recording.file, "The recording that the plan names", takePlanned, { id: "do-planned" })]
    : [];
  mixer.starts = element("p", { class: "quiet" });
  mixer.own = element("label", {}, "Its first sample is on film frame ", mixer.first);
  mixer.recording = element("div", { class: "recording" }, ...planned,
    element("label", {}, film.recording ? "Another, from your disk " : "Sound file from your disk ", mixer.file),
    mixer.own, mixer.starts);
  recording.known = showMixer;
  recording.refused = (words) => {
    chooseSource("score");
    say(mixer.told, "! " + words + " The page plays the score's notes instead.");
  };
  return mixer.recording;
}

function takeFile() {
  const [file] = mixer.file.files;
  if (file) {
    recording.take(file);
    mixer.first.value = film.musicStart;
    chooseSource("recording");
  }
}

function takePlanned() {
  recording.takePlanned();
  chooseSource("recording");
}

/** `01:00:02:00`, or how long after that frame begins. */
function momentWords(seconds) {
  const frame = frameAtSeconds(seconds);
  const after = 1000 * (seconds - secondsAtFrame(frame));
  return timecode(frame) + (after < 0.5 ? "" : " and " + after.toFixed(0) + " ms") + " (frame " + frame + ")";
}

/** Where the recording ends, and whether that is too soon; nothing until its length is known. */
function endWords() {
  if (!Number.isFinite(recording.sound.duration) || film.bars.length === 0) {
    return "";
  }
  const end = recording.starts + recording.sound.duration;
  const last = film.bars.at(-1);
  const missing = secondsAtFrame(last.start + last.frames) - end;
  return "It ends at " + momentWords(end) + "." + (missing >= 1 ? " ! That is " + missing.toFixed(1) + " s before the music ends." : "");
}

function chooseSource(name) {
  if (name === "recording" && recording.sound === null && film.recording) {
    recording.takePlanned();
  }
  mixer.before = mixer.source === "silence" ? mixer.before : mixer.source;
  mixer.source = name;
  mixer.showSource(name);
  mixer.recording.hidden = name !== "recording";
  const waits = name === "recording" && recording.sound === null;
  setSource(name === "score" ? sounding : underClick(name === "recording" && !waits ? recording : silence));
  say(mixer.told, "");
  showMixer();
}

/** Silence, or what was heard before it. */
export function toggleSound() {
  chooseSource(mixer.source === "silence" ? mixer.before : "silence");
}

export function setClick(on) {
  sounding.click = on;
  mixer.click.checked = on;
  sounding.levels();
  showMixer();
}

/** As loud as the ear takes it: the square of how far the slider stands. */
function setVolume() {
  sounding.volume = (mixer.volume.value / 100) ** 2;
  recording.setVolume(sounding.volume);
  sounding.levels();
}

function partsTable() {
  mixer.rows = film.parts.map((part, index) => ({
    mute: toggle("mute", "Mute " + part.name, sounding.muted, index),
    solo: toggle("solo", "Hear " + part.name + " alone", sounding.solo, index),
    part,
  }));
  const rows = mixer.rows.map(({ part, mute, solo }) =>
    element("tr", {}, element("th", { scope: "row", text: part.name }), element("td", {}, mute), element("td", {}, solo)));
  mixer.parts = element("table", { class: "parts" }, element("caption", { text: "Parts" }), element("tbody", {}, ...rows));
  return mixer.parts;
}

function toggle(words, title, set, index) {
  const made = button(words, title, () => {
    set.has(index) ? set.delete(index) : set.add(index);
    sounding.levels();
    showMixer();
  }, { "aria-pressed": "false", "data-part": index, class: "small" });
  return made;
}

function showMixer() {
  mixer.rows.forEach(({ mute, solo }, index) => {
    mute.setAttribute("aria-pressed", String(sounding.muted.has(index)));
    solo.setAttribute("aria-pressed", String(sounding.solo.has(index)));
  });
  const heard = film.parts.filter((_, index) => isHeard(index)).length;
  const parts = heard === film.parts.length ? "score" : heard + " of " + count(film.parts.length, "part");
  const what = { score: parts, recording: recording.sound ? recording.name : "choose a sound file", silence: "silent" }[mixer.source];
  say(mixer.summary, what + ", click " + (sounding.click ? "on" : "off"));
  mixer.own.hidden = recording.planned || recording.sound === null;
  const begins = recording.planned ? "The plan puts its first sample at " + momentWords(recording.starts) + ". " : "";
  say(mixer.starts, recording.sound ? begins + endWords() : "");
  mixer.parts.hidden = mixer.source !== "score";
}
