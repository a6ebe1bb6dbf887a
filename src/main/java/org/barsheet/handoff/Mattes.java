package org.barsheet.handoff;

import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.barsheet.artwork.FrameRect;
import org.barsheet.exposure.Appearance;
import org.barsheet.exposure.FileNames;
import org.barsheet.exposure.Insert;
import org.barsheet.film.FilmSheet;
import org.barsheet.plan.Film;
import org.barsheet.text.Html;

/**
 * A matte for each opening that somebody is seen in: an SVG of the film's size, white where the
 * opening is, black elsewhere. Where the camera moves it is the matte of the first frame seen.
 */
final class Mattes {

  private final FilmSheet sheet;
  private final Film film;

  private Mattes(FilmSheet sheet) {
    this.sheet = sheet;
    this.film = sheet.plan().film();
  }

  /** One matte a shot and opening, in {@code mattes/}. */
  static List<HandoffFile> files(FilmSheet sheet) {
    Mattes mattes = new Mattes(sheet);
    Map<String, HandoffFile> files = new LinkedHashMap<>();
    for (Appearance appearance : sheet.appearances()) {
      List<Insert> inserts = Insert.of(sheet.timing(), appearance);
      if (!inserts.isEmpty()) {
        HandoffFile file = mattes.file(appearance, inserts);
        files.putIfAbsent(file.path(), file);
      }
    }
    return List.copyOf(files.values());
  }

  private HandoffFile file(Appearance appearance, List<Insert> inserts) {
    String name = "panel " + panel(appearance) + " " + appearance.opening().name();
    byte[] matte = matte(appearance, inserts).getBytes(StandardCharsets.UTF_8);
    return new HandoffFile("mattes/" + FileNames.safe(name) + ".svg", out -> out.write(matte));
  }

  private String panel(Appearance appearance) {
    return sheet.timing().shots().get(appearance.shot()).panel().name();
  }

  private String matte(Appearance appearance, List<Insert> inserts) {
    String size = "width=\"" + film.width() + "\" height=\"" + film.height() + "\"";
    String box = "viewBox=\"0 0 " + film.width() + " " + film.height() + "\"";
    return "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n"
        + ("<svg xmlns=\"http://www.w3.org/2000/svg\" " + size + " " + box + ">\n")
        + ("  <title>" + Html.escaped(appearance.opening().name()) + "</title>\n")
        + ("  <desc>" + Html.escaped(description(appearance, inserts)) + "</desc>\n")
        + ("  <rect " + size + " fill=\"#000000\"/>\n")
        + ("  " + hole(inserts.get(0).rect()) + "\n")
        + "</svg>\n";
  }

  private String description(Appearance appearance, List<Insert> inserts) {
    long first = inserts.get(0).frame();
    long last = inserts.get(inserts.size() - 1).frame();
    boolean still = inserts.stream().allMatch(i -> i.rect().equals(inserts.get(0).rect()));
    String camera =
        still
            ? "the camera doesn't move"
            : "the camera moves: this is frame " + first + ", the inserts table has the others";
    String frames = "film frames " + first + " to " + last;
    String head = "Panel " + panel(appearance) + ", " + frames + "; ";
    return head + camera + "; " + FilmWords.counting(film) + ".";
  }

  private static String hole(FrameRect rect) {
    return "<rect x=\""
        + FilmWords.pixels(rect.left()).toPlainString()
        + "\" y=\""
        + FilmWords.pixels(rect.top()).toPlainString()
        + "\" width=\""
        + FilmWords.pixels(rect.width()).toPlainString()
        + "\" height=\""
        + FilmWords.pixels(rect.height()).toPlainString()
        + "\" fill=\"#FFFFFF\"/>";
  }
}
