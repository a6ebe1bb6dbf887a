package org.barsheet.findings;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.barsheet.artwork.ColorWords;
import org.barsheet.artwork.KeyColor;
import org.barsheet.exposure.Appearance;
import org.barsheet.plan.Artwork;
import org.barsheet.plan.Plan;
import org.barsheet.timing.Finding;
import org.barsheet.timing.Finding.Concerns;
import org.barsheet.timing.Finding.Severity;
import org.barsheet.timing.Findings;

/** Backings that lie near a color which has to stay when they are keyed out. */
public final class KeyFindings {

  private final Plan plan;
  private final List<Appearance> appearances;
  private final Findings findings = new Findings();

  public KeyFindings(Plan plan, List<Appearance> appearances) {
    this.plan = plan;
    this.appearances = appearances;
  }

  /** All of them, worst first. */
  public List<Finding> all() {
    plan.workshop().artwork().models().forEach(this::addPalette);
    Set<List<String>> told = new LinkedHashSet<>();
    for (Appearance appearance : appearances) {
      Artwork.Model model =
          plan.workshop().artwork().model(appearance.opening().model()).orElseThrow();
      String behind = appearance.performer().behind();
      String backing = behind.isEmpty() ? model.backing() : behind;
      if (told.add(List.of(appearance.performer().name(), backing))) {
        addClothes(appearance, backing);
      }
    }
    return findings.worstFirst();
  }

  private void addPalette(Artwork.Model model) {
    Optional<KeyColor> key = KeyColor.backing(model.backing(), plan.workshop().artwork().palette());
    if (key.isEmpty() || !key.get().isTooNear()) {
      return;
    }
    KeyColor best = KeyColor.candidates(plan.workshop().artwork().palette()).get(0);
    findings.add(
        Severity.WARNING,
        Concerns.ANIMATOR,
        "",
        "the backing of "
            + model.name()
            + ", "
            + model.backing()
            + ", is too close to the palette's "
            + ColorWords.of(key.get().nearest())
            + " to key cleanly",
        best.isTooNear()
            ? "no backing keys well with this palette: cut mattes by hand, or change the palette"
            : "back it with " + best.word());
  }

  private void addClothes(Appearance appearance, String backing) {
    KeyColor.backing(backing, appearance.performer().clothes())
        .filter(KeyColor::isTooNear)
        .ifPresent(key -> addClothes(appearance, key));
  }

  private void addClothes(Appearance appearance, KeyColor key) {
    String name = appearance.performer().name();
    findings.add(
        Severity.WARNING,
        Concerns.PERFORMERS,
        "",
        name
            + (name.endsWith("s") ? "' " : "'s ")
            + ColorWords.of(key.nearest())
            + " clothes may key out in "
            + appearance.opening().name(),
        "ask " + name + " to wear another color, or use another backing there");
  }
}
