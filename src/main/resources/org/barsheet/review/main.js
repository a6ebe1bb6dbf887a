/** Puts the page together. */

const MODES = [
  { value: "camera", words: "Camera", title: "What the camera sees, every opening as planned" },
  { value: "drawing", words: "Drawing", title: "The panel's own drawing" },
  { value: "map", words: "Whole artwork", title: "The whole artwork with the camera's field" },
];

function subtitle() {
  const versions = film.inputs.map((input) => input.role + " " + input.version).join(" · ");
  return [film.rate.words, film.duration, count(film.shots.length, "panel"), versions].join(" · ");
}

function chooseMode(mode) {
  scene.mode = mode;
  showMode(mode);
  drawFrame(clock.frame);
  showCaption(clock.frame);
}

function showCaption(frame) {
  const shot = shotAt(frame);
  say(byId("caption"), shot.panel + " · " + shot.action);
}

const showMode = choice(byId("modes"), MODES, chooseMode);

say(byId("subtitle"), subtitle());
buildScene();
buildVeil();
buildFacts();
buildTransport();
buildMixer();
buildSystems();
buildReader();
onFrame(drawFrame);
onFrame(showVeil);
onFrame(showCaption);
onFrame(showFacts);
onFrame(showTransport);
onFrame(showSystems);
onFrame(showReader);
chooseMode("camera");
show(0);
window.addEventListener("resize", () => {
  buildSystems();
  if (reader.view === "animator") {
    chooseTab(reader.tab);
  }
  show(clock.frame);
});

/** For checks from outside: the film, its clock, and the sound of a stretch of it. */
window.reviewPage = { film, clock, timecode, seek, play, pause, sounding, recording, rendered };
document.body.dataset.ready = String(Math.round(performance.now()));
