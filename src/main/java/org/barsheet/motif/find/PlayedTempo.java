package org.barsheet.motif.find;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.barsheet.motif.Certainty;
import org.barsheet.motif.Form;
import org.barsheet.motif.match.Chain;
import org.barsheet.motif.match.PlayedChain;
import org.barsheet.motif.match.Transform;

/**
 * Tells stretched returns of a freely played piece from plain ones by how long a quarter note lasts
 * in them: most returns go at about the same pace.
 */
final class PlayedTempo {

  /** A plain return goes at the usual pace, give or take this factor. */
  private static final double SAME_PACE = 1.6;

  /** A stretched one at the usual pace times its stretch, give or take this factor. */
  private static final double STRETCHED_PACE = 1.2;

  private final List<Transform> transforms;
  private final double usual;

  private PlayedTempo(List<Transform> transforms, double usual) {
    this.transforms = transforms;
    this.usual = usual;
  }

  /** Learns the usual pace from chains of the whole motif. */
  static PlayedTempo of(Set<Form> forms, List<PlayedChain> chains) {
    return new PlayedTempo(Transform.of(forms), usual(chains));
  }

  /** The chains whose pace makes sense, each with the form that its pace says. */
  List<Chain> sort(List<PlayedChain> chains) {
    List<Chain> sorted = new ArrayList<>();
    for (PlayedChain played : chains) {
      transform(played, played.rate() / usual).ifPresent(t -> sorted.add(renamed(played, t)));
    }
    return sorted;
  }

  /** The median pace of the certain ones, of all if none is certain. */
  private static double usual(List<PlayedChain> chains) {
    double[] certain =
        chains.stream()
            .filter(c -> Certainties.of(c.chain()).equals(Optional.of(Certainty.CERTAIN)))
            .mapToDouble(PlayedChain::rate)
            .sorted()
            .toArray();
    double[] rates =
        certain.length > 0
            ? certain
            : chains.stream().mapToDouble(PlayedChain::rate).sorted().toArray();
    return rates.length == 0 ? 1 : rates[rates.length / 2];
  }

  private Optional<Transform> transform(PlayedChain played, double pace) {
    Transform own = played.chain().pattern().transform();
    for (Transform transform : transforms) {
      double expected = transform.stretch().doubleValue();
      double margin = transform.isStretched() ? STRETCHED_PACE : SAME_PACE;
      boolean same =
          transform.inverted() == own.inverted() && transform.retrograde() == own.retrograde();
      if (same && pace <= expected * margin && pace * margin >= expected) {
        return Optional.of(transform);
      }
    }
    return Optional.empty();
  }

  private static Chain renamed(PlayedChain played, Transform transform) {
    Chain chain = played.chain();
    return new Chain(chain.pattern().as(transform), chain.start(), chain.notes(), chain.cost());
  }
}
