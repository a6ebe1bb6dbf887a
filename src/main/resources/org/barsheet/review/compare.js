/** An earlier make beside this one: old and new cuts together, moved cuts marked. */

const compared = { shots: [], words: "" };

const cutBefore = (panel) => compared.shots.find((shot) => shot.panel === panel);

/** Whether a panel begins or ends elsewhere than it did, or is new. */
function cutMoved(shot) {
  const before = cutBefore(shot.panel);
  return !before || before.start !== shot.start || before.end !== shot.end;
}

/** `12 f later`, `3 f earlier`, `as before`. */
function movedWords(now, before) {
  const by = now - before;
  return by === 0 ? "as before" : Math.abs(by) + " f " + (by > 0 ? "later" : "earlier");
}

const hasFrames = (shot) => Number.isInteger(shot?.startFrame) && Number.isInteger(shot?.endFrameExclusive);

/**
 * Takes an earlier `timing.json`.
 * @param {string} text of the file
 * @returns {string} what is wrong with it, or ""
 */
function compareWith(text) {
  let earlier;
  try {
    earlier = JSON.parse(text);
  } catch (damaged) {
    return "The file is damaged: this is not JSON.";
  }
  if (earlier?.format !== "barsheet-timing" || !Array.isArray(earlier.shots)) {
    return "This is no timing.json of a film.";
  }
  if (typeof earlier.film?.frameRate !== "string") {
    return "The file is damaged: it does not say how many frames a second the film has. Choose the timing.json that make wrote.";
  }
  if (!earlier.shots.every(hasFrames)) {
    return "The file is damaged: a shot in it has no first frame or no end. Choose the timing.json that make wrote.";
  }
  const rate = film.rate.numerator + (film.rate.denominator === 1 ? "" : "/" + film.rate.denominator);
  if (earlier.film.frameRate !== rate) {
    return "It counts " + earlier.film.frameRate + " frames a second, this film " + rate + ": frames do not compare.";
  }
  takeCuts(earlier.shots.map((shot) =>
    ({ panel: String(shot.panel), action: String(shot.action), start: Number(shot.startFrame), end: Number(shot.endFrameExclusive) })));
  return "";
}

/** Takes cuts to compare with: panel, action, first frame, end. */
function takeCuts(shots) {
  compared.shots = shots;
  const gone = compared.shots.filter((before) => !film.shots.some((shot) => shot.panel === before.panel));
  const moved = film.shots.filter(cutMoved).length;
  compared.words = moved === 0 && gone.length === 0
    ? "✓ Every cut is where it was."
    : count(moved, "panel") + " changed" + (gone.length ? ", gone: " + gone.map((shot) => shot.panel).join(", ") : "");
}

if (film.earlier) {
  takeCuts(film.earlier);
}

/** The cuts as they were, under the bars of a system; nothing where none is compared or all stayed. */
function cutsBefore(bars, frames) {
  if (!film.shots.some((shot) => overlaps(shot, frames) && compared.shots.length > 0 && cutMoved(shot))) {
    return [];
  }
  const boxes = compared.shots.filter((before) => overlaps(before, frames)).map((before) => {
    const now = film.shots.find((shot) => shot.panel === before.panel);
    const words = now ? (cutMoved(now) ? "was here, now " + movedWords(now.start, before.start) : "as before") : "gone";
    const made = element("span", { class: "was" + (now && !cutMoved(now) ? " same" : ""), title: before.panel + " " + before.action + ": " + words, text: "was " + before.panel });
    span(made, bars, Math.max(before.start, frames.start), Math.min(before.end, frames.end));
    return made;
  });
  return [element("div", { class: "before", role: "group", "aria-label": "cuts of the earlier make" }, ...boxes)];
}

/** The part of the director's view that compares. */
function comparison() {
  const told = element("p", { role: "status", text: compared.words });
  const file = element("input", { type: "file", accept: ".json,application/json", id: "earlier-file", onchange: async () => {
    const problem = file.files[0] ? compareWith(await file.files[0].text()) : "";
    if (problem) {
      say(told, problem);
      return;
    }
    rebuildSystems();
    chooseTab("own");
    show(clock.frame);
    announce(compared.words);
  } });
  const changed = compared.shots.length ? film.shots.filter(cutMoved).map(changeRow) : [];
  return element("section", { class: "comparison" },
    element("h2", { text: "Compare with an earlier make" }),
    element("label", {}, "Its timing.json ", file), told,
    ...(changed.length ? [table("Changed", ["panel", "began", "begins", "moved", "length"], changed)] : []));
}

function changeRow(shot) {
  const before = cutBefore(shot.panel);
  if (!before) {
    return row({}, goLink(shot.panel, shot.start), "", timecode(shot.start), "new", (shot.end - shot.start) + " f");
  }
  const longer = shot.end - shot.start - (before.end - before.start);
  return row({}, goLink(shot.panel, shot.start), timecode(before.start), timecode(shot.start), movedWords(shot.start, before.start),
    (shot.end - shot.start) + " f" + (longer === 0 ? "" : " (" + (longer > 0 ? "+" : "−") + Math.abs(longer) + ")"));
}
