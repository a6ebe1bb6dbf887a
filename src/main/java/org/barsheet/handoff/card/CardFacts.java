package org.barsheet.handoff.card;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.barsheet.artwork.Optics;
import org.barsheet.exposure.PlannedReveal;
import org.barsheet.film.FilmSheet;
import org.barsheet.plan.Artwork;
import org.barsheet.plan.Plan;
import org.barsheet.plan.Reveal.Way;
import org.barsheet.shooting.CameraView;
import org.barsheet.shooting.SetUp;
import org.barsheet.shooting.WorkTime;

/** The upper right corner of a card: what it is for, what the camera sees, how much there is. */
final class CardFacts {

  private final FilmSheet film;
  private final Plan plan;
  private final SetUp setUp;
  private final SetUp.Run run;

  CardFacts(FilmSheet film, SetUp setUp, SetUp.Run run) {
    this.film = film;
    this.plan = film.plan();
    this.setUp = setUp;
    this.run = run;
  }

  /** One a line. */
  List<String> lines() {
    List<String> lines = new ArrayList<>();
    lines.add(purpose());
    lines.add(setUp.view().map(this::view).orElse("no panel gives a field"));
    looming().ifPresent(lines::add);
    lines.add(model(setUp.model()));
    lines.add(amount());
    return lines;
  }

  private String purpose() {
    return "for "
        + String.join(", ", run.movement().openings())
        + (run.panels().size() == 1 ? " · panel " : " · panels ")
        + run.panels().stream().map(this::panel).collect(Collectors.joining(", "));
  }

  /** A closing shows the pictures backwards; they are taken once all the same. */
  private String panel(String name) {
    boolean closes =
        film.reveals().stream()
            .filter(reveal -> reveal.movement().equals(run.movement().name()))
            .filter(reveal -> panelOf(reveal).equals(name))
            .anyMatch(reveal -> reveal.reveal().way() == Way.CLOSES);
    return closes ? name + " backwards" : name;
  }

  private String panelOf(PlannedReveal reveal) {
    return film.timing().shots().get(reveal.shot()).panel().name();
  }

  private String view(CameraView view) {
    String field =
        "field "
            + Math.round(view.millimetresWide())
            + " × "
            + Math.round(view.millimetresHigh())
            + " mm";
    String lens =
        plan.workshop()
            .camera()
            .map(c -> " · lens " + Amounts.tenth(c.lensMillimetres()) + " mm")
            .orElse("");
    return view.distanceMillimetres().isPresent()
        ? field + lens + ", about " + Math.round(view.distanceMillimetres().getAsDouble()) + " mm"
        : field + lens;
  }

  /** {@code at its highest 60 mm up: looks 1.3 times as large}; empty where nothing stands up. */
  private Optional<String> looming() {
    double highest = run.movement().highest();
    if (highest == 0 || plan.workshop().camera().isEmpty() || setUp.view().isEmpty()) {
      return Optional.empty();
    }
    Optics optics = new Optics(plan.workshop().camera().get(), plan.film());
    double field = setUp.view().get().millimetresWide();
    String up = "highest " + Amounts.tenth(highest) + " mm up";
    return Optional.of(
        highest < optics.distance(field)
            ? up + ": looks " + hundredth(optics.looming(field, highest)) + " times as large"
            : up + ": it reaches the lens");
  }

  private static String hundredth(double number) {
    return BigDecimal.valueOf(number).setScale(2, RoundingMode.HALF_UP).toPlainString();
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
        + setUp.time().map(this::time).orElse("");
  }

  /** Of a set-up with several cards, what this one takes of its hours. */
  private String time(WorkTime time) {
    boolean alone = setUp.runs().size() == 1 || run.hours().isEmpty();
    String whose =
        alone
            ? " · set-up about "
            : " · " + Amounts.tenth(run.hours().getAsDouble()) + " h of the set-up's ";
    return whose
        + Amounts.tenth(time.hours())
        + " h"
        + time.begins().map(day -> ", " + day).orElse("");
  }
}
