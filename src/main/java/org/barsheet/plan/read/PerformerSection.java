package org.barsheet.plan.read;

import java.util.List;
import java.util.Optional;
import org.barsheet.clock.FrameRate;
import org.barsheet.clock.Seconds;
import org.barsheet.plan.Measures;
import org.barsheet.plan.Performer;
import org.barsheet.plan.Where;
import org.barsheet.plan.source.PlanKeys;
import org.barsheet.plan.source.Texts;

/** Reads the performers. */
final class PerformerSection {

  private static final int MOST_FRAMES = 9_999_999;

  private PerformerSection() {}

  static List<Performer> read(PlanSection plan, FrameRate filmRate) {
    return plan.named("performers", "performer", PlanKeys.PERFORMER).stream()
        .map(named -> performer(named.name().strip(), named.where(), named.section(), filmRate))
        .toList();
  }

  private static Performer performer(
      String name, Where where, PlanSection section, FrameRate filmRate) {
    int[] size = section.read("clip-size", new int[2], text -> Measures.pixels(text, "1080x1920"));
    return new Performer(
        name,
        section.read("part", "", Texts::plain),
        section.read("clip", "", Texts::plain),
        section.read("clip-rate", FrameRate::parse),
        clap(section, filmRate),
        Optional.empty(),
        size[0],
        size[1],
        section.readAll("clothes", Measures::color),
        section.read("behind", "", Texts::plain),
        where);
  }

  private static Optional<Performer.Clap> clap(PlanSection section, FrameRate filmRate) {
    return section
        .section("clap", PlanKeys.CLAP)
        .map(
            clap ->
                new Performer.Clap(
                    clap.need(
                        "at",
                        Seconds.ZERO,
                        "say when it is heard, from the music's start: at: -5 s",
                        text -> Measures.time(text, filmRate, true)),
                    clap.need(
                        "clip-frame",
                        0,
                        "say which frame of the clip shows it: clip-frame: 143",
                        text -> Measures.whole(text, 0, MOST_FRAMES))));
  }
}
