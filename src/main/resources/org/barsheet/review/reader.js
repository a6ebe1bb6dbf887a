/** The part of the page that is another one for every reader. */

const reader = { view: "director", tab: "own", views: {}, tabs: {} };

const READERS = [
  { value: "director", words: "Director", title: "Panels, reasons and rivals" },
  { value: "animator", words: "Animator", title: "The exposure column beside the picture" },
  { value: "editor", words: "Editor", title: "Cues, in and out" },
  { value: "player", words: "Player", title: "When to be ready" },
];

/**
 * Adds a view.
 * @param {string} name of the reader
 * @param {{build: () => Node, show: (frame: number) => void}} view
 */
function addView(name, view) {
  reader.views[name] = view;
}

function buildReader() {
  reader.body = element("div", { class: "view" });
  byId("reader").append(reader.body);
  reader.showReader = choice(byId("readers"), READERS, chooseReader);
  chooseReader(reader.view);
}

function chooseReader(name) {
  reader.view = name;
  document.body.dataset.view = name;
  reader.showReader(name);
  reader.body.replaceChildren(reader.views[name].build());
  reader.views[name].show(clock.frame);
}

function showReader(frame) {
  reader.views[reader.view].show(frame);
}
