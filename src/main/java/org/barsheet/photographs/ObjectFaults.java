package org.barsheet.photographs;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.barsheet.pixels.Intruder;

/** Tells what is in some photographs and not in the others. */
final class ObjectFaults {

  private final Frames frames;

  ObjectFaults(Frames frames) {
    this.frames = frames;
  }

  /** Photographs one after another with something at one place. */
  private static final class Run {
    private final List<CheckedPhotograph> photographs = new ArrayList<>();
    private Intruder last;

    Run(CheckedPhotograph first, Intruder intruder) {
      photographs.add(first);
      last = intruder;
    }
  }

  /**
   * What is to be told.
   *
   * @param found of each photograph what is only in it, the largest first
   */
  List<PhotographFault> of(List<CheckedPhotograph> photographs, List<List<Intruder>> found) {
    List<Run> all = new ArrayList<>();
    List<Run> open = new ArrayList<>();
    for (int i = 0; i < photographs.size(); i++) {
      List<Run> going = new ArrayList<>();
      for (Intruder intruder : found.get(i)) {
        Run run = null;
        for (Run before : open) {
          run = before.last.box().meets(intruder.box()) && run == null ? before : run;
        }
        if (run == null || going.contains(run)) {
          run = new Run(photographs.get(i), intruder);
          all.add(run);
        } else {
          run.photographs.add(photographs.get(i));
          run.last = intruder;
        }
        going.add(run);
      }
      open = going;
    }
    return all.stream().map(this::fault).toList();
  }

  private PhotographFault fault(Run run) {
    Intruder one = run.last;
    boolean soft = one.kind() == Intruder.Kind.SOFT;
    String what =
        switch (one.kind()) {
          case THIN -> "something thin, a thread or a hair,";
          case SOLID -> "something";
          case SOFT -> one.contrast() < 0 ? "a shadow" : "more light";
        };
    String sentence =
        String.format(
            Locale.ROOT,
            "%s %s %s in %s, %.0f × %.0f px",
            Range.of(run.photographs),
            run.photographs.size() == 1 ? "has" : "have",
            what,
            CheckedSequence.place(one.box(), frames.width(), frames.height()),
            frames.every() * one.box().width(),
            frames.every() * one.box().height());
    return new PhotographFault(
        soft ? FaultKind.SHADOW : FaultKind.OBJECT,
        Range.names(run.photographs),
        sentence,
        soft
            ? "Stand back from the lamps, and take it again."
            : "Clear it away, and take it again; or paint it out with the clean plate.");
  }
}
