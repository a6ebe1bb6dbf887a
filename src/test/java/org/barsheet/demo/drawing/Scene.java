package org.barsheet.demo.drawing;

import java.util.Arrays;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.Map;
import java.util.Set;

/**
 * What stands how on the quay in one panel.
 *
 * @param light the hour and the weather
 * @param open how far each opening stands open, 0 to 1; those not named are closed
 * @param dark the openings behind which no light burns
 * @param players who is seen in which opening
 * @param ferry where the ferry's bow is, in squares, or a negative number if she is away
 * @param tide how far the water stands above its mean, in squares
 * @param fog how thick the fog lies, 0 to 1
 * @param lamplighter where the lamplighter stands, in squares, or a negative number
 * @param pose what the lamplighter does
 */
record Scene(
    Light light,
    Map<Flap, Double> open,
    Set<Flap> dark,
    Map<Flap, Instrument> players,
    double ferry,
    double tide,
    double fog,
    double lamplighter,
    Pose pose) {

  /** What the lamplighter does. */
  enum Pose {
    WALKS,
    REACHES,
    SITS
  }

  /** What a silhouette in an opening plays. */
  enum Instrument {
    FLUTE,
    CLARINET,
    HORN,
    CELESTA,
    VIOLIN,
    CELLO
  }

  static Scene in(Light light) {
    return new Scene(light, Map.of(), Set.of(), Map.of(), -1, 0, 0, -1, Pose.WALKS);
  }

  /** Whether light burns behind an opening. */
  boolean isLit(Flap flap) {
    return !dark.contains(flap);
  }

  /** How far an opening stands open, 0 to 1. */
  double openness(Flap flap) {
    return open.getOrDefault(flap, 0.0);
  }

  Scene open(double share, Flap... flaps) {
    Map<Flap, Double> more = new EnumMap<>(Flap.class);
    more.putAll(open);
    for (Flap flap : flaps) {
      more.put(flap, share);
    }
    return new Scene(light, more, dark, players, ferry, tide, fog, lamplighter, pose);
  }

  Scene with(Flap flap, Instrument instrument) {
    Map<Flap, Instrument> more = new EnumMap<>(Flap.class);
    more.putAll(players);
    more.put(flap, instrument);
    return new Scene(light, open, dark, more, ferry, tide, fog, lamplighter, pose);
  }

  /** Puts out every light but those behind the openings named. */
  Scene unlitBut(Flap... flaps) {
    Set<Flap> none = EnumSet.allOf(Flap.class);
    none.removeAll(Arrays.asList(flaps));
    return new Scene(light, open, none, players, ferry, tide, fog, lamplighter, pose);
  }

  Scene ferryAt(double bow) {
    return new Scene(light, open, dark, players, bow, tide, fog, lamplighter, pose);
  }

  Scene tide(double height) {
    return new Scene(light, open, dark, players, ferry, height, fog, lamplighter, pose);
  }

  Scene fog(double thickness) {
    return new Scene(light, open, dark, players, ferry, tide, thickness, lamplighter, pose);
  }

  Scene lamplighter(double at, Pose does) {
    return new Scene(light, open, dark, players, ferry, tide, fog, at, does);
  }
}
