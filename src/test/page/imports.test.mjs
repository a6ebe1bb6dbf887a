import assert from "node:assert/strict";
import { readFileSync, readdirSync } from "node:fs";
import { test } from "node:test";

const folder = new URL("../../main/page/", import.meta.url);
const modulesIn = (name) => readdirSync(new URL(name, folder)).filter((each) => each.endsWith(".js")).map((each) => name + each);
const page = modulesIn("./").map((name) => name.slice(2));
const desk = modulesIn("desk/");
const imports = new Map([...page, ...desk].map((name) =>
  [name, [...readFileSync(new URL(name, folder), "utf8").matchAll(/^(?:import|\}).* ?"(\.\.?\/.+)";$/gm)]
    .map(([, other]) => new URL(other, new URL(name, folder)).pathname.slice(folder.pathname.length))]));

/** Walks from a module to all that it needs; `way` leads to it. */
function walk(name, way, seen) {
  assert.ok(!way.includes(name), "a circle: " + [...way, name].join(", "));
  if (!seen.has(name)) {
    seen.add(name);
    imports.get(name).forEach((other) => walk(other, [...way, name], seen));
  }
  return seen;
}

test("modules import one another in no circle, and the page needs them all", () => {
  assert.deepEqual([...walk("main.js", [], new Set())].sort(), page);
});

test("what changes the plan stands on the page, and the page knows nothing of it", () => {
  assert.deepEqual([...walk("desk/desk.js", [], new Set())].sort(), [...page, ...desk].sort());
});
