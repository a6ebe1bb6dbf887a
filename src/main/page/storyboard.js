/** The storyboard as it is printed: panels with place, length and action, six to a page. */

import { film, subtitle } from "./film.js";
import { byId, count, element } from "./page.js";
import { secondsOf, timecode } from "./timecode.js";

const PANELS_A_PAGE = 6;

function printedPanel(shot) {
  const frames = shot.end - shot.start;
  const drawing = shot.drawing === undefined
    ? element("div", { class: "no-drawing", text: shot.leftOut || "no drawing" })
    : element("img", { src: film.drawings[shot.drawing], alt: "" });
  const moves = shot.reveals.map((reveal) =>
    film.openings[reveal.opening].name + " " + reveal.way + ", lands " + timecode(reveal.lands));
  return element("article", {},
    drawing,
    element("h3", {}, shot.panel + " " + shot.action),
    element("p", { text: shot.place + " · " + timecode(shot.start) + " · " + shot.got }),
    element("p", { text: count(frames, "frame") + ", " + secondsOf(frames) + (moves.length ? " · ♦ " + moves.join("; ♦ ") : "") }));
}

function printedPage(shots, page, pages) {
  return element("section", {},
    element("header", {}, element("b", { text: film.title + " · storyboard" }), element("span", { text: subtitle() })),
    element("div", { class: "six" }, ...shots.map(printedPanel)),
    element("footer", {},
      element("span", { text: "A plan, not a permit: local codes come first." }),
      element("span", { text: "page " + page + " of " + pages })));
}

/** Builds the pages only when somebody prints. */
function buildStoryboard() {
  const pages = Math.ceil(film.shots.length / PANELS_A_PAGE);
  const made = Array.from({ length: pages }, (_, page) =>
    printedPage(film.shots.slice(page * PANELS_A_PAGE, (page + 1) * PANELS_A_PAGE), page + 1, pages));
  byId("storyboard").replaceChildren(...made);
}

window.addEventListener("beforeprint", buildStoryboard);
window.addEventListener("afterprint", () => byId("storyboard").replaceChildren());
