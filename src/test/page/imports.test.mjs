import assert from "node:assert/strict";
import { readFileSync, readdirSync } from "node:fs";
import { test } from "node:test";

const folder = new URL("../../main/page/", import.meta.url);
const modules = readdirSync(folder).filter((name) => name.endsWith(".js"));
const imports = new Map(modules.map((name) =>
  [name, [...readFileSync(new URL(name, folder), "utf8").matchAll(/^(?:import|\}).* ?"\.\/(.+)";$/gm)].map(([, other]) => other)]));

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
  assert.deepEqual([...walk("main.js", [], new Set())].sort(), modules);
});
