package org.barsheet.photographs;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.barsheet.photographs.CopyStand.Shot;
import org.barsheet.photographs.RenderedSequence.Fault;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Sequences rendered with known faults: what is found, what is told without reason, and how exact
 * shift and opening are measured. The tolerances were chosen on seeds from 100,000 of the first
 * style of paper; the figures of the trial are of other seeds and the other style, with another
 * texture, lens shading, noise and compression. What the first figures of that style showed to be
 * wrong (114 sequences from seed 900,000) was mended; those told since are of seeds from 950,000.
 */
class RenderedSequencesTest {

  private static final int PHOTOGRAPHS = 12;

  /** Those tried in every run; the trial tries all. */
  private static final List<Fault> SHORT =
      List.of(
          Fault.NONE,
          Fault.BUMP,
          Fault.TURN,
          Fault.DRIFT,
          Fault.FLICKER,
          Fault.TOO_FAR,
          Fault.REPEATED,
          Fault.HAND,
          Fault.THREAD,
          Fault.SHADOW,
          Fault.SPILL,
          Fault.ONE_MISSING,
          Fault.EXCHANGED);

  @TempDir private Path folder = Path.of("");

  /** What was counted. */
  private static final class Counts {
    private int planted;
    private int found;
    private int photographs;
    private int alarms;
    private int pairings;
    private int paired;
    private final List<Double> shifts = new ArrayList<>();
    private final List<Double> edges = new ArrayList<>();
    private final List<String> wrong = new ArrayList<>();
    private final Map<Fault, Integer> missed = new EnumMap<>(Fault.class);

    double worstShift() {
      return shifts.stream().mapToDouble(shift -> shift).max().orElse(0);
    }

    double worstEdge() {
      return edges.stream().mapToDouble(edge -> edge).max().orElse(0);
    }

    @Override
    public String toString() {
      return String.format(
          java.util.Locale.ROOT,
          "%d of %d faults found, %d of %d photographs told without reason, %d of %d pairings right,"
              + " shift off by at most %.3f px (median %.3f), opening by at most %.2f of what may be"
              + " (median %.2f); missed %s%n%s",
          found,
          planted,
          alarms,
          photographs,
          paired,
          pairings,
          worstShift(),
          median(shifts),
          worstEdge(),
          median(edges),
          missed,
          String.join("\n", wrong));
    }

    private static double median(List<Double> values) {
      return values.isEmpty() ? 0 : values.stream().sorted().toList().get(values.size() / 2);
    }
  }

  @Test
  void every_kind_of_fault_is_found_and_nothing_else_is_told()
      throws IOException, UnreadablePhotographException {
    Counts counts = new Counts();
    for (Fault fault : SHORT) {
      count(new RenderedSequence(fault, 500 + SHORT.indexOf(fault), false, 8), counts);
    }
    assertThat(counts.found).as(counts.toString()).isEqualTo(counts.planted);
    assertThat(counts.alarms).as(counts.toString()).isZero();
    assertThat(counts.paired).as(counts.toString()).isEqualTo(counts.pairings);
    assertThat(counts.worstShift()).as(counts.toString()).isLessThan(0.1);
    assertThat(counts.worstEdge()).as(counts.toString()).isLessThan(1);
  }

  @Test
  @Tag("trial")
  void sequences_of_another_style_are_judged_right()
      throws IOException, UnreadablePhotographException {
    Counts counts = new Counts();
    int sequences = Integer.getInteger("sequences", 500);
    long first = Long.getLong("first-seed", 950_000);
    boolean otherStyle = !Boolean.getBoolean("first-style");
    List<Fault> all = List.of(Fault.values());
    for (int i = 0; i < sequences; i++) {
      Fault fault = all.get(i % all.size());
      count(new RenderedSequence(fault, first + i, otherStyle, PHOTOGRAPHS), counts);
    }
    System.out.println(counts);
    assertThat(counts.found)
        .as(counts.toString())
        .isGreaterThanOrEqualTo((int) (0.99 * counts.planted));
    assertThat(counts.alarms)
        .as(counts.toString())
        .isLessThanOrEqualTo((int) (0.005 * counts.photographs));
    assertThat(counts.paired)
        .as(counts.toString())
        .isGreaterThanOrEqualTo((int) (0.99 * counts.pairings));
    assertThat(counts.worstShift()).as(counts.toString()).isLessThan(0.1);
  }

  private void count(RenderedSequence sequence, Counts counts)
      throws IOException, UnreadablePhotographException {
    sequence.takenInto(folder.resolve(sequence.fault + " " + sequence.seed));
    CheckedSequence checked = sequence.checked();
    String name = sequence.fault + " " + sequence.seed + " at " + sequence.at + ": ";
    pairing(sequence, checked, counts, name);
    boolean found = false;
    for (CheckedPhotograph one : checked.photographs()) {
      int place = place(one);
      counts.photographs++;
      Set<FaultKind> marks = EnumSet.noneOf(FaultKind.class);
      marks.addAll(one.marks());
      found |=
          marks.stream().anyMatch(mark -> sequence.wanted().contains(mark))
              && sequence.isSpoiled(place);
      if (sequence.isSpoiled(place)) {
        marks.removeAll(sequence.explained());
      }
      if (!marks.isEmpty()) {
        counts.alarms++;
        counts.wrong.add(name + "alarm " + one.planned().name() + " " + marks);
      }
      measured(sequence, one, counts, name);
    }
    if (!sequence.wanted().isEmpty()) {
      counts.planted++;
      counts.found += found ? 1 : 0;
      if (!found) {
        counts.missed.merge(sequence.fault, 1, Integer::sum);
        counts.wrong.add(name + "missed, size " + sequence.size);
      }
    }
  }

  private static int place(CheckedPhotograph one) {
    String name = one.taken().name();
    return Integer.parseInt(name.substring(4, 8)) - 4031;
  }

  /** A pairing is right where nobody could see that it is not. */
  private static void pairing(
      RenderedSequence sequence, CheckedSequence checked, Counts counts, String name) {
    boolean right =
        checked.photographs().stream()
            .allMatch(
                one ->
                    (sequence.isSpoiled(place(one)) && !sequence.isOfPairing())
                        || sequence.isAlike(place(one), one.planned()));
    boolean asked = checked.isUnclear() == sequence.isOfPairing();
    counts.pairings++;
    // Two that nobody can tell apart may change places unseen.
    boolean good = right && (asked || sequence.fault == Fault.EXCHANGED);
    counts.paired += good ? 1 : 0;
    if (!good) {
      counts.wrong.add(name + "pairing " + checked.questions());
    }
  }

  private static void measured(
      RenderedSequence sequence, CheckedPhotograph one, Counts counts, String name) {
    Shot shot = sequence.shots.get(place(one));
    Shot first = sequence.shots.get(0);
    double off =
        Math.hypot(
            one.move().across() - (shot.across - first.across),
            one.move().down() - (shot.down - first.down));
    boolean sharp = shot.blur == 0;
    if (sharp) {
      counts.shifts.add(off);
      double open = sequence.stand.scene().uncovered(shot);
      double may = Math.max(0.01, 1 / sequence.stand.scene().travel());
      double edge = Math.abs(one.uncovered().orElse(9) - open) / may;
      counts.edges.add(edge);
      if (edge > 1 || off > 0.1) {
        counts.wrong.add(
            name
                + one.planned().name()
                + " shift off "
                + off
                + ", opening off "
                + edge
                + " of "
                + may);
      }
    }
  }
}
