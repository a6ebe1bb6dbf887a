package org.barsheet.motif;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.apache.commons.numbers.fraction.BigFraction;
import org.barsheet.motif.find.OccurrenceFinder;
import org.barsheet.motif.find.PlayedOccurrenceFinder;
import org.barsheet.score.Score;
import org.barsheet.score.ScoreReader;
import org.barsheet.suggestions.MotifSuggestions;
import org.barsheet.suggestions.Suggestion;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Measures the finder on a folder of pieces with known occurrences, named by the system property
 * {@code evaluation.folder} (or {@code motifs} in it): {@code queries.csv} (piece, onset_q, pitch,
 * dur_q), {@code occurrences.csv} (piece, onset_q, aligned_onset_q, form), {@code
 * unlisted_candidates.csv} (piece, onset_q: neither right nor wrong) and the folders {@code voices}
 * and {@code merged} of MIDI files.
 */
@Tag("evaluate")
class FugueEvaluation {

  private static final double TOLERANCE_QUARTERS = 0.5;
  private static final double TOLERANCE_SECONDS = 0.25;
  private static final int QUARTER = 960;

  /** Right, wrong and missed returns. */
  private static final class Tally {
    private int right;
    private int wrong;
    private int missed;

    private String line(String name) {
      double precision = right / (double) Math.max(1, right + wrong);
      double recall = right / (double) Math.max(1, right + missed);
      double f1 = 2.0 * right / Math.max(1, 2 * right + wrong + missed);
      return String.format(
          Locale.ROOT,
          "%-32s right %3d wrong %3d missed %3d  P %.3f R %.3f F1 %.3f",
          name,
          right,
          wrong,
          missed,
          precision,
          recall,
          f1);
    }
  }

  private final Path folder = folder(Path.of(System.getProperty("evaluation.folder", "")));

  private static Path folder(Path named) {
    Path motifs = named.resolve("motifs");
    return Files.isDirectory(motifs) ? motifs : named;
  }

  @ParameterizedTest
  @ValueSource(strings = {"voices", "merged"})
  void precision_and_recall_are_printed(String version) {
    Map<String, Tally> tallies = new TreeMap<>();
    Map<String, List<MotifNote>> queries = queries();
    queries.forEach((piece, notes) -> measure(version, piece, notes, tallies));
    tallies.forEach((name, tally) -> System.out.println(version + " " + tally.line(name)));
    assertThat(queries).isNotEmpty();
  }

  @ParameterizedTest
  @ValueSource(doubles = {0.05, 0.12, 0.2})
  void free_playing_is_measured_too(double sway) {
    Tally tally = new Tally();
    queries().forEach((piece, notes) -> measurePlayed(piece, notes, sway, tally));
    System.out.println(tally.line("played, tempo strays by " + sway));
    assertThat(tally.right).isPositive();
  }

  @ParameterizedTest
  @ValueSource(strings = {"voices", "merged"})
  void the_rank_of_the_subject_among_suggestions_is_printed(String version) {
    int first = 0;
    for (String piece : queries().keySet()) {
      Score score = ScoreReader.read(folder.resolve(version).resolve(piece + ".mid"));
      List<Suggestion> suggestions = MotifSuggestions.of(score);
      int rank = 0;
      while (rank < suggestions.size() && !isSubject(score, piece, suggestions.get(rank))) {
        rank++;
      }
      first += rank == 0 ? 1 : 0;
      System.out.printf(
          Locale.ROOT, "%s suggestions %s: subject at rank %d%n", version, piece, rank + 1);
    }
    System.out.println(version + " suggestions: subject first in " + first + " of the pieces");
    assertThat(first).isPositive();
  }

  /** Whether at least half of the entries and half of the suggested returns are the same music. */
  private boolean isSubject(Score score, String piece, Suggestion suggestion) {
    double quarter = score.ticksPerQuarter();
    double length =
        Notes.parse(suggestion.notes()).stream()
            .mapToDouble(note -> note.onset().add(note.length()).doubleValue())
            .max()
            .orElseThrow();
    List<CSVRecord> entries = rows("occurrences.csv", piece);
    long met =
        entries.stream()
            .filter(
                row ->
                    suggestion.returns().stream()
                        .anyMatch(tick -> shares(row, tick / quarter, length)))
            .count();
    long right =
        suggestion.returns().stream()
            .filter(tick -> entries.stream().anyMatch(row -> shares(row, tick / quarter, length)))
            .count();
    return 2 * met >= entries.size() && 2 * right >= suggestion.returns().size();
  }

  /** Whether an entry and a return have half of the time in common that they cover together. */
  private static boolean shares(CSVRecord row, double start, double length) {
    double from = Double.parseDouble(row.get("onset_q"));
    double to = Double.parseDouble(row.get("end_q"));
    double common = Math.min(to, start + length) - Math.max(from, start);
    double together = Math.max(to, start + length) - Math.min(from, start);
    return 2 * common >= together;
  }

  private void measurePlayed(String piece, List<MotifNote> notes, double sway, Tally tally) {
    Score score = ScoreReader.read(folder.resolve("merged").resolve(piece + ".mid"));
    FreePlaying playing = new FreePlaying(score, sway, piece.hashCode());
    Score played = playing.played();
    Motif motif = new Motif("S", List.of(notes), Accent.FIRST, Match.TONAL, Set.of());
    List<CSVRecord> open = new ArrayList<>(rows("occurrences.csv", piece));
    for (Occurrence found : PlayedOccurrenceFinder.find(played, motif)) {
      double seconds = FreePlaying.seconds(found.startTick());
      CSVRecord hit =
          open.stream()
              .filter(
                  row ->
                      playedNear(playing, row, "onset_q", seconds)
                          || playedNear(playing, row, "aligned_onset_q", seconds))
              .findFirst()
              .orElse(null);
      if (hit != null) {
        open.remove(hit);
        tally.right++;
      } else if (rows("unlisted_candidates.csv", piece).stream()
          .noneMatch(row -> playedNear(playing, row, "onset_q", seconds))) {
        tally.wrong++;
      }
    }
    tally.missed += open.size();
  }

  private static boolean playedNear(
      FreePlaying playing, CSVRecord row, String column, double seconds) {
    double onset = Double.parseDouble(row.get(column));
    return Math.abs(playing.secondsAt(onset) - seconds) <= TOLERANCE_SECONDS;
  }

  private void measure(
      String version, String piece, List<MotifNote> notes, Map<String, Tally> tallies) {
    Score score = ScoreReader.read(folder.resolve(version).resolve(piece + ".mid"));
    Motif motif = new Motif("S", List.of(notes), Accent.FIRST, Match.TONAL, Set.of());
    List<Occurrence> found = OccurrenceFinder.find(score, motif);
    List<CSVRecord> truth = rows("occurrences.csv", piece);
    List<Occurrence> certain =
        found.stream().filter(o -> o.certainty() == Certainty.CERTAIN).toList();
    compare(score, piece, truth, found, tally(tallies, " all, certain and likely"), tallies);
    compare(score, piece, truth, certain, tally(tallies, " all, certain"), null);
    compare(score, piece, truth, found, tally(tallies, "piece " + piece), null);
  }

  private static Tally tally(Map<String, Tally> tallies, String name) {
    return tallies.computeIfAbsent(name, n -> new Tally());
  }

  private void compare(
      Score score,
      String piece,
      List<CSVRecord> truth,
      List<Occurrence> found,
      Tally tally,
      @Nullable Map<String, Tally> byForm) {
    List<CSVRecord> open = new ArrayList<>(truth);
    for (Occurrence occurrence : found) {
      double onset = occurrence.startTick() / (double) score.ticksPerQuarter();
      CSVRecord hit =
          open.stream()
              .filter(row -> near(row, "onset_q", onset) || near(row, "aligned_onset_q", onset))
              .findFirst()
              .orElse(null);
      if (hit != null) {
        open.remove(hit);
        tally.right++;
        if (byForm != null) {
          tally(byForm, "form " + hit.get("form")).right++;
        }
      } else if (rows("unlisted_candidates.csv", piece).stream()
          .noneMatch(row -> near(row, "onset_q", onset))) {
        tally.wrong++;
      }
    }
    tally.missed += open.size();
    if (byForm != null) {
      open.forEach(row -> tally(byForm, "form " + row.get("form")).missed++);
    }
  }

  private static boolean near(CSVRecord row, String column, double onset) {
    return Math.abs(Double.parseDouble(row.get(column)) - onset) <= TOLERANCE_QUARTERS;
  }

  private Map<String, List<MotifNote>> queries() {
    Map<String, List<MotifNote>> queries = new TreeMap<>();
    Map<String, BigFraction> starts = new TreeMap<>();
    for (CSVRecord row : rows("queries.csv")) {
      BigFraction onset = quarters(row.get("onset_q"));
      BigFraction start = starts.computeIfAbsent(row.get("piece"), piece -> onset);
      queries
          .computeIfAbsent(row.get("piece"), piece -> new ArrayList<>())
          .add(
              new MotifNote(
                  onset.subtract(start),
                  quarters(row.get("dur_q")),
                  Integer.parseInt(row.get("pitch"))));
    }
    return queries;
  }

  private static BigFraction quarters(String decimal) {
    return BigFraction.of(Math.round(Double.parseDouble(decimal) * QUARTER)).divide(QUARTER);
  }

  private List<CSVRecord> rows(String file, String piece) {
    return rows(file).stream().filter(row -> row.get("piece").equals(piece)).toList();
  }

  private List<CSVRecord> rows(String file) {
    CSVFormat format = CSVFormat.DEFAULT.builder().setHeader().setSkipHeaderRecord(true).get();
    try (CSVParser parser = format.parse(Files.newBufferedReader(folder.resolve(file)))) {
      return parser.getRecords();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
