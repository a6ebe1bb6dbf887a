/** Panels dragged on the score: they snap to returns, marks, bar lines and beats. */

import { film } from "../film.js";
import { byId, element, say } from "../page.js";
import { chooseTab } from "../reader.js";
import { score } from "../spans.js";
import { goTo } from "../steps.js";
import { tryOut } from "./live.js";
import { make } from "./panelform.js";
import { putInPanel } from "./panels.js";
import { placeNear } from "./places.js";

/** Pixels a pointer goes before a press becomes a drag. */
const STILL = 5;

const drag = { shot: null };

/** The frame under a point of the score, or nothing outside its systems. */
export function frameAt(x, y) {
  const under = score.systems.find(({ made }) => {
    const box = made.getBoundingClientRect();
    return y >= box.top && y <= box.bottom;
  });
  if (!under) {
    return undefined;
  }
  const box = under.made.querySelector(".bars").getBoundingClientRect();
  const share = ((x - box.left) / box.width) * score.columns;
  const at = Math.max(0, Math.min(under.bars.length - 1, Math.floor(share)));
  const bar = under.bars[at];
  return bar.start + Math.max(0, Math.min(1, share - at)) * bar.frames;
}

function pressed(event) {
  const box = event.target.closest(".panel");
  if (!box || event.button !== 0 || box.classList.contains("goes-on")) {
    return;
  }
  Object.assign(drag, { shot: film.shots[Number(box.dataset.shot)], box, x: event.clientX, y: event.clientY, moved: false, place: null, told: null });
  box.setPointerCapture(event.pointerId);
}

function moved(event) {
  if (!drag.shot) {
    return;
  }
  if (!drag.moved && Math.hypot(event.clientX - drag.x, event.clientY - drag.y) < STILL) {
    return;
  }
  drag.moved = true;
  drag.box.classList.add("dragged");
  const frame = frameAt(event.clientX, event.clientY);
  const place = frame === undefined ? null : placeNear(frame);
  if (place?.words !== drag.place?.words) {
    drag.place = place;
    showTag(place, place ? place.title : "nowhere");
    if (place) {
      foresee(drag.shot, place);
    }
  }
  drag.tag.style.left = Math.min(window.innerWidth - 260, event.clientX + 14) + "px";
  drag.tag.style.top = Math.max(0, event.clientY - 46) + "px";
}

function showTag(place, words) {
  if (!drag.tag) {
    drag.tag = element("div", { id: "drag-tag", role: "status" }, element("b"), element("span"));
    document.body.append(drag.tag);
  }
  drag.tag.classList.remove("refused");
  say(drag.tag.firstChild, "panel " + drag.shot.panel + " on " + words);
  say(drag.tag.lastChild, "");
}

/** Asks what would move, or why the place is impossible, while the pointer stays there. */
async function foresee(shot, place) {
  const told = await tryOut({ edits: [putInPanel(shot, "cue", place.words)] });
  if (drag.place !== place || !drag.tag) {
    return;
  }
  drag.tag.classList.toggle("refused", told.refused !== undefined);
  say(drag.tag.lastChild, told.refused ? "× " + told.refused[0].sentence : told.moved.slice(0, 3).join("; ") || "nothing moves");
}

async function released() {
  const { shot, place, moved: was, box } = drag;
  end();
  if (shot && was) {
    const swallow = (event) => event.stopImmediatePropagation();
    box.addEventListener("click", swallow, { capture: true });
    window.setTimeout(() => box.removeEventListener("click", swallow, { capture: true }), 50);
    if (place) {
      chooseTab("panel");
      const told = await make([putInPanel(shot, "cue", place.words)]);
      const now = film.shots.find(({ panel }) => panel === shot.panel) ?? shot;
      goTo(told.refused ? shot.start : now.start);
    }
  }
}

function end() {
  drag.tag?.remove();
  drag.box?.classList.remove("dragged");
  Object.assign(drag, { shot: null, tag: null, place: null, moved: false });
}

export function listenToDrags() {
  const view = byId("score");
  view.addEventListener("pointerdown", pressed);
  view.addEventListener("pointermove", moved);
  view.addEventListener("pointerup", released);
  view.addEventListener("pointercancel", end);
  document.addEventListener("keydown", (event) => {
    if (event.key === "Escape" && drag.shot) {
      end();
    }
  });
}
