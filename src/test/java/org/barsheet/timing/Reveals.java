package org.barsheet.timing;

import java.util.Optional;
import org.barsheet.plan.Reveal;
import org.barsheet.plan.Slow;
import org.barsheet.plan.Where;

/** Reveals as a plan asks for them. */
public final class Reveals {

  private Reveals() {}

  /** A reveal fully open on the accent. */
  public static Reveal reveal(String opening, int pictures, int framesPerPicture) {
    return reveal(opening, pictures, framesPerPicture, Reveal.Lands.FULLY_OPEN, Slow.END);
  }

  public static Reveal reveal(
      String opening, int pictures, int framesPerPicture, Reveal.Lands lands, Slow slow) {
    return reveal(opening, Reveal.Way.OPENS, pictures, framesPerPicture, lands, slow);
  }

  public static Reveal reveal(
      String opening,
      Reveal.Way way,
      int pictures,
      int framesPerPicture,
      Reveal.Lands lands,
      Slow slow) {
    return new Reveal(
        opening,
        way,
        pictures,
        framesPerPicture,
        slow,
        Reveal.EvenIn.ANGLE,
        lands,
        new Reveal.OnAccent(),
        Optional.empty(),
        false,
        new Where("quay.yaml", "reveals"));
  }

  /** The same reveal landing elsewhere. */
  public static Reveal on(Reveal.LandsOn moment, Reveal r) {
    return new Reveal(
        r.opening(),
        r.way(),
        r.pictures(),
        r.framesPerPicture(),
        r.slow(),
        r.evenIn(),
        r.lands(),
        moment,
        Optional.empty(),
        r.photographed(),
        r.where());
  }

  /** The same reveal, its pictures taken. */
  static Reveal taken(Reveal r) {
    return new Reveal(
        r.opening(),
        r.way(),
        r.pictures(),
        r.framesPerPicture(),
        r.slow(),
        r.evenIn(),
        r.lands(),
        r.landsOn(),
        r.cycle(),
        true,
        r.where());
  }
}
