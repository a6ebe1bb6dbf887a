package org.barsheet.timing;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalLong;
import java.util.Set;
import java.util.stream.Collectors;
import org.barsheet.cues.PlainMotif;
import org.barsheet.plan.Panel;
import org.barsheet.plan.Place;
import org.barsheet.plan.Plan;
import org.barsheet.plan.Reveal;
import org.barsheet.timing.Finding.Concerns;
import org.barsheet.timing.Finding.Severity;

/**
 * Motifs too plain to be looked for: what asks for one of them is placed as if it asked for
 * nothing, and a finding says so.
 */
final class PlainMotifs {

  private final Plan asked;
  private final List<PlainMotif> tooPlain;
  private final Set<String> names;

  PlainMotifs(Plan asked, List<PlainMotif> tooPlain) {
    this.asked = asked;
    this.tooPlain = tooPlain;
    this.names =
        tooPlain.stream()
            .filter(plain -> !plain.hasOtherShapes())
            .map(plain -> plain.motif().name())
            .collect(Collectors.toSet());
  }

  /** The plan whose panels and reveals ask for none of them. */
  Plan without() {
    return names.isEmpty()
        ? asked
        : asked.withPanels(asked.panels().stream().map(this::freed).toList());
  }

  private boolean isPlain(Place place) {
    return place instanceof Place.OfMotif of && names.contains(of.motif());
  }

  private Panel freed(Panel panel) {
    Place cue = isPlain(panel.cue()) ? new Place.Anywhere() : panel.cue();
    List<Reveal> reveals = panel.reveals().stream().map(reveal -> freed(panel, reveal)).toList();
    return panel.with(cue, reveals);
  }

  private Reveal freed(Panel panel, Reveal reveal) {
    return asksForPlain(panel, reveal) ? reveal.landingOn(new Reveal.OnAccent()) : reveal;
  }

  private boolean asksForPlain(Panel panel, Reveal reveal) {
    return reveal.landsOn() instanceof Reveal.OnPlace on
        ? isPlain(on.place())
        : reveal.landsOn() instanceof Reveal.OnNotes && isPlain(panel.cue());
  }

  /** A finding for each of them, and for each panel and reveal that asks for it. */
  List<Finding> findings() {
    List<Finding> findings = new ArrayList<>();
    for (PlainMotif plain : tooPlain) {
      String sentence = plain.subject() + " isn't looked for: " + plain.why().sentence();
      findings.add(finding("", sentence, plain.why().remedy()));
    }
    asked.panels().forEach(panel -> addAsking(panel, findings));
    return findings;
  }

  private void addAsking(Panel panel, List<Finding> findings) {
    if (isPlain(panel.cue())) {
      String sentence =
          "asks for " + panel.cue() + ", which isn't looked for; it goes where it fits";
      findings.add(finding(panel.name(), sentence, "name another place"));
    }
    for (Reveal reveal : panel.reveals()) {
      if (reveal.landsOn() instanceof Reveal.OnPlace on && isPlain(on.place())) {
        String sentence =
            reveal.opening()
                + " lands on "
                + on.place()
                + ", which isn't looked for; it lands on the panel's own accent";
        findings.add(finding(panel.name(), sentence, "name another place"));
      }
    }
  }

  private static Finding finding(String panel, String sentence, String remedy) {
    return new Finding(
        Severity.WARNING, Concerns.DIRECTOR, panel, "", OptionalLong.empty(), sentence, remedy);
  }
}
