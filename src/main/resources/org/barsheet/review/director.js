/** For the director: why the panel is here, what else could be, and all panels in order. */
{
  let rows = [];
  let why;
  let current = null;

  const build = () => {
    why = element("dl", { class: "pairs" });
    rows = film.shots.map((shot) =>
      element("tr", { "data-shot": shot.index },
        element("td", {}, button(shot.panel, "Go to panel " + shot.panel, () => goTo(shot.start), { class: "link" })),
        element("td", { text: shot.action }),
        element("td", { text: shot.place }),
        element("td", { class: "number", text: timecode(shot.start) }),
        element("td", { class: "number", text: shot.got })));
    current = null;
    const head = ["panel", "action", "at", "timecode", "length"].map((words) => element("th", { scope: "col", text: words }));
    return element("div", {}, why,
      element("div", { class: "table" },
        element("table", {}, element("caption", { text: "All panels" }), element("thead", {}, element("tr", {}, ...head)), element("tbody", {}, ...rows))));
  };

  const pair = (words, ...children) =>
    why.append(element("dt", { text: words }), element("dd", {}, ...children));

  const show = (frame) => {
    const shot = shotAt(frame);
    if (current === shot) {
      return;
    }
    current = shot;
    why.replaceChildren();
    pair("Panel", element("b", { text: shot.panel + " " + shot.action }), shot.locked ? " (locked)" : "");
    pair("Asked", shot.asked);
    pair("Got", shot.got + " from " + shot.place);
    pair("Why here", shot.reason);
    if (shot.rival) {
      pair(shot.free ? "A free choice" : "Rival", shot.rival);
    }
    rows.forEach((row) => row.toggleAttribute("aria-current", row.dataset.shot === String(shot.index)));
  };

  addView("director", { build, show });
  addView("player", { build, show });
  addView("editor", { build, show });
  addView("animator", { build, show });
}
