/** The page kept equal with the desk: what it knows of the plan, and asking it for changes. */

import { clock, seek, show } from "../clock.js";
import { buildFacts } from "../facts.js";
import { film, layFilm, onFilm, subtitle } from "../film.js";
import { announce, byId, say } from "../page.js";
import { refreshReader } from "../reader.js";
import { buildScene } from "../scene.js";
import { rebuildSystems } from "../systems.js";
import { buildVeil } from "../veil.js";

/** What the desk says of the plan beside its film. */
export const desk = {
  version: -1, plan: "", folder: "", problems: [], moved: [], undo: false, redo: false, tree: {},
  findings: { error: 0, warning: 0 },
};

const hearers = [];
const makers = [];

/** Calls `told()` whenever the desk says something new. */
export function onDesk(told) {
  hearers.push(told);
}

async function fetched(address, body) {
  const options = body === undefined
    ? {}
    : { method: "POST", headers: { "Content-Type": "application/json" }, body: JSON.stringify(body) };
  const answer = await window.fetch(address, options);
  if (!answer.ok) {
    throw new Error(await answer.text());
  }
  return answer.json();
}

async function answered(address, body) {
  try {
    return await fetched(address, body);
  } catch (refused) {
    return { refused: [{ sentence: refused.message.trim() || "the desk doesn't answer", remedy: "" }] };
  }
}

/** Asks the desk for edits of the plan; what comes of them is shown in every window. */
export async function ask(edits) {
  const told = await answered("/.desk/do", { version: desk.version, ...edits });
  await look();
  return told;
}

/** Asks the desk what would come of edits, which it then does not make. */
export const tryOut = (edits) => answered("/.desk/try", edits);

/** Asks the desk to `undo`, `redo`, `make` or `stop`. */
export async function order(word) {
  const told = await answered("/.desk/" + word, {});
  await look();
  if (told.refused) {
    say(byId("desk-told"), told.refused[0].sentence);
  }
  return told;
}

/** Asks the desk for something that takes a while to find, such as `figures`. */
export const offered = (what) => answered("/.desk/" + what, {});

/** Sends a drawing to be kept beside the plan; told where it is then. */
export async function sendDrawing(file) {
  const answer = await window.fetch("/.desk/drawing/" + encodeURIComponent(file.name), { method: "POST", body: file });
  return answer.ok ? answer.json() : { refused: [{ sentence: (await answer.text()).trim(), remedy: "" }] };
}

/** Calls `told(state)` while sheets are made. */
export function onMaking(told) {
  makers.push(told);
}

/** Whether the page must be loaded again: what it was put together from is another. */
function isOtherMusic(other) {
  const fixed = (of) => JSON.stringify([of.parts, of.recording, of.rate, of.width, of.height]);
  return fixed(other) !== fixed(film);
}

const sound = () => JSON.stringify([film.notes, film.bars.map((bar) => bar.clicks)]);

/** Fetches the latest state and shows it. */
async function look() {
  const { desk: now, film: laid } = await fetched("/.desk/state");
  if (now.version === desk.version) {
    return;
  }
  const first = desk.version < 0;
  Object.assign(desk, now);
  if (first) {
    refreshReader();
  } else if (laid) {
    if (isOtherMusic(laid)) {
      window.location.reload();
      return;
    }
    lay(laid);
  }
  desk.findings = { error: 0, warning: 0 };
  film.findings.forEach(({ severity }) => (desk.findings[severity] = (desk.findings[severity] ?? 0) + 1));
  hearers.forEach((told) => told());
  announce(desk.problems.length ? "The plan can't be laid." : desk.moved.join(". "));
}

function lay(laid) {
  const before = sound();
  layFilm(laid);
  if (clock.playing && sound() !== before) {
    seek(clock.frame);
  }
}

/** Puts the film on the page anew, keeping what is looked at. */
function redraw() {
  say(byId("title"), film.title);
  say(byId("subtitle"), subtitle());
  buildScene();
  buildVeil();
  buildFacts();
  const score = byId("score").scrollTop;
  const list = byId("reader").scrollTop;
  const typed = whatIsTyped();
  rebuildSystems();
  byId("score").scrollTop = score;
  refreshReader();
  byId("reader").scrollTop = list;
  show(clock.frame);
  typeAgain(typed);
}

/** The field that somebody types in, and what stands in it. */
function whatIsTyped() {
  const { id, value, tagName, selectionStart } = document.activeElement ?? {};
  return id ? { id, value, changed: tagName === "INPUT" && value !== document.activeElement.defaultValue, at: selectionStart } : null;
}

/** Goes on typing where the page was built anew meanwhile. */
function typeAgain(typed) {
  const node = typed && byId(typed.id);
  if (node && node !== document.activeElement) {
    if (typed.changed && node.defaultValue !== typed.value) {
      node.value = typed.value;
    }
    node.focus({ preventScroll: true });
    if (typed.at !== null && node.setSelectionRange && node.type === "text") {
      node.setSelectionRange(typed.at, typed.at);
    }
  }
}

/** Begins to listen, once the page stands. */
export function listen() {
  let standing = false;
  onFilm(() => standing && redraw());
  standing = true;
  const events = new EventSource("/.desk/live");
  events.addEventListener("laid", ({ data }) => Number(data) !== desk.version && look());
  events.addEventListener("making", ({ data }) => makers.forEach((told) => told(JSON.parse(data))));
  events.addEventListener("error", () => say(byId("desk-told"), "The desk doesn't answer. Is it closed? Run barsheet desk again."));
  events.addEventListener("open", () => say(byId("desk-told"), ""));
}
