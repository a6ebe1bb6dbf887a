package org.barsheet.handoff;

import java.util.List;
import org.barsheet.calls.Call;
import org.barsheet.calls.CallAppearance;
import org.barsheet.film.FilmSheet;
import org.barsheet.text.Html;

/** One performer's call as a page to print. */
final class CallPage {

  private static final String STYLE =
      """
      @page { margin: 12mm }
      body { font: 10pt/1.35 system-ui, Arial, sans-serif; color: #1B1F24; background: #FFFFFF;
        max-width: 60em; margin: 1em auto; padding: 0 1em; font-variant-numeric: tabular-nums }
      h1 { font-size: 16pt; margin: 0 } h2 { font-size: 11pt; margin: 1.2em 0 .3em;
        border-bottom: 2px solid #1B1F24; break-after: avoid }
      p.sub { color: #5B6570; margin: 0 }
      table { border-collapse: collapse; width: 100%; font-size: 8.5pt }
      th { text-align: left; vertical-align: bottom; border-bottom: 1.5px solid #1B1F24 }
      th, td { padding: .25em .35em }
      td { border-bottom: 1px solid #C8CED4; vertical-align: top }
      td:nth-child(-n+2) { overflow-wrap: anywhere; min-width: 7em }
      td:nth-child(n+4):nth-child(-n+9) { white-space: nowrap }
      tr { break-inside: avoid } ul { margin: .3em 0; padding-left: 1.3em }
      .fill { border: 1px solid #5B6570; background: #F4F1EA; display: inline-block;
        min-width: 12em; height: 1.4em }
      """;

  private CallPage() {}

  static String of(FilmSheet sheet, Call call) {
    String title = call.performer().name() + " · " + sheet.plan().title();
    String subtitle = call.about() + " · " + FilmWords.counting(sheet.plan().film());
    Html html = Html.page();
    html.empty("meta", "name", "viewport", "content", "width=device-width, initial-scale=1").line();
    html.line("title", title).style(STYLE).close().line().open("body").line();
    html.line("h1", "Call sheet: " + title).line("p", subtitle, "class", "sub");
    seen(html, call);
    sections(html, call.instructions());
    html.open("p").text("By ").element("span", "", "class", "fill").close().line();
    sections(html, Call.CAUTIONS);
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

  private static void sections(Html html, List<Call.Section> sections) {
    for (Call.Section section : sections) {
      html.line("h2", section.heading()).list(section.lines());
    }
  }
}
