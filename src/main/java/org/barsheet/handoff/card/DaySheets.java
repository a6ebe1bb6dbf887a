package org.barsheet.handoff.card;

import java.util.List;
import org.barsheet.film.FilmSheet;
import org.barsheet.shooting.CameraView;
import org.barsheet.shooting.DayLine;
import org.barsheet.shooting.DayLine.Kind;
import org.barsheet.shooting.DaySheet;
import org.barsheet.shooting.Setup;
import org.barsheet.shooting.WorkDay;
import org.barsheet.text.Html;

/** A page for each day of the shoot, to print and pin up beside the copy stand. */
public final class DaySheets {

  private static final String STYLE =
      """
      @page { size: PAPER; margin: 12mm }
      body { margin: 0; background: #FFFFFF; color: #1B1F24;
        font: 9pt/1.3 Arial, "Liberation Sans", sans-serif; font-variant-numeric: tabular-nums }
      section { break-after: page; padding: 4mm 0 } section:last-child { break-after: auto }
      h1 { font-size: 16pt; margin: 0 } p { margin: 0 } .quiet { color: #5B6570; font-size: 8pt }
      table { border-collapse: collapse; width: 100%; margin: 3mm 0 }
      td, th { text-align: left; vertical-align: top; padding: 1mm 1.2mm;
        border-bottom: .15mm solid #C8CED4 }
      th { font-size: 8pt; border-bottom: .5mm solid #1B1F24; vertical-align: bottom }
      td.hours, td.number, td.reference { white-space: nowrap } td.number { text-align: right }
      tr { break-inside: avoid } tr.setup td { font-weight: bold; background: #F4F1EA;
        border-top: .5mm solid #1B1F24 }
      tr.boxes td { border-bottom: .3mm solid #1B1F24 } .boxes span { display: inline-block;
        width: 18%; margin-right: 1.5%; border: .3mm solid #1B1F24; height: 9mm; font-size: 8pt;
        padding: .5mm 1mm; box-sizing: border-box; color: #5B6570; background: #FFFFFF }
      tr.break td { color: #5B6570 } tr.night td { font-weight: bold } .now { font-weight: bold }
      .box { display: inline-block; width: 3.5mm; height: 3.5mm; border: .3mm solid #1B1F24;
        margin-right: 1mm; vertical-align: -0.6mm; background: #FFFFFF }
      .cautions { border: .25mm solid #1B1F24; padding: 1mm 1.5mm; font-size: 8pt }
      @media print { tr, td { print-color-adjust: exact; -webkit-print-color-adjust: exact } }
      """;

  private static final List<String> BOXES =
      List.of("lens", "aperture", "shutter", "ISO", "white balance");

  private final FilmSheet film;
  private final Html html = Html.page();

  private DaySheets(FilmSheet film) {
    this.film = film;
  }

  /** All days on one page each. */
  public static String page(FilmSheet film) {
    return new DaySheets(film).page();
  }

  private String page() {
    html.line("title", "Day sheets · " + film.plan().title());
    html.style(STYLE.replace("PAPER", film.plan().film().paper().name()));
    html.close().line().open("body").line();
    for (WorkDay day : film.shooting().days()) {
      day(DaySheet.of(film.shooting(), day));
    }
    return html.close().line().close().line().toString();
  }

  private void day(DaySheet day) {
    html.open("section").line();
    html.line("h1", day.title());
    html.line(
        "p",
        film.plan().title()
            + " · "
            + day.photographs()
            + (day.photographs() == 1 ? " photograph" : " photographs")
            + " · hours of work since the morning, breaks not counted",
        "class",
        "quiet");
    html.open("table").line().open("thead");
    html.row(
        "th",
        List.of(
            "hours",
            "card",
            "do, from the top down",
            "first do this; seen open meanwhile",
            "photographs",
            "reference: first, last"));
    html.close().line().open("tbody").line();
    day.lines().forEach(this::line);
    html.close().close().line();
    html.line("p", "! " + String.join(" ", day.cautions()), "class", "cautions");
    html.close().line();
  }

  private void line(DayLine line) {
    switch (line.kind()) {
      case SETUP -> setup(line);
      case TAKE -> take(line);
      case BREAK, NIGHT -> {
        html.open("tr", "class", line.kind() == Kind.BREAK ? "break" : "night");
        html.element("td", "").element("td", line.words(), "colspan", "5").close().line();
      }
    }
  }

  private void setup(DayLine line) {
    Setup setup = film.shooting().setups().get(line.setup() - 1);
    html.open("tr", "class", "setup").element("td", line.hours(), "class", "hours");
    html.element("td", line.label());
    html.element("td", line.words() + camera(setup), "colspan", "4").close().line();
    html.open("tr", "class", "boxes").element("td", "").element("td", "");
    html.open("td", "colspan", "4");
    BOXES.forEach(box -> html.element("span", box));
    html.close().close().line();
  }

  /** {@code : field 610 × 343 mm, lens 50 mm, about 897 mm away; light dusk; backing green}. */
  private String camera(Setup setup) {
    String lens =
        film.plan()
            .workshop()
            .camera()
            .map(camera -> ", lens " + Amounts.tenth(camera.lensMillimeters()) + " mm")
            .orElse("");
    String light = setup.model().light().isEmpty() ? "" : "; light " + setup.model().light();
    String backing =
        setup.model().backing().isEmpty() ? "" : "; backing " + setup.model().backing();
    return setup.view().map(view -> ": " + field(view) + lens).orElse("") + light + backing;
  }

  private static String field(CameraView view) {
    String field =
        "field "
            + Math.round(view.millimetersWide())
            + " × "
            + Math.round(view.millimetersHigh())
            + " mm";
    return view.distanceMillimeters().isPresent()
        ? field + ", about " + Math.round(view.distanceMillimeters().getAsDouble()) + " mm away"
        : field;
  }

  private void take(DayLine line) {
    html.open("tr").element("td", line.hours(), "class", "hours").element("td", line.label());
    html.element("td", line.words()).open("td");
    for (String before : line.before().split("\n", -1)) {
      boolean now = before.startsWith("!") || before.startsWith("open now");
      html.element("div", before, "class", now ? "now" : "");
    }
    html.close().element("td", Integer.toString(line.taken().size()), "class", "number");
    html.open("td", "class", "reference").element("span", "", "class", "box").text(line.first());
    if (line.taken().size() > 1) {
      html.empty("br").element("span", "", "class", "box").text(line.last());
    }
    html.close().close().line();
  }
}
