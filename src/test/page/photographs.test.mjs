import assert from "node:assert/strict";
import { test } from "node:test";
import "./film.mjs";
import { film } from "../../main/page/film.js";

// The module builds a group of a drawing as it loads.
globalThis.document.createElementNS = () => ({ setAttribute() {}, append() {} });
const { photographOf } = await import("../../main/page/photographs.js");

const [opens] = film.shots[1].reveals;
const [movement] = film.movements;

test("a reveal whose photographs were not taken is drawn", () => {
  assert.equal(photographOf(opens, 100), undefined);
});

test("a photograph lies about its opening as its view lies about the opening it was taken for", () => {
  Object.assign(movement, { photographs: ["", "data:1", "data:2"], keys: ["", "key:1", ""], view: [10, 1, 8, 4.5], about: [12, 2, 4, 2] });
  assert.deepEqual(photographOf(opens, 100), { address: "data:1", key: "key:1", rect: [0, 2, 8, 4.5] });
  assert.equal(photographOf(opens, 110).address, "data:2");
});

test("one that is missing is drawn among those that were taken", () => {
  movement.photographs[2] = "";
  assert.equal(photographOf(opens, 110), undefined);
});
