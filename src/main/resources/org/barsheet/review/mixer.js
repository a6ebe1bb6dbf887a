/** What is heard: the score, a recording or nothing; each part; the click. */

const mixer = { source: "score" };

const SOURCES = [
  { value: "score", words: "Score", title: "The score's notes, played by the page" },
  { value: "recording", words: "Recording", title: "A sound file from your disk" },
  { value: "silence", words: "Silent", title: "No sound" },
];

function buildMixer() {
  mixer.panel = element("div", { id: "mixer", hidden: true });
  mixer.opener = button("Sound", "What is heard", toggleMixer, { id: "do-sound", "aria-expanded": "false", "aria-controls": "mixer" });
  mixer.summary = element("span", { class: "quiet", id: "sound-summary" });
  byId("sound").append(mixer.summary, mixer.opener, mixer.panel);
  const sources = element("div", { class: "choice small", role: "radiogroup", "aria-label": "What is heard" });
  mixer.showSource = choice(sources, SOURCES, chooseSource);
  mixer.click = element("input", { type: "checkbox", id: "click", onchange: () => setClick(mixer.click.checked) });
  mixer.panel.append(sources, element("label", {}, mixer.click, " click on every beat (C)"), recordingPart(), partsTable());
  chooseSource("score");
}

function toggleMixer() {
  mixer.panel.hidden = !mixer.panel.hidden;
  mixer.opener.setAttribute("aria-expanded", String(!mixer.panel.hidden));
}

function recordingPart() {
  mixer.file = element("input", { type: "file", accept: "audio/*,video/*", id: "recording-file", onchange: takeFile });
  mixer.first = element("input", { type: "number", id: "recording-first", value: film.musicStart, onchange: () => {
    recording.firstFrame = Math.round(Number(mixer.first.value)) || 0;
    seek(clock.frame);
  } });
  mixer.recording = element("div", { class: "recording" },
    element("label", {}, "Sound file ", mixer.file),
    element("label", {}, "Its first sample is on film frame ", mixer.first));
  return mixer.recording;
}

function takeFile() {
  const [file] = mixer.file.files;
  if (file) {
    recording.take(file);
    chooseSource("recording");
  }
}

function chooseSource(name) {
  mixer.source = name;
  mixer.showSource(name);
  mixer.recording.hidden = name !== "recording";
  const waits = name === "recording" && recording.sound === null;
  setSource(name === "score" ? sounding : name === "recording" && !waits ? recording : silence);
  showMixer();
}

function setClick(on) {
  sounding.click = on;
  mixer.click.checked = on;
  sounding.levels();
  showMixer();
}

function partsTable() {
  mixer.rows = film.parts.map((part, index) => ({
    mute: toggle("mute", "Mute " + part.name, sounding.muted, index),
    solo: toggle("solo", "Hear " + part.name + " alone", sounding.solo, index),
    part,
  }));
  const rows = mixer.rows.map(({ part, mute, solo }) =>
    element("tr", {}, element("th", { scope: "row", text: part.name }), element("td", {}, mute), element("td", {}, solo)));
  return element("table", { class: "parts" }, element("caption", { text: "Parts" }), element("tbody", {}, ...rows));
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
  const what = { score: parts, recording: recording.name || "choose a sound file", silence: "silent" }[mixer.source];
  say(mixer.summary, what + (mixer.source === "score" ? ", click " + (sounding.click ? "on" : "off") : ""));
}
