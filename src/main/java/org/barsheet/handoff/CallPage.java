package org.barsheet.handoff;

import org.barsheet.calls.Call;
import org.barsheet.calls.CallAppearance;
import org.barsheet.film.FilmSheet;
import org.barsheet.text.Html;

/** One performer's call as a page to print. */
final class CallPage {

  private static final String STYLE =
      """
      @page { margin: 10mm 12mm }
      body { font: 9pt/1.28 Arial, "Liberation Sans", system-ui, sans-serif; color: #1B1F24;
        background: #FFFFFF; max-width: 186mm; margin: 1em auto; padding: 0 1em;
        font-variant-numeric: tabular-nums }
      h1 { font-size: 16pt; margin: 0 } h2 { font-size: 10.5pt; margin: .7em 0 .2em;
        border-bottom: 1.5px solid #1B1F24; break-after: avoid }
      p { margin: .3em 0 } p.sub { color: #5B6570; margin: 0 }
      table { border-collapse: collapse; width: 100%; font-size: 8.5pt }
      th { text-align: left; vertical-align: bottom; border-bottom: 1px solid #1B1F24 }
      th, td { padding: .2em .35em }
      td { border-bottom: 1px solid #C8CED4; vertical-align: top }
      td:nth-child(-n+2) { overflow-wrap: anywhere; min-width: 6em }
      td:nth-child(n+3):nth-child(-n+7) { white-space: nowrap }
      tr { break-inside: avoid } ul { margin: .2em 0; padding-left: 1.2em }
      .drawings { display: flex; flex-wrap: wrap; gap: 4mm; margin: 1.5mm 0 }
      .cut { fill: #C8CED4; stroke: #5B6570; stroke-width: .2 }
      .hole { fill: #FFFFFF; stroke: #1B1F24; stroke-width: .7 }
      .body, .head { fill: #F4F1EA; stroke: #1B1F24; stroke-width: .3 }
      .instrument { stroke: #E69F00; stroke-linecap: round }
      text { font-size: 2.9px; fill: #1B1F24 }
      .fill { border-bottom: 1px solid #1B1F24; background: #F4F1EA; display: inline-block;
        min-width: 14em; height: 1.3em; vertical-align: bottom }
      @media (min-width: 150mm), print { .words { columns: 2; column-gap: 7mm } }
      .words h2:first-child { margin-top: 0 }
      @media print { body { margin: 0; padding: 0; max-width: none } .words { margin-top: .7em } }
      """;

  private CallPage() {}

  static String of(FilmSheet sheet, Call call) {
    String title = call.performer().name() + " · " + sheet.plan().title();
    Html html = Html.page();
    html.empty("meta", "name", "viewport", "content", "width=device-width, initial-scale=1").line();
    html.line("title", title).style(STYLE).close().line().open("body").line();
    html.line("h1", "Call sheet: " + title).line("p", call.about(), "class", "sub");
    seen(html, call);
    html.open("div", "class", "words").line();
    call.instructions().forEach(section -> section(html, call, section));
    call.toFillIn().forEach(what -> fill(html, what));
    Call.CAUTIONS.forEach(section -> section(html, call, section));
    html.close().line();
    return html.close().line().close().line().toString();
  }

  private static void seen(Html html, Call call) {
    html.line("h2", Call.SEEN_HEADING);
    if (call.seen().isEmpty()) {
      html.line("p", Call.NOT_SEEN);
      return;
    }
    html.open("table").line();
    html.open("thead").row("th", CallAppearance.HEADINGS).close().line();
    html.open("tbody").line();
    call.seen().forEach(appearance -> html.row("td", appearance.cells()));
    html.close().line().close().line();
  }

  private static void section(Html html, Call call, Call.Section section) {
    html.line("h2", section.heading());
    if (section.heading().equals(Call.FRAME_HEADING) && !call.framings().isEmpty()) {
      html.open("div", "class", "drawings").line();
      call.framings().forEach(framing -> FramingDrawing.draw(html, framing));
      html.close().line();
    }
    html.list(section.lines());
  }

  private static void fill(Html html, String what) {
    html.open("p").text(what + ": ").element("span", "", "class", "fill").close().line();
  }
}
