package org.barsheet.adoption;

import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.barsheet.motif.Occurrence;
import org.barsheet.production.places.Returns;
import org.barsheet.score.BarBeat;

/** A plan with places of every kind on invented music. */
final class ComposedPlan {

  private final ComposedScore score;
  private final Returns returns;
  private final Random random;
  private final StringBuilder panels = new StringBuilder();

  private ComposedPlan(ComposedScore score, Returns returns, Random random) {
    this.score = score;
    this.returns = returns;
    this.random = random;
  }

  /** A plan of one panel, to find the returns with; its motif is heard in the music, or written. */
  static String head(ComposedScore score, Random random) {
    String motif = "notes: \"C5/4 E5/8 D5/8 G5/4 B4/4\"";
    Optional<String> heard = heard(score);
    if (heard.isPresent() && random.nextBoolean()) {
      motif = heard.get();
    }
    return """
        title: Revised
        score: old.mid
        film: {frame-rate: 24, music-starts: 2 s}
        motifs: {glimmer: {%s}}
        openings: {lamp: {left: 1, top: 1, width: 2, height: 2, iris: 100 %%}}
        panels:
        - {panel: 1}
        """
        .formatted(motif);
  }

  private static Optional<String> heard(ComposedScore score) {
    for (int bar = 0; bar < score.bars().size(); bar++) {
      for (int part = 0; part < ComposedScore.PARTS; part++) {
        List<int[]> notes = score.bars().get(bar).notes().get(part);
        if (notes.size() == ComposedScore.MOTIF.length
            && notes.get(0)[1] == 72
            && notes.get(1)[1] == 76) {
          return Optional.of(
              "heard-at: {place: bar "
                  + (bar + 1)
                  + ", length: 1 bar, part: Part "
                  + "ABC".charAt(part)
                  + "}");
        }
      }
    }
    return Optional.empty();
  }

  /** The whole plan: panels a few bars apart, in the order of the music. */
  static String of(ComposedScore score, Returns returns, Random random) {
    ComposedPlan plan = new ComposedPlan(score, returns, random);
    int panel = 2;
    for (int bar = 2 + random.nextInt(3);
        bar < score.bars().size() - 6;
        bar += 5 + random.nextInt(3)) {
      plan.panels.append("- {panel: ").append(panel++).append(", cue: ").append(plan.cue(bar));
      plan.panels.append(plan.rest(bar)).append("}\n");
      if (random.nextInt(5) == 0) {
        plan.panels.append("- {panel: ").append(panel).append(", cue: 2 bars into panel ");
        plan.panels.append(panel - 1).append("}\n");
        panel++;
      }
    }
    return plan.panels.toString();
  }

  private String cue(int index) {
    int bar = index + 1;
    Optional<Occurrence> there =
        returns.occurrences().stream()
            .filter(one -> one.number() > 0 && barOf(one).bar() == bar)
            .findFirst();
    if (there.isPresent() && random.nextInt(4) > 0) {
      String part = returns.music().score().parts().get(there.get().parts().get(0)).name();
      return switch (random.nextInt(3)) {
        case 0 -> "glimmer " + there.get().number();
        case 1 -> "glimmer near bar " + bar;
        default -> "glimmer in " + part + " near bar " + bar;
      };
    }
    String mark = score.bars().get(index).mark();
    if (!mark.isEmpty()) {
      return "mark " + mark;
    }
    return "bar " + bar + (random.nextBoolean() ? "" : " beat " + (1 + random.nextInt(4)));
  }

  private BarBeat barOf(Occurrence one) {
    return returns.music().bars().locate(one.startTick());
  }

  private String rest(int index) {
    return switch (random.nextInt(4)) {
      case 0 -> ", cut: bar " + index;
      case 1 ->
          ", reveals: [{opening: lamp, photographs: 2, lands-on: bar "
              + (index + 1)
              + " beat 4.5}]";
      default -> "";
    };
  }
}
