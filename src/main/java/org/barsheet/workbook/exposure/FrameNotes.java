package org.barsheet.workbook.exposure;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.OptionalLong;
import java.util.Set;
import java.util.TreeMap;
import org.barsheet.exposure.PlannedReveal;
import org.barsheet.film.FilmSheet;
import org.barsheet.film.SheetNote;
import org.barsheet.film.SheetNote.Column;
import org.barsheet.timing.Finding;
import org.barsheet.timing.Finding.Concerns;
import org.barsheet.timing.Finding.Severity;
import org.barsheet.workbook.pen.SheetPlaces;
import org.barsheet.workbook.pen.Signs;

/** What is written beside the frames, one text a cell. */
public final class FrameNotes {

  private record Cell(long frame, Column column) {}

  private final Map<Cell, List<String>> words = new HashMap<>();
  private final Map<Long, String> motifs = new HashMap<>();
  private final Set<Long> accents = new HashSet<>();
  private final Set<Long> landings = new HashSet<>();

  /** Where the cues begin that panels sit on. */
  private final Set<Long> cues = new HashSet<>();

  public FrameNotes(FilmSheet film) {
    for (PlannedReveal reveal : film.reveals()) {
      accents.add(reveal.accentFrame());
      landings.add(reveal.landsFrame());
    }
    film.timing().shots().stream().map(shot -> shot.cue().frame()).forEach(cues::add);
    for (SheetNote note : film.notes()) {
      Cell cell = new Cell(note.frame(), note.column());
      add(cell, note.text());
      if (!note.motif().isEmpty()) {
        motifs.merge(note.frame(), note.motif(), FrameNotes::joined);
      }
    }
    worst(film)
        .forEach(
            (frame, severity) ->
                add(
                    new Cell(frame, Column.ACTION),
                    Signs.of(severity) + " see " + SheetPlaces.FILM));
  }

  /** Where the animator must know of a fault or a doubt: the worst that is found on each frame. */
  private static Map<Long, Severity> worst(FilmSheet film) {
    Map<Long, Severity> worst = new TreeMap<>();
    for (Finding finding : film.findings()) {
      if (finding.concerns() == Concerns.ANIMATOR && finding.severity() != Severity.REMARK) {
        frame(film, finding)
            .ifPresent(frame -> worst.merge(frame, finding.severity(), FrameNotes::worse));
      }
    }
    return worst;
  }

  /** Its frame, or the first of its panel; none for the film as a whole. */
  private static OptionalLong frame(FilmSheet film, Finding finding) {
    return finding.frame().isPresent()
        ? finding.frame()
        : film.timing().shots().stream()
            .filter(shot -> shot.panel().name().equals(finding.panel()))
            .mapToLong(shot -> shot.frames().start())
            .findFirst();
  }

  private static Severity worse(Severity one, Severity other) {
    return one.compareTo(other) >= 0 ? one : other;
  }

  /** A pitch that several parts or returns sound at once is said once. */
  private void add(Cell cell, String text) {
    String between = separator(cell.column());
    List<String> said = words.computeIfAbsent(cell, c -> new ArrayList<>());
    if (said.stream().noneMatch(one -> one.equals(text) || one.endsWith(between + text))) {
      said.removeIf(one -> text.endsWith(between + one));
      said.add(text);
    }
  }

  private static String separator(Column column) {
    return column == Column.ACTION ? "; " : ", ";
  }

  private static String joined(String signs, String sign) {
    return List.of(signs.split(" ", -1)).contains(sign) ? signs : signs + " " + sign;
  }

  /** Signs of the motifs that sound on a frame. */
  String motifs(long frame) {
    return motifs.getOrDefault(frame, "");
  }

  /** The words of a cell, with the sign of the accent where a reveal lands. */
  public String text(long frame, Column column) {
    List<String> said = words.getOrDefault(new Cell(frame, column), List.of());
    String text = String.join(separator(column), said);
    return isMarked(frame, column) ? (Signs.ACCENT + " " + text).strip() : text;
  }

  /** Whether a cell bears the accent: what sounds on the accent, what happens on the landing. */
  boolean isMarked(long frame, Column column) {
    return switch (column) {
      case SOUND -> accents.contains(frame);
      case ACTION -> lands(frame);
      case BEAT -> false;
    };
  }

  /** Whether a reveal lands on a frame. */
  boolean lands(long frame) {
    return landings.contains(frame);
  }

  /** Whether a frame must stay in sight even where nothing moves. */
  boolean mustShow(long frame) {
    return !text(frame, Column.ACTION).isEmpty() || accents.contains(frame) || cues.contains(frame);
  }
}
