package org.barsheet.shooting;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.barsheet.shooting.Setup.Standing;

/**
 * When in the order of work the artwork stands as a photograph of it at rest wants it: after a
 * movement has opened what is seen open, before another opens what is seen closed. Openings that
 * are photographed on larger models are set by hand and bind nothing.
 *
 * @param after card of the last movement of the artwork that must have been taken
 * @param before card of the first one that must not
 * @param possible whether the one comes before the other; if not, a fresh piece is wanted
 */
public record RestTurn(Optional<String> after, Optional<String> before, boolean possible) {

  /** The turn of a photograph among setups in the order of work. */
  static RestTurn of(ArtworkPlate plate, List<Setup> setups) {
    List<String> open = plate.open().stream().map(Standing::opening).toList();
    List<String> cards = new ArrayList<>();
    int after = -1;
    int before = -1;
    for (Setup setup : setups) {
      for (Setup.Run run : setup.model().enlarged() == 1 ? setup.runs() : List.<Setup.Run>of()) {
        List<String> moved = run.movement().openings();
        if (moved.stream().anyMatch(open::contains)) {
          after = cards.size();
        }
        if (before < 0 && moved.stream().anyMatch(plate.closed()::contains)) {
          before = cards.size();
        }
        cards.add(setup.label(run));
      }
    }
    return new RestTurn(card(cards, after), card(cards, before), before < 0 || after < before);
  }

  private static Optional<String> card(List<String> cards, int index) {
    return index < 0 ? Optional.empty() : Optional.of(cards.get(index));
  }

  /** As a person is told: {@code after 6a, before 6b}; {@code at any time} where nothing binds. */
  public String words() {
    if (!possible) {
      return "use a fresh piece: " + after.orElse("") + " opens something that is closed here";
    }
    String last = after.map(card -> "after " + card).orElse("");
    String next = before.map(card -> "before " + card).orElse("");
    String both = last.isEmpty() || next.isEmpty() ? last + next : last + ", " + next;
    return both.isEmpty() ? "at any time" : both;
  }
}
