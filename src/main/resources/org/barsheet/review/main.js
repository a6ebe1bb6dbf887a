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
buildFacts();
buildTransport();
buildReader();
buildSystems();
onFrame(drawFrame);
onFrame(showCaption);
onFrame(showFacts);
onFrame(showTransport);
onFrame(showSystems);
onFrame(showReader);
chooseMode("camera");
show(0);
window.addEventListener("resize", () => {
  buildSystems();
  show(clock.frame);
});
document.body.dataset.ready = "true";
