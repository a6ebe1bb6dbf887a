package org.barsheet.production;

import java.io.File;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import org.barsheet.clock.FrameRate;
import org.barsheet.plan.begin.FirstPlan;
import org.barsheet.plan.begin.FirstPlan.FirstMotif;
import org.barsheet.plan.begin.FirstPlan.FirstPanel;
import org.barsheet.pulse.Music;
import org.barsheet.score.Bar;
import org.barsheet.score.Mark;
import org.barsheet.score.Part;
import org.barsheet.suggestions.Suggestion;

/** A first plan from nothing but a score: it can be made as it stands, and then be filled in. */
final class FirstPlans {

  private static final int MOTIFS = 3;

  /** Bars to a panel where the score has no marks: a common length of a phrase. */
  private static final int BARS_A_PANEL = 8;

  private FirstPlans() {}

  static FirstPlan of(Path score, Path plan, String title, FrameRate rate, Music music) {
    return new FirstPlan(
        title,
        seenFrom(plan, score),
        Map.of("frame-rate", rate.toString()),
        motifs(music),
        panels(music),
        music.score().parts().stream().map(Part::name).toList());
  }

  /** The score as a plan names it: from the plan's folder, so that both can move together. */
  static String seenFrom(Path plan, Path score) {
    Path file = score.toAbsolutePath().normalize();
    Path folder = plan.toAbsolutePath().normalize().getParent();
    boolean near = folder != null && Objects.equals(folder.getRoot(), file.getRoot());
    Path seen = near && folder != null ? folder.relativize(file) : file;
    return seen.toString().replace(File.separatorChar, '/');
  }

  private static List<FirstMotif> motifs(Music music) {
    List<FirstMotif> motifs = new ArrayList<>();
    for (Suggestion suggestion : Suggestions.of(music)) {
      if (motifs.size() < MOTIFS && !suggestion.accompanies()) {
        String part = music.score().parts().get(suggestion.part()).name();
        int bar = music.bars().barAt(suggestion.returns().get(0)).number();
        String remark =
            "heard " + suggestion.returns().size() + " times, first in " + part + ", bar " + bar;
        motifs.add(FirstMotif.written("motif-" + (motifs.size() + 1), suggestion.notes(), remark));
      }
    }
    return motifs;
  }

  private static List<FirstPanel> panels(Music music) {
    List<FirstPanel> panels = new ArrayList<>();
    panels.add(new FirstPanel("1", "The film begins", "", ""));
    for (Bar bar : sectionBars(music)) {
      String number = Integer.toString(panels.size() + 1);
      panels.add(new FirstPanel(number, action(music, bar), cue(bar), ""));
    }
    return panels;
  }

  /** Bars that begin a section: those of the marks, else every eighth, never the first bar. */
  private static Set<Bar> sectionBars(Music music) {
    Set<Bar> bars = new LinkedHashSet<>();
    for (Mark mark : music.score().marks()) {
      if (mark.kind() == Mark.Kind.MARKER && mark.tick() < music.score().endTick()) {
        bars.add(music.bars().barAt(mark.tick()));
      }
    }
    if (bars.isEmpty()) {
      music.bars().bars().stream()
          .filter(bar -> bar.number() > 1 && (bar.number() - 1) % BARS_A_PANEL == 0)
          .forEach(bars::add);
    }
    bars.removeIf(
        bar -> bar.index() == 0 || bar.number() <= 1 || bar.startTick() >= music.score().endTick());
    return bars;
  }

  private static String cue(Bar bar) {
    return "bar " + bar.number() + (bar.time() > 1 ? " time " + bar.time() : "");
  }

  private static String action(Music music, Bar bar) {
    return music.score().marks().stream()
        .filter(mark -> mark.kind() == Mark.Kind.MARKER && bar.contains(mark.tick()))
        .findFirst()
        .map(mark -> "At mark " + mark.text())
        .orElse("From bar " + bar.number());
  }
}
