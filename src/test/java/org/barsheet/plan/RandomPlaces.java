package org.barsheet.plan;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Random;
import org.apache.commons.numbers.fraction.BigFraction;
import org.barsheet.clock.FrameRate;
import org.barsheet.clock.Timecode;
import org.barsheet.motif.Form;

/** Places and lengths made up from a seed. */
final class RandomPlaces {

  private static final List<String> MOTIFS = List.of("glimmer", "night tide", "theme-2", "o'clock");

  private static final List<String> PARTS =
      List.of("Oboe", "Violin 2", "English Horn", "1st Flute", "Pad near me", "in", "Ché's \"Q\"");

  private static final List<Length.Unit> UNITS = List.of(Length.Unit.values());

  private RandomPlaces() {}

  static Place place(Random random, FrameRate rate) {
    return switch (random.nextInt(6)) {
      case 0 -> ofMotif(random);
      case 1 ->
          new Place.AtBar(
              random.nextInt(500), maybe(random, 3), decimal(random, 8).add(BigFraction.ONE));
      case 2 -> new Place.AtMark("Verse " + random.nextInt(9) + " (soft)");
      case 3 -> new Place.AtTimecode(Timecode.ofFrame(rate, random.nextLong(rate.framesPerDay())));
      case 4 -> {
        Length length = length(random);
        yield new Place.IntoPanel(
            random.nextInt(9) + "." + random.nextInt(30), Length.of(length.unit(), length.least()));
      }
      default -> new Place.Anywhere();
    };
  }

  private static Place ofMotif(Random random) {
    String name = MOTIFS.get(random.nextInt(MOTIFS.size()));
    OptionalInt number = maybe(random, 30);
    OptionalInt near = number.isPresent() ? OptionalInt.empty() : maybe(random, 400);
    return number.isPresent()
        ? new Place.OfMotif(name, number, near)
        : new Place.OfMotif(name, played(random), number, near);
  }

  private static Played played(Random random) {
    List<Form> forms =
        random
            .ints(random.nextInt(3), 0, Form.values().length)
            .mapToObj(List.of(Form.values())::get)
            .toList();
    Optional<String> part =
        random.nextBoolean()
            ? Optional.of(PARTS.get(random.nextInt(PARTS.size())))
            : Optional.empty();
    return new Played(forms, part);
  }

  private static OptionalInt maybe(Random random, int most) {
    return random.nextBoolean() ? OptionalInt.of(1 + random.nextInt(most)) : OptionalInt.empty();
  }

  static Length length(Random random) {
    Length.Unit unit = UNITS.get(random.nextInt(UNITS.size()));
    BigFraction least = amount(random, unit);
    BigFraction more = random.nextBoolean() ? amount(random, unit) : BigFraction.ZERO;
    boolean open = random.nextInt(4) == 0;
    return new Length(unit, least, open ? Length.NO_MOST : least.add(more));
  }

  private static BigFraction amount(Random random, Length.Unit unit) {
    return unit == Length.Unit.FRAMES ? BigFraction.of(random.nextInt(2000)) : decimal(random, 100);
  }

  private static BigFraction decimal(Random random, int most) {
    int places = random.nextInt(4);
    int scale = (int) Math.pow(10, places);
    return BigFraction.of(random.nextInt(most * scale), scale);
  }
}
