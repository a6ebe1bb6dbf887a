package org.barsheet.motif;

import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.barsheet.score.Score;
import org.barsheet.suggestions.Suggestion;

/**
 * A piece for many parts whose returns are known.
 *
 * @param name for messages
 * @param timing straight, human or swing
 * @param motifs the lines as written, by name
 * @param planted every return put into it
 * @param unsure places that are neither right nor wrong: near-exact returns nobody planted
 */
record Arrangement(
    String name,
    String timing,
    Score score,
    Map<String, List<MotifNote>> motifs,
    List<Planted> planted,
    List<Unsure> unsure) {

  /** Forms that are found only where a plan asks for them. */
  static final List<String> ASKED = List.of("augmented", "diminished", "inverted", "retrograde");

  /**
   * A return.
   *
   * @param motif its name
   * @param form in which way it was changed, one word
   * @param quarter quarter notes from tick 0 to its first note, before any jitter
   * @param endQuarter the same to the end of its last note
   * @param part the part that begins it
   */
  record Planted(String motif, String form, double quarter, double endQuarter, String part) {

    boolean isAsked() {
      return ASKED.contains(form);
    }
  }

  /** A place where a find is not counted. */
  record Unsure(String motif, double quarter) {}

  /** The line of a motif as written. */
  List<MotifNote> line(String motif) {
    return Objects.requireNonNull(motifs.get(motif));
  }

  double minutes() {
    return score.tempo().secondsAt(score.endTick()).toDouble() / 60;
  }

  /** Whether half of a motif's plain returns are returns of the suggestion and the reverse. */
  boolean isMotif(String name, Suggestion one) {
    double quarter = score.ticksPerQuarter();
    double length =
        Notes.parse(one.notes()).stream()
            .mapToDouble(note -> note.onset().add(note.length()).doubleValue())
            .max()
            .orElseThrow();
    List<Planted> own =
        planted.stream().filter(truth -> truth.motif().equals(name) && !truth.isAsked()).toList();
    long met =
        own.stream()
            .filter(t -> one.returns().stream().anyMatch(tick -> shares(t, tick / quarter, length)))
            .count();
    long right =
        one.returns().stream()
            .filter(
                tick ->
                    planted.stream()
                        .anyMatch(t -> t.motif().equals(name) && shares(t, tick / quarter, length)))
            .count();
    return 2 * met >= own.size() && 2 * right >= one.returns().size();
  }

  private static boolean shares(Planted truth, double start, double length) {
    double common = Math.min(truth.endQuarter(), start + length) - Math.max(truth.quarter(), start);
    double together =
        Math.max(truth.endQuarter(), start + length) - Math.min(truth.quarter(), start);
    return 2 * common >= together;
  }
}
