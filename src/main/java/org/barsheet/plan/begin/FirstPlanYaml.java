package org.barsheet.plan.begin;

import java.util.List;
import java.util.Map;
import org.barsheet.plan.source.PlanKey;
import org.barsheet.plan.source.PlanKeys;
import org.barsheet.plan.source.YamlText;

/** Writes a first plan as YAML. */
final class FirstPlanYaml {

  private static final String GRAMMAR =
      """
      ## Where a panel goes (cue):
      ##   glimmer 3            third return of the motif glimmer
      ##   glimmer near bar 33  the return nearest bar 33
      ##   glimmer in Oboe near bar 33         the same, played by the oboe (perhaps with others)
      ##   glimmer in "Violin 2" near bar 33   a part's name that ends in a number is quoted
      ##   glimmer inverted near bar 40        in this form: as given, transposed, tonal, inverted,
      ##                                       retrograde, augmented, diminished
      ##   glimmer              any free return
      ##   bar 12               bar 12 beat 3, bar 12 beat 2.5
      ##   mark Chorus          a mark of the MIDI file
      ##   01:00:12:00          a timecode
      ##   2 bars into panel 3  counted from the panel just before
      ##   (nothing)            wherever it fits between its neighbors
      ## How long it is (length): 4 bars, 3 beats, 2.5 s, 60 f; or 2..4 bars, at least 8 bars,
      ##   at most 3 s.
      """;

  private static final String PINS =
      """
        # pins:                         # bars that begin at known seconds of the file or recording
        #   - {bar: 1, at: 0.28 s}
      """;

  private static final String EXAMPLES =
      """
        # models:
        #   small-lamp: {enlarged: 3, backing: green}

      ## The places in the artwork that open, in squares of its graph paper.
      openings:
        # lamp-1: {left: 3, top: 7, width: 2, height: 4, model: small-lamp, hinge: left, to: 90 deg}

      ## Who is filmed at home, by alias.
      performers:
        # cello: {part: Cello, clip: cello.mov, clip-rate: 29.97}

      """;

  private final FirstPlan plan;
  private final StringBuilder out = new StringBuilder();

  FirstPlanYaml(FirstPlan plan) {
    this.plan = plan;
  }

  String text() {
    line("## A first plan. Lines with ## explain; delete a single # to use a setting.");
    line("title: " + YamlText.of(plan.title()));
    line("score: " + YamlText.of(plan.score()));
    line("");
    settings("film", PlanKeys.FILM, plan.film());
    line("");
    settings("music", PlanKeys.MUSIC, Map.of());
    out.append(PINS);
    line("");
    motifs();
    line("## The artwork.");
    settings("artwork", PlanKeys.ARTWORK, Map.of());
    out.append(EXAMPLES);
    out.append(GRAMMAR);
    panels();
    return out.toString();
  }

  private void line(String text) {
    out.append(text).append('\n');
  }

  private void settings(String section, List<PlanKey> keys, Map<String, String> given) {
    line(section + ":");
    for (PlanKey key : keys) {
      if (!key.example().isEmpty()) {
        String value = given.get(key.name());
        String shown = YamlText.of(value == null ? key.example() : value);
        String setting = (value == null ? "  # " : "  ") + key.name() + ": " + shown;
        line(padded(setting) + "# " + key.note());
      }
    }
  }

  private static String padded(String text) {
    return text + " ".repeat(Math.max(1, 34 - text.length()));
  }

  private void motifs() {
    line("## Short figures that panels use as cues. Call them what you like.");
    line("motifs:");
    plan.motifs().forEach(this::motif);
    if (plan.motifs().isEmpty()) {
      line("  # glimmer: {heard-at: {place: bar 3, length: 1 bar, part: Celesta}, accent: last}");
      line("  # tide: {notes: \"A3/4 C4/8 E4/8 D4/2\"}");
    }
    line("");
  }

  private void motif(FirstPlan.FirstMotif motif) {
    line("  " + YamlText.of(motif.name()) + ":" + remark(motif.remark()));
    if (motif.notes().isEmpty()) {
      line("    heard-at:");
      line("      place: " + YamlText.of(motif.place()));
      line("      length: " + YamlText.of(motif.length()));
      line("      part: " + YamlText.of(motif.part()));
    } else {
      line("    notes: " + YamlText.of(motif.notes()));
    }
    line(
        "    # accent: first               # the note that a reveal lands on: first, last, note 3");
  }

  private static String remark(String remark) {
    return remark.isEmpty() ? "" : " # " + remark.replaceAll("\\s+", " ");
  }

  private void panels() {
    line("panels:");
    for (FirstPlan.FirstPanel panel : plan.panels()) {
      line("  - panel: " + YamlText.of(panel.name()));
      value("action", panel.action());
      value("cue", panel.cue());
      value("length", panel.length());
    }
    List<FirstPlan.FirstMotif> motifs = plan.motifs();
    String motif = motifs.isEmpty() ? "glimmer" : motifs.get(0).name();
    line("  ## A panel with a reveal, once there are openings and performers:");
    line("  # - panel: " + (plan.panels().size() + 1));
    line("  #   action: The baker's lamp");
    line("  #   cue: " + YamlText.of(motif) + " 3");
    line("  #   field: left 1 top 4.6 width 6");
    line("  #   reveals:");
    line("  #     - {opening: lamp-1, photographs: 30, shown: on twos, slow: end}");
    line("  #   appears:");
    line("  #     - {performer: cello, opening: lamp-1}");
  }

  private void value(String key, String text) {
    line("    " + key + ":" + (text.isEmpty() ? "" : " " + YamlText.of(text)));
  }
}
