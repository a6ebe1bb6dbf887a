/** Where the film stands: timecode, frame, bar and beat, and what is under the camera. */

import { barAt, film, placeWords, shotAt } from "./film.js";
import { revealsAt, shownBy } from "./openings.js";
import { byId, count, element, say } from "./page.js";
import { secondsOf, timecode } from "./timecode.js";

const facts = {};

export function buildFacts() {
  facts.timecode = element("p", { class: "timecode", id: "timecode" });
  facts.place = element("p", { class: "place" },
    element("span", { text: "frame " }), (facts.frame = element("b", { id: "frame-number" })), " · ",
    (facts.bar = element("b", { id: "bar-and-beat" })));
  facts.inShot = element("p", { class: "quiet", id: "in-shot" });
  facts.tempo = element("p", { class: "quiet", id: "tempo", title: film.tempo });
  facts.list = element("dl", { class: "pairs" });
  byId("facts").replaceChildren(facts.timecode, facts.place, facts.inShot, facts.tempo, facts.list);
  for (const [name, words] of [["under", "Under the camera"], ["lands", "Lands"], ["open", "Open"], ["seen", "Seen"]]) {
    facts[name] = element("dd", { id: "fact-" + name });
    facts.list.append(element("dt", { text: words }), facts[name]);
  }
}

/** `small-lamp 018, 75.5°` of every opening that moves in the shot. */
function underCamera(shot, frame) {
  return revealsAt(shot, frame).map((reveal) => {
    const { name, words } = shownBy(reveal, frame);
    return name + ", " + words;
  });
}

function landing(shot, frame) {
  return shot.reveals.map((reveal) => {
    const away = reveal.lands - frame;
    const what = film.openings[reveal.opening].name;
    if (away === 0) {
      return "♦ now: " + what + " " + reveal.landing;
    }
    const which = shot.reveals.length > 1 ? what + " " + reveal.way + " " : "";
    return which + (away > 0 ? "in " + count(away, "frame") + " (" + secondsOf(away) + ")" : count(-away, "frame") + " ago");
  });
}

function standing(shot) {
  return shot.open.map(([opening]) => film.openings[opening].name);
}

function seenNow(shot, frame) {
  return shot.seen
    .filter((each) => frame >= each.start && frame < each.end)
    .map((each) => film.performers[each.performer].name + (each.sounding === 0 ? " (silent)" : ""));
}

export function showFacts(frame) {
  const shot = shotAt(frame);
  const bar = barAt(frame);
  say(facts.timecode, timecode(frame));
  say(facts.frame, String(frame));
  say(facts.bar, placeWords(frame));
  say(facts.tempo, bar ? bar.framesPerBeat + " frames per beat · " + bar.meter + " · " + bar.bpm + " bpm" : "");
  say(facts.inShot, "panel " + shot.panel + ", frame " + (frame - shot.start + 1) + " of " + (shot.end - shot.start));
  say(facts.under, underCamera(shot, frame).join("; ") || "the artwork at rest");
  say(facts.lands, landing(shot, frame).join("; ") || "nothing moves");
  say(facts.open, standing(shot).join(", ") || "nothing");
  say(facts.seen, seenNow(shot, frame).join(", ") || "nobody");
}
