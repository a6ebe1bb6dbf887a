package org.barsheet.timing;

import java.util.Optional;
import org.barsheet.plan.Reveal;
import org.barsheet.plan.Slow;
import org.barsheet.plan.Where;

/** Reveals as a plan asks for them. */
public final class Reveals {

  private Reveals() {}

  /** A reveal fully open on the accent. */
  public static Reveal reveal(String opening, int photographs, int framesPerPhotograph) {
    return reveal(opening, photographs, framesPerPhotograph, Reveal.Lands.FULLY_OPEN, Slow.END);
  }

  public static Reveal reveal(
      String opening, int photographs, int framesPerPhotograph, Reveal.Lands lands, Slow slow) {
    return reveal(opening, Reveal.Way.OPENS, photographs, framesPerPhotograph, lands, slow);
  }

  public static Reveal reveal(
      String opening,
      Reveal.Way way,
      int photographs,
      int framesPerPhotograph,
      Reveal.Lands lands,
      Slow slow) {
    return new Reveal(
        opening,
        way,
        photographs,
        framesPerPhotograph,
        slow,
        Reveal.EvenIn.ANGLE,
        lands,
        new Reveal.OnAccent(),
        Optional.empty(),
        Reveal.Taken.NOT_YET,
        new Where("quay.yaml", "reveals"));
  }

  /** The same reveal landing elsewhere. */
  public static Reveal on(Reveal.LandsOn moment, Reveal r) {
    return new Reveal(
        r.opening(),
        r.way(),
        r.photographs(),
        r.framesPerPhotograph(),
        r.slow(),
        r.evenIn(),
        r.lands(),
        moment,
        Optional.empty(),
        r.taken(),
        r.where());
  }

  /** The same reveal, its photographs taken. */
  static Reveal taken(Reveal r) {
    return new Reveal(
        r.opening(),
        r.way(),
        r.photographs(),
        r.framesPerPhotograph(),
        r.slow(),
        r.evenIn(),
        r.lands(),
        r.landsOn(),
        r.cycle(),
        Reveal.Taken.BY_PLAN,
        r.where());
  }
}
