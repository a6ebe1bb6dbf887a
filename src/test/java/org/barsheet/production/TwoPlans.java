package org.barsheet.production;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** Two plans of one name whose sheets take turns in one folder. As a program it makes them so. */
record TwoPlans(Path folder) {

  Path plan(int which) {
    return folder.resolve(which == 0 ? "one" : "other").resolve("quay.yaml");
  }

  Path sheets() {
    return folder.resolve("sheets");
  }

  void write() throws IOException {
    for (int which = 0; which < 2; which++) {
      Path plan = plan(which);
      Files.createDirectories(plan.resolveSibling("."));
      Files.writeString(plan, text(which == 0 ? "bar 6" : "bar 9"), UTF_8);
    }
  }

  private static String text(String cue) {
    return """
        title: The quay
        score: %s
        film: {frame-rate: 24}
        artwork: {square: 1 in, squares: 24x13.5, models: {lamp: {enlarged: 3}}}
        openings:
          lamp-1: {left: 3, top: 7, width: 2, height: 4, model: lamp, hinge: left, to: 90 deg}
        performers:
          cello: {}
        panels:
          - {panel: 1, action: Fog}
          - {panel: 2, action: A lamp, cue: %s, reveals: {opening: lamp-1, photographs: 6}}
        """
        .formatted(Path.of("scores", "lamplighters-quay.mid").toAbsolutePath(), cue);
  }

  /** Makes the two in turn, for ever. */
  public static void main(String[] args) {
    TwoPlans plans = new TwoPlans(Path.of(args[0]));
    System.out.print('b');
    System.out.flush();
    for (int which = 1; ; which = 1 - which) {
      Production.make(plans.plan(which), plans.sheets(), Extras.NONE, Progress.SILENT);
    }
  }
}
