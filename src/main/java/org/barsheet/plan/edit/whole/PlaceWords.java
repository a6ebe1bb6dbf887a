package org.barsheet.plan.edit.whole;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.barsheet.clock.FrameRate;
import org.barsheet.input.SyntaxException;
import org.barsheet.plan.Place;
import org.barsheet.plan.PlaceGrammar;

/** Other names in places. */
final class PlaceWords {

  private static final Pattern INTO_PANEL = Pattern.compile("(?s)(.*\\binto\\s+panel\\s+)(\\S+)");

  private PlaceWords() {}

  /** A place with another motif's name, if it names a motif by the name before. */
  static Optional<String> motif(String place, String before, String now) {
    try {
      boolean named =
          !PlaceGrammar.looksLikeTimecode(place)
              && Place.parse(place, FrameRate.FPS_24)
                  .motifName()
                  .filter(before::equals)
                  .isPresent();
      return named ? Optional.of(now + place.strip().substring(before.length())) : Optional.empty();
    } catch (SyntaxException noPlace) {
      return Optional.empty();
    }
  }

  /** A place counted into a panel by another name, if it counts into one of the name before. */
  static Optional<String> panel(String place, String before, String now) {
    Matcher into = INTO_PANEL.matcher(place.strip());
    return into.matches() && into.group(2).equals(before)
        ? Optional.of(into.group(1) + now)
        : Optional.empty();
  }
}
