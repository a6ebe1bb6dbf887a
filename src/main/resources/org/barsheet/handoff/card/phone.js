"use strict";
(() => {
  const day = JSON.parse(document.getElementById("day").textContent);
  const KEY = "barsheet-taken " + day.name;
  const items = day.items;
  const by = (id) => document.getElementById(id);

  // What was said is kept where the browser lets a local file keep it.
  let keeps = true;
  let told = {};
  try {
    told = JSON.parse(localStorage.getItem(KEY) || "{}");
    localStorage.setItem(KEY, JSON.stringify(told));
  } catch (refused) {
    keeps = false;
  }

  const keep = () => {
    try {
      localStorage.setItem(KEY, JSON.stringify(told));
    } catch (refused) {
      keeps = false;
    }
  };

  const two = (number) => String(number).padStart(2, "0");
  const now = () => {
    const at = new Date();
    return at.getFullYear() + "-" + two(at.getMonth() + 1) + "-" + two(at.getDate()) + "T"
      + two(at.getHours()) + ":" + two(at.getMinutes()) + ":" + two(at.getSeconds());
  };

  // A likeness that has changed is another photograph, whatever its name.
  const of = (item) => {
    const one = told[item.photograph];
    return one && one.likeness === item.likeness ? one : null;
  };
  const mark = (item) => {
    const one = of(item);
    return one && one.mark ? one.mark : item.mark;
  };
  const note = (item) => (of(item) || {}).note || "";
  const isPhotograph = (item) => item.likeness !== "";

  const tell = (item, values) => {
    told[item.photograph] = Object.assign({ likeness: item.likeness }, of(item), values);
    keep();
  };

  const firstOpen = (from) => {
    for (let step = 0; step < items.length; step++) {
      const index = (from + step) % items.length;
      if (mark(items[index]) !== "taken") {
        return index;
      }
    }
    return items.length;
  };

  let at = firstOpen(0);

  const make = (name, text, group) => {
    const made = document.createElement(name);
    made.textContent = text;
    made.className = group || "";
    return made;
  };

  const row = (label, value, group) => {
    const made = make("div", "", group);
    made.append(make("dt", label), make("dd", value));
    return made;
  };

  const SVG = "http://www.w3.org/2000/svg";
  const line = (degrees, color, dash, mirrored) => {
    const angle = degrees * Math.PI / 180;
    const one = document.createElementNS(SVG, "line");
    const x = 30 + 62 * Math.cos(angle);
    const ends = { x1: mirrored ? 86 : 30, y1: 74, x2: mirrored ? 116 - x : x, y2: 74 - 62 * Math.sin(angle) };
    Object.entries(ends).forEach(([key, value]) => one.setAttribute(key, value));
    one.setAttribute("stroke", color);
    one.setAttribute("stroke-width", dash ? 2 : 4);
    if (dash) {
      one.setAttribute("stroke-dasharray", "4 3");
    }
    return one;
  };

  // The flap from the side: where it is set, and dashed where it goes next.
  const drawing = (item, next) => {
    const drawn = by("flap");
    drawn.replaceChildren();
    drawn.toggleAttribute("hidden", item.degrees === null);
    if (item.degrees !== null) {
      const mirrored = item.mirrored;
      drawn.append(line(0, "#5B6570", false, mirrored));
      if (next && next.degrees !== null && next.title === item.title) {
        drawn.append(line(next.degrees, "#9AA4AF", true, mirrored));
      }
      drawn.append(line(item.degrees, getComputedStyle(document.documentElement)
        .getPropertyValue("--lamp").trim(), false, mirrored));
      drawn.setAttribute("aria-label", "the flap at " + item.degrees + " degrees");
    }
  };

  const say = (words) => {
    by("said").textContent = words;
  };

  const show = () => {
    const photographs = items.filter(isPhotograph);
    const done = photographs.filter((item) => mark(item) === "taken").length;
    by("count").textContent = done + " of " + photographs.length + " today";
    by("bar").firstElementChild.style.width = (photographs.length ? 100 * done / photographs.length : 100) + "%";
    const over = at >= items.length;
    by("middle").classList.toggle("over", over);
    by("facts").replaceChildren();
    by("again").disabled = over || !isPhotograph(items[at]);
    by("taken").disabled = over;
    if (over) {
      by("head").textContent = day.date;
      by("title").textContent = "Everything of today is taken.";
      by("number").textContent = "√";
      by("number").className = "";
      by("of").textContent = "Save the file and\nput it beside the plan.";
      by("before").textContent = "";
      by("written").textContent = "";
      by("caution").textContent = "! Lamps off, cables out of the way, blades capped.";
      by("flap").toggleAttribute("hidden", true);
      return;
    }
    const item = items[at];
    const next = items[at + 1];
    by("head").textContent = day.date + " · setup " + item.setup;
    by("title").replaceChildren(item.title, make("small", item.panels ? " · " + item.panels : ""));
    by("number").textContent = item.number;
    by("number").className = /^\d+$/.test(item.number) ? "" : "words";
    const state = mark(item);
    by("of").replaceChildren((item.of ? "of " + item.of + "\n" : ""),
      state === "taken" ? make("span", "taken √", "done")
        : state === "again" ? make("span", "take again", "again") : "next");
    by("before").textContent = item.before;
    item.rows.forEach(([label, value, group]) => by("facts").append(row(label, value, group)));
    if (next) {
      const hand = next.rows.find((one) => one[2] === "hand");
      by("facts").append(row("then " + next.number, next.title !== item.title ? next.title
        : hand ? hand[0] + " " + hand[1] : "", "next"));
    }
    by("written").textContent = note(item) ? "note: " + note(item) : "";
    by("caution").textContent = "! " + item.caution;
    by("taken").textContent = isPhotograph(item) ? "taken √" : "set up √";
    drawing(item, next);
    by("middle").scrollTop = 0;
  };

  const go = (index) => {
    at = index;
    show();
  };

  const taken = () => {
    if (at < items.length) {
      const item = items[at];
      tell(item, { mark: "taken", at: now() });
      say(item.photograph + (isPhotograph(item) ? " taken" : " done"));
      go(firstOpen(at + 1));
    }
  };

  const again = () => {
    if (at < items.length && isPhotograph(items[at])) {
      tell(items[at], { mark: "again", at: now() });
      say(items[at].photograph + ": take it again");
      show();
    }
  };

  const back = () => {
    at = at > 0 ? Math.min(at, items.length) - 1 : 0;
    say("");
    show();
  };

  const forward = () => {
    at = Math.min(items.length, at + 1);
    show();
  };

  const save = () => {
    const list = Object.keys(told).filter((name) => told[name].likeness !== "" && (told[name].mark || told[name].note))
      .map((name) => ({ photograph: name, mark: told[name].mark || "", likeness: told[name].likeness,
        at: told[name].at || "", note: told[name].note || "" }));
    const text = JSON.stringify({ format: "barsheet-taken", version: 1, title: day.film, taken: list }, null, 1);
    const link = document.createElement("a");
    const address = URL.createObjectURL(new Blob([text], { type: "application/json" }));
    link.href = address;
    link.download = day.name + "-taken.json";
    link.click();
    window.setTimeout(() => URL.revokeObjectURL(address), 10000);
    say("saved as " + link.download + ": put it beside the plan");
  };

  const writing = (open) => {
    by("note-form").hidden = !open;
    by("middle").hidden = open;
    if (open) {
      by("note-text").value = note(items[at]);
      by("note-text").focus();
    }
  };

  const write = () => {
    tell(items[at], { note: by("note-text").value.trim() });
    writing(false);
    show();
  };

  const light = () => {
    document.documentElement.classList.toggle("light");
    show();
  };

  // The screen stays on where the browser grants it.
  const wake = () => {
    if (navigator.wakeLock && document.visibilityState === "visible") {
      navigator.wakeLock.request("screen").then(() => {
        say("The screen stays on.");
      }, () => {});
    }
  };
  document.addEventListener("visibilitychange", wake);
  document.addEventListener("pointerdown", wake, { once: true });

  const canNote = () => at < items.length && isPhotograph(items[at]);
  by("taken").addEventListener("click", taken);
  by("again").addEventListener("click", again);
  by("back").addEventListener("click", back);
  by("save").addEventListener("click", save);
  by("light").addEventListener("click", light);
  by("note").addEventListener("click", () => canNote() && writing(true));
  by("note-keep").addEventListener("click", write);
  const keys = { Enter: taken, " ": taken, a: again, Backspace: back, ArrowLeft: back, ArrowRight: forward,
    s: save, l: light, n: () => canNote() && writing(true) };
  document.addEventListener("keydown", (event) => {
    if (event.target === by("note-text")) {
      if (event.key === "Escape") {
        writing(false);
      }
      return;
    }
    const other = event.target.tagName === "BUTTON" && event.target.id !== "taken"
      && (event.key === "Enter" || event.key === " ");
    const action = keys[event.key];
    if (action && !other && !event.ctrlKey && !event.metaKey && !event.altKey && !event.repeat) {
      event.preventDefault();
      action();
    }
  });

  show();
  wake();
  if (!keeps) {
    say("This browser keeps nothing for local files. Save before you close the page.");
  }
})();
