package org.barsheet.handoff.card;

import java.util.ArrayList;
import java.util.List;
import org.barsheet.exposure.CameraView;
import org.barsheet.exposure.SetUp;
import org.barsheet.exposure.WorkTime;
import org.barsheet.plan.Artwork;
import org.barsheet.plan.Plan;

/** The upper right corner of a card: what it is for, what the camera sees, how much there is. */
final class CardFacts {

  private final Plan plan;
  private final SetUp setUp;
  private final SetUp.Run run;

  CardFacts(Plan plan, SetUp setUp, SetUp.Run run) {
    this.plan = plan;
    this.setUp = setUp;
    this.run = run;
  }

  /** One a line. */
  List<String> lines() {
    List<String> lines = new ArrayList<>();
    lines.add(purpose());
    lines.add(setUp.view().map(this::view).orElse("no panel gives a field"));
    lines.add(model(setUp.model()));
    lines.add(amount());
    return lines;
  }

  private String purpose() {
    return "for "
        + String.join(", ", run.movement().openings())
        + (run.panels().size() == 1 ? " · panel " : " · panels ")
        + String.join(", ", run.panels());
  }

  private String view(CameraView view) {
    String field =
        "field "
            + Math.round(view.millimetresWide())
            + " × "
            + Math.round(view.millimetresHigh())
            + " mm";
    String lens =
        plan.camera().map(c -> " · lens " + Amounts.tenth(c.lensMillimetres()) + " mm").orElse("");
    return view.distanceMillimetres().isPresent()
        ? field + lens + ", about " + Math.round(view.distanceMillimetres().getAsDouble()) + " mm"
        : field + lens;
  }

  private static String model(Artwork.Model model) {
    String enlarged = model.enlarged() == 1 ? "" : " × " + Amounts.tenth(model.enlarged());
    return "model "
        + model.name()
        + enlarged
        + said("light", model.light())
        + said("backing", model.backing());
  }

  private static String said(String what, String word) {
    return word.isEmpty() ? "" : " · " + what + " " + word;
  }

  private String amount() {
    int plates = run.plates().size();
    return run.moved()
        + (run.moved() == 1 ? " picture + " : " pictures + ")
        + plates
        + (plates == 1 ? " plate" : " plates")
        + setUp.time().map(CardFacts::time).orElse("");
  }

  private static String time(WorkTime time) {
    return " · set-up about "
        + Amounts.tenth(time.hours())
        + " h"
        + time.begins().map(day -> ", " + day).orElse("");
  }
}
