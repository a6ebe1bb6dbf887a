/** Everything doubtful about the film, each with a link to its place. */

import { film } from "./film.js";
import { element } from "./page.js";
import { addView, reader } from "./reader.js";
import { goLink } from "./tables.js";

const SIGNS = { error: "×", warning: "!", remark: "·" };

export const severitySign = (finding) => SIGNS[finding.severity];

const shotOf = (finding) => film.shots.find((shot) => shot.panel === finding.panel);

const frameOf = (finding) => finding.frame ?? (shotOf(finding) ? shotOf(finding).start : undefined);

const item = (finding) => {
  const frame = frameOf(finding);
  const where = [finding.panel ? "panel " + finding.panel : "", finding.place].filter(Boolean).join(", ");
  return element("li", { class: "finding " + finding.severity },
    element("p", {}, element("b", { text: severitySign(finding) + " " + finding.severity }), " for " + finding.concerns + " ",
      frame === undefined ? where : goLink(where || "frame " + frame, frame)),
    element("p", { text: finding.sentence }),
    element("p", { class: "quiet", text: finding.remedy }));
};

const build = () => {
  const concerned = reader.view === "performer" ? "performers" : reader.view;
  const first = film.findings.filter((finding) => finding.concerns === concerned);
  const others = film.findings.filter((finding) => finding.concerns !== concerned);
  if (film.findings.length === 0) {
    return element("p", { text: "√ No findings." });
  }
  const part = (title, list) => (list.length ? [element("h2", { text: title }), element("ul", { class: "findings" }, ...list.map(item))] : []);
  return element("div", {}, ...part("For the " + reader.view, first), ...part("For others", others),
    element("p", { class: "quiet", text: "This page warns; it certifies nothing. Local codes and licensed people come first." }));
};

addView("findings", { build, show: () => {} });
