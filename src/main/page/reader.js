/** The part of the page that is another one for every reader, beside findings and notes. */

import { clock, show } from "./clock.js";
import { film } from "./film.js";
import { noted } from "./notebook.js";
import { byId, choice, element, say } from "./page.js";

export const reader = { view: "director", tab: "own", views: {}, tabs: {}, listeners: [] };

const READERS = [
  { value: "director", words: "Director", title: "Panels, reasons and alternatives" },
  { value: "animator", words: "Animator", title: "The exposure column beside the frame" },
  { value: "editor", words: "Editor", title: "Cues, in and out" },
  { value: "performer", words: "Performer", title: "When to be ready" },
];

/** Tabs and what each is called at the moment. */
const tabs = [
  { name: "own", words: () => READERS.find(({ value }) => value === reader.view).words },
  { name: "findings", words: () => "Findings " + film.findings.length },
  { name: "notes", words: () => "Notes " + noted.list.length },
];

/** Adds a tab with a view of the same name, before the page is put together. */
export function addTab(name, words, view) {
  tabs.splice(1, 0, { name, words });
  addView(name, view);
}

/**
 * Adds a view.
 * @param {string} name of the reader, or of a tab
 * @param {{build: () => Node, show: (frame: number) => void}} view
 */
export function addView(name, view) {
  reader.views[name] = view;
}

/** Calls `build()` whenever another reader is chosen, before the frame is shown anew. */
export function onReader(build) {
  reader.listeners.push(build);
}

export function buildReader() {
  reader.body = element("div", { class: "view", role: "tabpanel", id: "reader-body", tabindex: 0 });
  const list = element("div", { class: "tabs", role: "tablist", "aria-label": "For the reader" });
  for (const { name } of tabs) {
    reader.tabs[name] = element("button", {
      type: "button", role: "tab", id: "tab-" + name, "aria-controls": "reader-body", onclick: () => chooseTab(name),
    });
    list.append(reader.tabs[name]);
  }
  list.addEventListener("keydown", stepTab);
  byId("reader").append(list, reader.body);
  reader.showReader = choice(byId("readers"), READERS, chooseReader);
  chooseReader(reader.view);
}

function stepTab(event) {
  const names = Object.keys(reader.tabs);
  const way = { ArrowRight: 1, ArrowLeft: -1 }[event.key];
  if (way) {
    event.preventDefault();
    event.stopPropagation();
    chooseTab(names[(names.indexOf(reader.tab) + way + names.length) % names.length]);
    reader.tabs[reader.tab].focus();
  }
}

export function chooseReader(name) {
  reader.view = name;
  document.body.dataset.view = name;
  reader.showReader(name);
  chooseTab("own");
  reader.listeners.forEach((build) => build());
  show(clock.frame);
}

export function chooseTab(name) {
  reader.tab = name;
  refreshReader();
  reader.body.scrollTop = 0;
  byId("reader").scrollTop = 0;
}

/** Builds the tab chosen anew. */
export function refreshReader() {
  nameTabs();
  const view = viewNow();
  reader.body.replaceChildren(view.build());
  view.show(clock.frame);
}

function nameTabs() {
  for (const { name, words } of tabs) {
    const tab = reader.tabs[name];
    say(tab, words());
    tab.setAttribute("aria-selected", String(name === reader.tab));
    tab.tabIndex = name === reader.tab ? 0 : -1;
  }
}

const viewNow = () => reader.views[reader.tab === "own" ? reader.view : reader.tab];

export function showReader(frame) {
  viewNow().show(frame);
}
