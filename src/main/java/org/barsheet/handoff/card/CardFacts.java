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
import org.barsheet.shooting.Setup;
import org.barsheet.shooting.WorkTime;

/** The upper right corner of a card: what it is for, what the camera sees, how much there is. */
final class CardFacts {

  private final FilmSheet film;
  private final Plan plan;
  private final Setup setup;
  private final Setup.Run run;

  CardFacts(FilmSheet film, Setup setup, Setup.Run run) {
    this.film = film;
    this.plan = film.plan();
    this.setup = setup;
    this.run = run;
  }

  /** One a line. */
  List<String> lines() {
    List<String> lines = new ArrayList<>();
    lines.add(purpose());
    lines.add(setup.view().map(this::view).orElse("no panel gives a field"));
    looming().ifPresent(lines::add);
    lines.add(model(setup.model()));
    lines.add(amount());
    return lines;
  }

  private String purpose() {
    return "for "
        + String.join(", ", run.movement().openings())
        + (run.panels().size() == 1 ? " · panel " : " · panels ")
        + run.panels().stream().map(this::panel).collect(Collectors.joining(", "));
  }

  /** A closing shows the photographs backwards; they are taken once all the same. */
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
            + Math.round(view.millimetersWide())
            + " × "
            + Math.round(view.millimetersHigh())
            + " mm";
    String lens =
        plan.workshop()
            .camera()
            .map(c -> " · lens " + Amounts.tenth(c.lensMillimeters()) + " mm")
            .orElse("");
    return view.distanceMillimeters().isPresent()
        ? field + lens + ", about " + Math.round(view.distanceMillimeters().getAsDouble()) + " mm"
        : field + lens;
  }

  /** {@code at its highest 60 mm up: looks 1.3 times as large}; empty where nothing stands up. */
  private Optional<String> looming() {
    double highest = run.movement().highest();
    if (highest == 0 || plan.workshop().camera().isEmpty() || setup.view().isEmpty()) {
      return Optional.empty();
    }
    Optics optics = new Optics(plan.workshop().camera().get(), plan.film());
    double field = setup.view().get().millimetersWide();
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
        + (run.moved() == 1 ? " photograph + " : " photographs + ")
        + plates
        + (plates == 1 ? " plate" : " plates")
        + setup.time().map(this::time).orElse("");
  }

  /** Of a setup with several cards, what this one takes of its hours. */
  private String time(WorkTime time) {
    boolean alone = setup.runs().size() == 1 || run.hours().isEmpty();
    String whose =
        alone
            ? " · about "
            : " · " + Amounts.tenth(run.hours().getAsDouble()) + " h of the setup's ";
    return whose
        + Amounts.tenth(time.hours())
        + " h"
        + time.begins().map(day -> ", " + day).orElse("");
  }
}
