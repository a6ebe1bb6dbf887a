/** Panels as the plan writes them, and the edits that change them. */

import { clock } from "../clock.js";
import { film, shotAt } from "../film.js";
import { desk } from "./live.js";
import { placeNear } from "./places.js";

/** The panels of the plan, each a table of what was typed. */
export const typedPanels = () => (Array.isArray(desk.tree?.panels) ? desk.tree.panels : []);

/** Where in the plan's list the panel of a shot stands. */
export function indexOf(shot) {
  const at = typedPanels().findIndex((panel) => String(panel.panel ?? "") === shot.panel);
  return at < 0 ? shot.index : at;
}

export const typedOf = (shot) => typedPanels()[indexOf(shot)] ?? {};

/** An edit of one value of a panel; without a value the key goes. */
export const putInPanel = (shot, key, value) => {
  const way = ["panels", indexOf(shot), key];
  return value === "" ? { remove: way } : { put: way, value };
};

/** `8a` after 8, `8b` where 8a is taken. */
function nextName(name) {
  const taken = new Set(film.shots.map((shot) => shot.panel));
  const number = Number(name);
  if (Number.isInteger(number) && shotAt(film.last).panel === name) {
    return String(number + 1);
  }
  const letters = "abcdefghijklmnopqrstuvwxyz";
  const stem = name.replace(/[a-z]$/, "");
  return [...letters].map((letter) => stem + letter).find((each) => !taken.has(each)) ?? name + "-2";
}

/** A new panel where the film stands. */
export const newPanelHere = () => newPanelAt(clock.frame);

/** A new panel on a place near a frame: the panel that plays there ends at it. */
export function newPanelAt(frame) {
  const shot = shotAt(frame);
  const place = placeNear(frame);
  const name = nextName(shot.panel);
  return { name, edits: [{ insert: ["panels", indexOf(shot) + 1], value: { panel: name, action: "New panel", cue: place.words } }] };
}

/** A panel and the one after it as one: on the place of the first, with what both show. */
export const joinWithNext = (shot) => [{ join: shot.panel }];

/** A panel as two: the second begins on the place where the film stands, with the same drawing. */
export function splitHere(shot) {
  const name = nextName(shot.panel);
  return { name, edits: [{ split: shot.panel, second: name, cue: placeNear(clock.frame).words }] };
}

export const removePanel = (shot) => [{ remove: ["panels", indexOf(shot)] }];

export const movePanel = (shot, by) => [{ move: ["panels", indexOf(shot)], to: indexOf(shot) + by }];
