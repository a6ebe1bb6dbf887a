package org.barsheet.handoff;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.barsheet.artwork.ModelScale;
import org.barsheet.artwork.Optics;
import org.barsheet.artwork.PaperEdge;
import org.barsheet.artwork.PaperState;
import org.barsheet.artwork.PhotographView;
import org.barsheet.artwork.PhotographView.Pixel;
import org.barsheet.exposure.FileNames;
import org.barsheet.exposure.Movement.MovedPhotograph;
import org.barsheet.film.FilmSheet;
import org.barsheet.input.Prose;
import org.barsheet.plan.Artwork;
import org.barsheet.plan.Camera;
import org.barsheet.plan.Opening;
import org.barsheet.shooting.Setup;
import org.barsheet.text.Html;

/**
 * For every photograph of a movement a drawing without ground, as large as the photograph: the
 * outline of hole and flap as the camera sees them, to lay over what it sees.
 */
public final class Overlays {

  private final FilmSheet sheet;
  private final Artwork artwork;
  private final Camera camera;
  private final Optics optics;

  private Overlays(FilmSheet sheet, Camera camera) {
    this.sheet = sheet;
    this.artwork = sheet.plan().workshop().artwork();
    this.camera = camera;
    this.optics = new Optics(camera, sheet.plan().film());
  }

  /**
   * One for each photograph of a movement that panels give a field for; none where the plan has no
   * camera.
   */
  public static List<HandoffFile> files(FilmSheet sheet) {
    Optional<Camera> camera = sheet.plan().workshop().camera();
    if (camera.isEmpty()) {
      return List.of();
    }
    Overlays overlays = new Overlays(sheet, camera.get());
    List<HandoffFile> files = new ArrayList<>();
    for (Setup setup : sheet.shooting().setups()) {
      overlays
          .view(setup)
          .ifPresent(view -> setup.runs().forEach(run -> overlays.add(files, view, run)));
    }
    return files;
  }

  /** What there are none for, and why, in a sentence each. */
  public static List<String> notes(FilmSheet sheet) {
    if (sheet.plan().workshop().camera().isEmpty()) {
      return List.of(
          "No overlays: the plan has no camera. Add one, such as camera: {lens: 50 mm, sensor: 36 mm,"
              + " pixels: 6000x4000}.");
    }
    List<String> unseen =
        sheet.shooting().setups().stream()
            .filter(setup -> setup.view().isEmpty())
            .flatMap(setup -> setup.runs().stream())
            .map(Setup.Run::name)
            .toList();
    return unseen.isEmpty()
        ? List.of()
        : List.of(
            "No overlays for "
                + Prose.listed(unseen)
                + ": no panel says what the camera sees. Give their panels a field.");
  }

  private Optional<PhotographView> view(Setup setup) {
    ModelScale scale = ModelScale.of(setup.model(), artwork);
    return setup.view().map(view -> PhotographView.of(view.field(), scale, camera, optics));
  }

  private void add(List<HandoffFile> files, PhotographView view, Setup.Run run) {
    String first = run.movement().openings().get(0);
    Opening opening = sheet.plan().workshop().opening(first).orElseThrow();
    for (MovedPhotograph photograph : run.movement().photographs()) {
      if (!photograph.isLikeBefore()) {
        String name = FileNames.ofPhotograph(photograph.photograph().name());
        String unit = run.movement().measure().unit();
        String told = unit.equals("deg") ? "°" : " " + unit;
        byte[] drawing = drawing(view, opening, photograph, told).getBytes(StandardCharsets.UTF_8);
        files.add(new HandoffFile("overlays/" + name + ".svg", out -> out.write(drawing)));
      }
    }
  }

  private String drawing(
      PhotographView view, Opening opening, MovedPhotograph photograph, String unit) {
    String name = photograph.photograph().name();
    int width = view.width();
    int height = view.height();
    StringBuilder svg = new StringBuilder();
    svg.append("<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n");
    svg.append("<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"" + width + "\" height=\"");
    svg.append(height + "\" viewBox=\"0 0 " + width + " " + height + "\">\n");
    svg.append("<title>" + Html.escaped(name) + "</title>\n");
    double amount = photograph.measures().set().doubleValue();
    for (PaperEdge edge : PaperState.of(opening, artwork, amount)) {
      if (view.sees(edge.from()) && view.sees(edge.to())) {
        line(svg, edge.kind(), view.pixel(edge.from()), view.pixel(edge.to()));
      }
    }
    words(svg, name + " · " + FilmWords.plain(photograph.measures().set()).toPlainString() + unit);
    return svg.append("</svg>\n").toString();
  }

  /** White on black, so that it is seen on any ground. */
  private void line(StringBuilder svg, PaperEdge.Kind kind, Pixel from, Pixel to) {
    double weight = camera.pixelsWidth() / (kind == PaperEdge.Kind.FREE ? 750.0 : 1500.0);
    String ends =
        " x1=\""
            + pixel(from.x())
            + "\" y1=\""
            + pixel(from.y())
            + "\" x2=\""
            + pixel(to.x())
            + "\" y2=\""
            + pixel(to.y())
            + "\"";
    String dashes =
        kind == PaperEdge.Kind.HOLE ? " stroke-dasharray=\"" + pixel(8 * weight) + "\"" : "";
    svg.append(
        "<line" + ends + " stroke=\"#000000\" stroke-width=\"" + pixel(2 * weight) + "\"/>\n");
    svg.append("<line class=\"" + look(kind) + "\"" + ends + " stroke=\"#FFFFFF\" stroke-width=\"");
    svg.append(pixel(weight) + "\"" + dashes + "/>\n");
  }

  private static String look(PaperEdge.Kind kind) {
    return switch (kind) {
      case HOLE -> "hole";
      case COVER -> "cover";
      case FREE -> "free";
    };
  }

  private void words(StringBuilder svg, String words) {
    double size = camera.pixelsWidth() / 60.0;
    svg.append("<text x=\"" + pixel(size) + "\" y=\"" + pixel(camera.pixelsHeight() - size));
    svg.append("\" font-family=\"sans-serif\" font-size=\"" + pixel(size) + "\" fill=\"#FFFFFF\"");
    svg.append(
        " stroke=\"#000000\" stroke-width=\"" + pixel(size / 8) + "\" paint-order=\"stroke\">");
    svg.append(Html.escaped(words) + "</text>\n");
  }

  private static String pixel(double at) {
    return FilmWords.pixels(at).toPlainString();
  }
}
