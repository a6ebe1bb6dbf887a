package org.barsheet.findings;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.barsheet.artwork.ClipCrop;
import org.barsheet.exposure.Appearance;
import org.barsheet.exposure.Insert;
import org.barsheet.plan.Film;
import org.barsheet.plan.Performer;
import org.barsheet.timing.Finding;
import org.barsheet.timing.Finding.Concerns;
import org.barsheet.timing.Finding.Severity;
import org.barsheet.timing.Findings;
import org.barsheet.timing.Shot;
import org.barsheet.timing.TimingSheet;

/** What is doubtful about where and how large performers are seen in the frame. */
public final class InsertFindings {

  /** An opening less in the frame than this share is told (common practice, no source). */
  private static final double HALF = 0.5;

  private final TimingSheet timing;
  private final Film film;
  private final List<Appearance> appearances;
  private final Findings findings = new Findings();

  public InsertFindings(TimingSheet timing, List<Appearance> appearances) {
    this.timing = timing;
    this.film = timing.plan().film();
    this.appearances = appearances;
  }

  public List<Finding> all() {
    Set<String> without = new LinkedHashSet<>();
    for (Appearance appearance : appearances) {
      List<Insert> inserts = Insert.of(timing, appearance);
      if (!inserts.isEmpty()) {
        addOutside(appearance, inserts);
        addBlownUp(appearance, inserts);
      } else if (appearance.frames().length() > 0) {
        without.add(timing.shots().get(appearance.shot()).panel().name());
      }
    }
    addWithoutField(without);
    return findings.worstFirst();
  }

  private void addWithoutField(Set<String> panels) {
    if (panels.isEmpty()) {
      return;
    }
    boolean one = panels.size() == 1;
    String sentence =
        (one ? "panel " : "panels ")
            + String.join(", ", panels)
            + (one ? " has" : " have")
            + " no field, so performers can't be placed in the frame";
    findings.add(
        Severity.REMARK,
        Concerns.EDITOR,
        "",
        sentence,
        "give " + (one ? "it" : "them") + " a field");
  }

  private void add(Severity severity, Appearance appearance, String sentence, String remedy) {
    Shot shot = timing.shots().get(appearance.shot());
    findings.add(severity, Concerns.EDITOR, shot, sentence, remedy);
  }

  private void addOutside(Appearance appearance, List<Insert> inserts) {
    double[] shares =
        inserts.stream()
            .mapToDouble(insert -> insert.rect().shareWithin(film.width(), film.height()))
            .sorted()
            .toArray();
    String opening = appearance.opening().name();
    String name = appearance.performer().name();
    String remedy = "move or widen the field, or take " + name + " out";
    if (shares[shares.length - 1] == 0) {
      String sentence = opening + " is outside the frame while " + name + " is due to appear in it";
      add(Severity.WARNING, appearance, sentence, remedy);
    } else if (shares[0] < HALF) {
      String share = Math.round(100 * shares[0]) + " %";
      String sentence =
          "at one point only " + share + " of " + opening + ", with " + name + " in it, is in";
      add(Severity.REMARK, appearance, sentence + " the frame", remedy);
    }
  }

  private void addBlownUp(Appearance appearance, List<Insert> inserts) {
    Performer performer = appearance.performer();
    Optional<ClipCrop> crop = ClipCrop.of(performer, appearance.opening().rect());
    if (crop.isEmpty()) {
      return;
    }
    double scale =
        inserts.stream().mapToDouble(i -> crop.get().scaleIn(i.rect())).max().orElseThrow();
    if (scale > 1) {
      add(
          Severity.WARNING,
          appearance,
          performer.name()
              + "'s clip is enlarged to "
              + (long) Math.ceil(100 * scale)
              + " % in "
              + appearance.opening().name(),
          "ask for a clip of "
              + needed(performer.clipWidth(), scale)
              + "x"
              + needed(performer.clipHeight(), scale)
              + " pixels or more, or widen the field");
    }
  }

  private static long needed(int pixels, double scale) {
    return (long) Math.ceil(pixels * scale);
  }
}
