package org.barsheet.workbook;

import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import org.barsheet.cues.Cue;
import org.barsheet.timing.Finding;
import org.barsheet.timing.Finding.Severity;
import org.barsheet.timing.FoldedFindings;
import org.barsheet.timing.MotifTally;
import org.barsheet.workbook.exposure.ExposureSheets;
import org.barsheet.workbook.pen.Address;
import org.barsheet.workbook.pen.Book;
import org.barsheet.workbook.pen.Column;
import org.barsheet.workbook.pen.Edges;
import org.barsheet.workbook.pen.Ink;
import org.barsheet.workbook.pen.Line;
import org.barsheet.workbook.pen.Look;
import org.barsheet.workbook.pen.SheetFrame;
import org.barsheet.workbook.pen.SheetPen;
import org.barsheet.workbook.pen.SheetPlaces;
import org.barsheet.workbook.pen.SheetWords;
import org.barsheet.workbook.pen.Signs;

/** Whether everything is well, and what to do first if not; then figures, settings and cautions. */
final class FilmWorksheet {

  private static final String NAME = SheetPlaces.FILM;

  private static final int SIGN = FilmSections.SIGN;
  private static final int SEVERITY = 1;
  private static final int WHO = 2;
  private static final int PANEL = 3;
  private static final int PLACE = 4;
  private static final int SENTENCE = 5;
  private static final int REMEDY = 6;

  private static final List<Column> COLUMNS =
      List.of(
          Column.words("", 16),
          Column.words("level", 52),
          Column.words("who acts", 56),
          Column.words("panel", 36),
          Column.words("where", 64),
          Column.words("finding", 100, 3),
          Column.words("what to do", 80, 2));

  private static final Look WORDS = Look.BODY.atTop().wrapped().edged(Edges.NONE.bottom(Line.HAIR));

  /** Words beside words, kept apart by a line. */
  private static final Look DIVIDED = WORDS.edged(WORDS.edges().left(Line.HAIR));

  private final Book book;
  private final ExposureSheets exposures;
  private final SheetFrame frame;
  private final SheetPen pen;
  private int row = SheetFrame.FIRST_ROW;

  private FilmWorksheet(Book book, ExposureSheets exposures) {
    this.book = book;
    this.exposures = exposures;
    this.frame = book.frame(NAME, book.portrait(), COLUMNS, fact(book.film().findings()));
    this.pen = frame.pen();
  }

  private static String fact(List<Finding> findings) {
    Map<Severity, Long> counts =
        findings.stream()
            .collect(
                Collectors.groupingBy(
                    Finding::severity, () -> new EnumMap<>(Severity.class), Collectors.counting()));
    return SheetWords.count(counts.getOrDefault(Severity.ERROR, 0L), "error")
        + "   "
        + SheetWords.count(counts.getOrDefault(Severity.WARNING, 0L), "warning")
        + "   "
        + SheetWords.count(counts.getOrDefault(Severity.REMARK, 0L), "remark");
  }

  static void write(Book book, ExposureSheets exposures) {
    new FilmWorksheet(book, exposures).write();
  }

  private void write() {
    frame.heading(16);
    List<Finding> findings = FoldedFindings.of(book.film().findings());
    findings.stream().filter(FilmWorksheet::isUrgent).forEach(this::finding);
    if (findings.stream().noneMatch(FilmWorksheet::isUrgent)) {
      pen.row(row++, 14).text(SIGN, Signs.DONE, WORDS.inBold());
      pen.text(SEVERITY, "no errors, no warnings", Look.BODY);
    }
    book.name("Findings", new Address(NAME, SheetFrame.HEADING_ROW, SIGN), row - 1, REMEDY);
    returns();
    FilmSections first = new FilmSections(book, exposures, pen, row);
    first.openings();
    first.tempo();
    row = first.row();
    remarks(findings.stream().filter(finding -> !isUrgent(finding)).toList());
    FilmSections last = new FilmSections(book, exposures, pen, row);
    last.cautions();
    last.settings();
    last.inputs();
    frame.finish("this workbook is a plan, not a permit: local codes come first");
  }

  /** Whether somebody has to act before the film is made; a remark can wait. */
  private static boolean isUrgent(Finding finding) {
    return finding.severity() != Severity.REMARK;
  }

  private void finding(Finding finding) {
    pen.row(row++, 14);
    pen.text(SIGN, Signs.of(finding.severity()), WORDS.inBold().centered().on(ground(finding)));
    pen.text(SEVERITY, word(finding.severity().name()), WORDS.inBold());
    pen.text(WHO, word(finding.concerns().name()), WORDS);
    pen.label(PANEL, finding.panel(), WORDS.in(Ink.QUAY).left());
    book.index()
        .shotOf(finding.panel())
        .ifPresent(shot -> pen.link(PANEL, SheetPlaces.ofShot(shot)));
    place(finding);
    pen.text(SENTENCE, finding.sentence(), WORDS);
    pen.text(REMEDY, finding.remedy(), DIVIDED);
  }

  private void remarks(List<Finding> remarks) {
    if (!remarks.isEmpty()) {
      row = FilmSections.heading(pen, row, "Remarks");
      int first = row;
      remarks.forEach(this::finding);
      book.name("Remarks", new Address(NAME, first, SIGN), row - 1, REMEDY);
    }
  }

  private void place(Finding finding) {
    boolean hasFrame = finding.frame().isPresent();
    String place =
        finding.place().isEmpty() && hasFrame
            ? "frame " + finding.frame().getAsLong()
            : finding.place();
    pen.text(PLACE, place, hasFrame ? WORDS.in(Ink.QUAY) : WORDS);
    if (hasFrame && !place.isEmpty()) {
      pen.link(PLACE, exposures.addressOf(finding.frame().getAsLong()));
    }
  }

  private static Ink ground(Finding finding) {
    return switch (finding.severity()) {
      case ERROR -> Ink.RUST;
      case WARNING -> Ink.LAMP;
      case REMARK -> Ink.PAPER;
    };
  }

  private static String word(String name) {
    return name.toLowerCase(Locale.ROOT);
  }

  private void returns() {
    row = FilmSections.heading(pen, row, "Returns of the motifs");
    pen.row(row++, 14);
    pen.text(SEVERITY, "motif", Look.PENCIL);
    pen.text(WHO, "found", Look.PENCIL.centered());
    pen.text(PANEL, "used", Look.PENCIL.centered());
    pen.text(PLACE, "spare", Look.PENCIL.centered());
    pen.text(SENTENCE, "which are spare (the sheet Cues lists them all)", Look.PENCIL);
    book.film().timing().tallies().forEach(this::tally);
  }

  private void tally(MotifTally tally) {
    pen.row(row++, 14);
    pen.text(SIGN, tally.sign(), WORDS.inBold().centered());
    pen.text(SEVERITY, tally.motif(), WORDS.inBold());
    pen.number(WHO, tally.found(), WORDS.centered());
    pen.number(PANEL, tally.used(), WORDS.centered());
    pen.number(PLACE, tally.spare(), WORDS.inBold().centered());
    pen.text(SENTENCE, spare(tally), WORDS);
    String likely =
        tally.likely() == 0 ? "" : Signs.QUESTION + " " + tally.likely() + " of them only likely";
    pen.text(REMEDY, likely, DIVIDED);
  }

  private String spare(MotifTally tally) {
    List<String> spare =
        book.film().timing().cues().stream()
            .filter(cue -> cue.kind() == Cue.Kind.RETURN && cue.number() > 0)
            .filter(cue -> cue.name().equals(tally.motif()) && book.index().shotOn(cue).isEmpty())
            .map(cue -> cue.title() + " (" + cue.place() + ")")
            .toList();
    return SheetWords.listed(spare);
  }
}
