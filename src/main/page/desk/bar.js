/** The desk's bar in the masthead: the plan's file, undo, make, what stands in the way, what moved. */

import { button, byId, count, element, say } from "../page.js";
import { desk, onDesk, onMaking, order } from "./live.js";
import { refusal, showOutcome } from "./outcome.js";

const bar = { edits: [] };

export function buildBar() {
  bar.file = element("span", { class: "quiet", id: "desk-file" });
  bar.told = element("span", { id: "desk-told", role: "status" });
  bar.totals = element("span", { class: "quiet", id: "desk-totals" });
  bar.undo = button("Undo", "Take the last change back (Ctrl+Z)", () => order("undo"), { id: "do-undo" });
  bar.redo = button("Redo", "Make it again (Ctrl+Shift+Z)", () => order("redo"), { id: "do-redo" });
  bar.make = button("Make the sheets", "Write the workbook, the page and all files", makeOrStop, { id: "do-make", class: "first" });
  bar.news = element("div", { id: "desk-news", hidden: true });
  bar.made = element("div", { id: "desk-made", role: "status", hidden: true });
  byId("subtitle").after(bar.file, bar.told);
  byId("readers").before(element("div", { id: "desk-bar", role: "group", "aria-label": "The plan" }, bar.undo, bar.redo, bar.totals, bar.make));
  byId("spread").before(element("div", { id: "desk-told-all" }, bar.news, bar.made));
  document.addEventListener("keydown", pressed);
}

function pressed(event) {
  const typing = /^(INPUT|TEXTAREA)$/.test(event.target.tagName);
  if ((event.ctrlKey || event.metaKey) && event.key.toLowerCase() === "z" && !typing) {
    event.preventDefault();
    order(event.shiftKey ? "redo" : "undo");
  }
}

function makeOrStop() {
  order(bar.going ? "stop" : "make");
}

function problem({ place, sentence, remedy }) {
  return element("li", { class: "finding error" },
    element("p", {}, element("b", { text: "× " + (place || desk.plan) }), " " + sentence),
    ...(remedy ? [element("p", { class: "quiet", text: remedy })] : []));
}

/** What keeps the plan from being laid as it is, with the fixes as buttons. */
const inTheWay = ({ place, sentence, ...more }) =>
  refusal({ ...more, sentence: (place || desk.plan) + ": " + sentence }, [], showFixed);

/** What came of a fix is shown as any change is; why it can't be, in place of the problems. */
function showFixed(told) {
  if (told.refused || told.asked) {
    showOutcome(bar.news, told, []);
  }
}

function totals() {
  const many = (severity) => count(desk.findings[severity], severity);
  return many("error") + " · " + many("warning");
}

function showBar() {
  const state = desk.problems.length ? "can't be laid" : "saved";
  say(bar.file, desk.plan + " · " + state);
  say(bar.totals, totals());
  bar.undo.disabled = !desk.undo;
  bar.redo.disabled = !desk.redo;
  bar.news.hidden = desk.problems.length + desk.moved.length === 0;
  bar.news.replaceChildren(...(desk.problems.length
    ? [element("p", {}, element("b", { text: count(desk.problems.length, "thing") + " to put right; the page shows the film before" })),
      ...desk.problems.map(inTheWay)]
    : [element("p", {}, element("b", { text: "Moved: " }), desk.moved.slice(0, 5).join(" · ") + (desk.moved.length > 5 ? " · and " + (desk.moved.length - 5) + " more" : ""))]));
}

function link(address) {
  return element("a", { href: address.split("/").map(encodeURIComponent).join("/"), target: "_blank", text: address.replace(/^.*\//, "") });
}

/** What everybody opens, then all the files. */
function madeFiles(made) {
  const links = (addresses) => addresses.flatMap((address) => [link(address), " "]);
  const first = made.filter((address) => /^[^/]+\/[^/]+\.(html|xlsx)$/.test(address));
  return element("div", { class: "links" }, element("b", { text: "√ Made: " }), ...links(first),
    element("details", {}, element("summary", { text: "all " + count(made.length, "file") + " in " + desk.folder }),
      element("p", {}, ...links(made))));
}

/** Shows how far the sheets are, then their files. */
function showMaking({ step, made, stopped, refused }) {
  bar.going = step !== undefined;
  say(bar.make, bar.going ? "Stop" : "Make the sheets");
  bar.made.hidden = false;
  const parts = step ? [element("p", { text: step + " …" })]
    : stopped ? [element("p", { text: "Stopped. The sheets before are unchanged." })]
    : refused ? [element("ul", { class: "findings" }, ...refused.map(problem))]
    : [madeFiles(made)];
  bar.made.replaceChildren(...parts, ...(step ? [] : [button("Close", "Close this message", () => (bar.made.hidden = true), { class: "small" })]));
}

onDesk(showBar);
onMaking(showMaking);
