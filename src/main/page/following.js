/** The score follows the music: the bar and the beat that sound are marked and kept in sight. */

import { barAt, beatAt, shotAt } from "./film.js";
import { byId } from "./page.js";
import { score } from "./spans.js";

/** Marks the bar and the beat that sound, and keeps their system in sight. */
export function showSystems(frame) {
  const bar = barAt(frame);
  const node = bar && score.bars[bar.index];
  if (!node) {
    return;
  }
  if (score.current !== node) {
    markBar(node);
    keepInSight(node.closest(".system"));
  }
  const inside = frame >= bar.start && frame < bar.start + bar.frames;
  node.classList.toggle("silent", !inside);
  const beat = inside ? beatAt(bar, frame) : 0;
  node.querySelectorAll(".beats i").forEach((each, i) => each.classList.toggle("now", i + 1 === beat));
  const shot = String(shotAt(frame).index);
  if (score.shot !== shot) {
    score.shot = shot;
    byId("score").querySelectorAll(".panel").forEach((each) => each.classList.toggle("now", each.dataset.shot === shot));
  }
}

function markBar(node) {
  if (score.current) {
    score.current.removeAttribute("aria-current");
    score.current.tabIndex = -1;
    score.current.querySelectorAll(".now").forEach((each) => each.classList.remove("now"));
  }
  node.setAttribute("aria-current", "true");
  node.tabIndex = 0;
  score.current = node;
}

/** How often a leap is looked at again, a screen photograph each. */
const LOOKS = 8;

/**
 * Turns the page of the score, never the page as a whole. A leap is made at once and looked at again:
 * systems that were out of sight may be higher than they were taken to be.
 */
function keepInSight(system, looks = LOOKS) {
  const view = byId("score");
  if (view.scrollHeight <= view.clientHeight + 1 || !system.isConnected) {
    return;
  }
  const top = system.getBoundingClientRect().top - view.getBoundingClientRect().top + view.scrollTop;
  const out = top < view.scrollTop || top + system.offsetHeight > view.scrollTop + view.clientHeight;
  const leap = looks < LOOKS || Math.abs(top - view.scrollTop) > view.clientHeight;
  if (out) {
    const calm = window.matchMedia("(prefers-reduced-motion: reduce)").matches;
    view.scrollTo({ top: Math.max(0, top - 8), behavior: calm || leap ? "instant" : "smooth" });
  }
  if (leap && looks > 0 && score.current?.closest(".system") === system) {
    window.requestAnimationFrame(() => keepInSight(system, looks - 1));
  }
}
