/** Puts the page together. */

import "./animator.js";
import { clock, onFrame, pause, play, seek, show } from "./clock.js";
import "./director.js";
import "./editor.js";
import { buildFacts, showFacts } from "./facts.js";
import { film, shotAt, subtitle } from "./film.js";
import "./findings.js";
import { showSystems } from "./following.js";
import { buildMixer } from "./mixer.js";
import "./notes.js";
import { byId, choice, say } from "./page.js";
import "./performer.js";
import { buildReader, chooseTab, onReader, reader, showReader } from "./reader.js";
import { recording } from "./recording.js";
import { buildScene, drawFrame, scene } from "./scene.js";
import { rendered, sounding } from "./sounding.js";
import "./storyboard.js";
import { buildSystems } from "./systems.js";
import { timecode } from "./timecode.js";
import { buildTransport, showTransport } from "./transport.js";
import { buildVeil, showVeil } from "./veil.js";

const MODES = [
  { value: "camera", words: "Camera", title: "What the camera sees, every opening as planned" },
  { value: "drawing", words: "Drawing", title: "The panel's own drawing" },
  { value: "map", words: "Whole artwork", title: "The whole artwork with the camera's field" },
];

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
byId("subtitle").title = "Version words are the first digits of each file's SHA-256: the same words, the same file";
buildScene();
buildVeil();
buildFacts();
buildTransport();
buildMixer();
buildSystems();
onReader(buildSystems);
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
