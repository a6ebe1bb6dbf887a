package org.barsheet.handoff.card;

import java.util.ArrayList;
import java.util.List;
import org.barsheet.film.FilmSheet;
import org.barsheet.plan.Film;
import org.barsheet.shooting.Setup;
import org.barsheet.shooting.Step;
import org.barsheet.text.Html;

/** Shooting cards to print: each half a sheet of paper, two of them come out of one. */
public final class ShootingCards {

  private static final String STYLE =
      """
      @page { size: PAPER landscape; margin: 0 }
      * { box-sizing: border-box }
      body { margin: 0; background: #FFFFFF; color: #1B1F24;
        font: 9pt/1.25 Arial, "Liberation Sans", sans-serif; font-variant-numeric: tabular-nums }
      .sheet { display: flex; width: WIDEmm; height: HIGHmm; break-after: page; overflow: hidden }
      .card { display: flex; flex-direction: column; width: 50%; height: 100%;
        padding: 7mm 7mm 5mm }
      .card + .card { border-left: .2mm dashed #5B6570 }
      p { margin: 0 } h1 { font-size: 13pt; line-height: 1.1; margin: 0 }
      header { display: flex; justify-content: space-between; gap: 4mm;
        border-bottom: .5mm solid #1B1F24; padding-bottom: 1mm }
      header p, footer { color: #5B6570; font-size: 8pt } h1, .how { overflow-wrap: anywhere }
      .facts { text-align: right; flex: 0 0 54% } .facts p:first-child { color: #1B1F24 }
      .how { font-size: 8pt; margin: 1mm 0 } .how .mind { font-weight: bold }
      table { table-layout: fixed; border-collapse: separate; border-spacing: 0; width: 100%;
        border: .4mm solid #1B1F24 }
      th { background: #0072B2; color: #FFFFFF; font-size: 8pt; line-height: 1.1;
        text-align: right; vertical-align: bottom; padding: .6mm 1.2mm }
      td, th { overflow: hidden; text-overflow: ellipsis }
      col.photograph { width: 20mm } col.tick { width: 9mm } col.note { width: 17mm }
      td { height: var(--row); padding: 0 1.2mm; line-height: 1; text-align: right;
        white-space: nowrap; border-right: .15mm solid #C8CED4 }
      tbody tr:nth-child(even) { background: #F4F1EA }
      tr.change td { border-top: .5mm solid #1B1F24 } tr.plate td { border-top: .15mm solid #1B1F24 }
      td.hand, td.photograph { font-weight: bold } td.photograph { font-size: 10pt }
      th.words, td.words, td.note { text-align: left } tr.plate .words, tr.plate .photograph {
        font-size: 8pt; white-space: normal }
      tr.plate .photograph { padding: 0 .4mm; white-space: nowrap } th.tick { text-align: center }
      td.tick { background: #FFFFFF; border-left: .3mm solid #1B1F24;
        border-right: .3mm solid #1B1F24; border-bottom: .3mm solid #1B1F24 }
      tr:last-child td.tick { border-bottom: 0 }
      td.note { color: #5B6570; font-size: 8pt }
      .rest col.name { width: 36mm } .rest col.panels { width: 22mm }
      .rest td.words { white-space: normal; line-height: 1.25; padding: .8mm 1.2mm }
      .cautions { border: .25mm solid #1B1F24; padding: 1mm 1.5mm; margin-top: 1.5mm; font-size: 8pt }
      footer { margin-top: auto; padding-top: 1mm; display: flex; justify-content: space-between }
      @media print { th, tr, td { print-color-adjust: exact; -webkit-print-color-adjust: exact } }
      """;

  private ShootingCards() {}

  /** One page with every card of the shooting plan, in the order of work. */
  public static String page(FilmSheet film) {
    List<Html> cards = new ArrayList<>();
    for (Setup setup : film.shooting().setups()) {
      for (List<Step> card : setup.cards()) {
        add(cards, sections(film, setup, card));
      }
    }
    Html html = Html.page();
    html.line("title", "Shooting cards · " + film.plan().title());
    html.style(style(film)).close().line().open("body").line();
    for (int first = 0; first < cards.size(); first += 2) {
      html.open("div", "class", "sheet").line();
      cards.subList(first, Math.min(first + 2, cards.size())).forEach(html::add);
      html.close().line();
    }
    return html.close().line().close().line().toString();
  }

  private static List<Html> sections(FilmSheet film, Setup setup, List<Step> card) {
    return card.get(0).take() instanceof Setup.Run run
        ? new ShootingCard(film, setup, run).sections()
        : new RestCard(film, setup, card).sections();
  }

  /** The parts of one card begin on a sheet of their own, so that the first two lie together. */
  private static void add(List<Html> cards, List<Html> parts) {
    if (parts.size() > 1 && cards.size() % 2 == 1) {
      cards.add(new Html());
    }
    cards.addAll(parts);
  }

  /** Two cards lie side by side, so the paper lies across. */
  private static String style(FilmSheet film) {
    Film.Paper paper = film.plan().film().paper();
    return STYLE
        .replace("PAPER", paper.name())
        .replace("WIDE", Double.toString(paper.height()))
        .replace("HIGH", Double.toString(paper.width()));
  }
}
