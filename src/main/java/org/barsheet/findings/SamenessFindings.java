package org.barsheet.findings;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.barsheet.clock.FrameRate;
import org.barsheet.clock.Seconds;
import org.barsheet.exposure.Movement;
import org.barsheet.exposure.PlannedReveal;
import org.barsheet.input.Prose;
import org.barsheet.plan.Opening;
import org.barsheet.plan.Opening.Hinged;
import org.barsheet.plan.Opening.Side;
import org.barsheet.plan.Opening.Slides;
import org.barsheet.plan.Plan;
import org.barsheet.timing.Finding;
import org.barsheet.timing.Finding.Concerns;
import org.barsheet.timing.Finding.Severity;
import org.barsheet.timing.Findings;
import org.barsheet.timing.Shot;
import org.barsheet.timing.TimingSheet;

/**
 * Where the same photographs come again so soon that people notice, and where a mirror would help.
 */
public final class SamenessFindings {

  /**
   * Photographs seen again within this are likely to be recognized (common practice, no source).
   */
  private static final Seconds SOON = Seconds.of(10);

  private final TimingSheet timing;
  private final Plan plan;
  private final List<PlannedReveal> reveals;
  private final List<Movement> movements;
  private final Findings findings = new Findings();

  public SamenessFindings(
      TimingSheet timing, List<PlannedReveal> reveals, List<Movement> movements) {
    this.timing = timing;
    this.plan = timing.plan();
    this.reveals = reveals;
    this.movements = movements;
  }

  /** All of them, worst first. */
  public List<Finding> all() {
    Map<String, PlannedReveal> before = new HashMap<>();
    for (PlannedReveal reveal : reveals) {
      PlannedReveal earlier = before.put(reveal.movement(), reveal);
      if (earlier != null) {
        addSoon(earlier, reveal);
      }
    }
    List<Movement> seen = new ArrayList<>();
    for (Movement movement : movements) {
      seen.stream()
          .filter(other -> isMirrored(other, movement))
          .findFirst()
          .ifPresent(other -> addMirror(other, movement));
      seen.add(movement);
    }
    return findings.worstFirst();
  }

  private void addSoon(PlannedReveal earlier, PlannedReveal later) {
    if (earlier.opening().equals(later.opening())) {
      return;
    }
    FrameRate rate = plan.film().rate();
    Seconds apart =
        rate.startOf(later.firstGapFrame()).minus(rate.startOf(earlier.firstGapFrame()));
    if (apart.compareTo(SOON) > 0) {
      return;
    }
    Shot shot = timing.shots().get(later.shot());
    String sentence =
        later.opening().name()
            + " repeats "
            + earlier.opening().name()
            + "'s photographs after "
            + apart.toDecimal(1).stripTrailingZeros().toPlainString()
            + " s";
    String remedy =
        mirrors(later.opening())
            ? "flip one of them left to right, or start on another photograph"
            : "change the timing of one";
    findings.add(Severity.REMARK, Concerns.DIRECTOR, shot, sentence, remedy);
  }

  /** Whether a photograph flipped left to right still opens as the opening does. */
  private static boolean mirrors(Opening opening) {
    return opening.motion() instanceof Hinged hinged ? isUpright(hinged.hinge()) : true;
  }

  private static boolean isUpright(Side side) {
    return side == Side.TOP || side == Side.BOTTOM;
  }

  /** Whether one movement is the other flipped left to right: the same amounts the other way. */
  private boolean isMirrored(Movement one, Movement other) {
    boolean model = one.model().equals(other.model()) && isEnlarged(one);
    return model && isOpposite(motion(one), motion(other)) && isSameCurve(one, other);
  }

  private boolean isEnlarged(Movement movement) {
    return plan.workshop().artwork().model(movement.model()).orElseThrow().enlarged() != 1;
  }

  private Opening.Motion motion(Movement movement) {
    return plan.workshop().opening(movement.openings().get(0)).orElseThrow().motion();
  }

  private static boolean isOpposite(Opening.Motion one, Opening.Motion other) {
    if (one instanceof Hinged hinged && other instanceof Hinged opposite) {
      return isOpposite(hinged.hinge(), opposite.hinge());
    }
    return one instanceof Slides slides
        && other instanceof Slides opposite
        && isOpposite(slides.toward(), opposite.toward());
  }

  private static boolean isOpposite(Side one, Side other) {
    return (one == Side.LEFT && other == Side.RIGHT) || (one == Side.RIGHT && other == Side.LEFT);
  }

  /** Whether both go as far, as slowly, in as many photographs. */
  private static boolean isSameCurve(Movement one, Movement other) {
    return one.slow() == other.slow()
        && one.evenIn() == other.evenIn()
        && one.photographs().size() == other.photographs().size()
        && one.measure().whole() == other.measure().whole();
  }

  private void addMirror(Movement one, Movement other) {
    int saved = other.photographs().size() - 1;
    findings.add(
        Severity.REMARK,
        Concerns.ANIMATOR,
        "",
        other.name()
            + " mirrors "
            + one.name()
            + ": flipping its photographs left to right would save "
            + Prose.count(saved, "photograph"),
        "flip them if the light may come from the other side");
  }
}
