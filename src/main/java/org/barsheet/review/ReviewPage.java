package org.barsheet.review;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.barsheet.film.FilmSheet;
import org.barsheet.text.Sha256;

/**
 * The review page: one HTML file that plays the film as planned, with all data and drawings inside.
 * It asks nothing of any network: its content security policy lets in its own style and script, by
 * their SHA-256, photographs and sound out of the page itself, and only where the plan names a
 * recording, sound from where the page stands.
 */
public final class ReviewPage {

  private static final Pattern HOLE = Pattern.compile("\\{\\{(\\w+)\\}\\}");

  private ReviewPage() {}

  /**
   * Writes the page as UTF-8.
   *
   * @param sheet what it shows
   * @param name the plan's file name without extension, first part of the names of files a viewer
   *     saves
   * @param folder where the page will stand: a recording that the plan names is loaded from there
   * @throws IOException if the stream does not take it
   */
  public static void write(FilmSheet sheet, String name, Path folder, OutputStream out)
      throws IOException {
    String style = PageParts.style();
    String script = PageParts.script();
    boolean recorded = sheet.plan().music().recording().isPresent();
    String data = PageData.json(sheet, sheet.inputs(), name, folder);
    out.write(
        page(sheet, style, script, policy(style, script, recorded, ""), data)
            .getBytes(StandardCharsets.UTF_8));
  }

  /**
   * The same page as a server shows it, with the modules that change the plan. It may ask that
   * server, and nothing else.
   *
   * @param data of {@link #data}
   */
  public static String live(FilmSheet sheet, String data) {
    String style = PageParts.liveStyle();
    String script = PageParts.liveScript();
    String policy = policy(style, script, true, "; connect-src 'self'");
    return page(sheet, style, script, policy, data);
  }

  /**
   * Everything the page of a server shows of a film, as JSON that may stand in a page: without the
   * versions of its files, which change while nothing on the page does.
   *
   * @param folder where the page will stand
   */
  public static String data(FilmSheet sheet, String name, Path folder) {
    return PageData.json(sheet, List.of(), name, folder);
  }

  private static String page(
      FilmSheet sheet, String style, String script, String policy, String data) {
    Map<String, String> fillings =
        Map.of(
            "policy", policy,
            "title", PageParts.escaped(sheet.plan().title()),
            "style", style,
            "data", data,
            "script", script);
    return filled(PageParts.template(), fillings);
  }

  private static String policy(String style, String script, boolean recorded, String more) {
    return "default-src 'none'; script-src '"
        + Sha256.policySource(script)
        + "'; style-src '"
        + Sha256.policySource(style)
        + "'; img-src data:; media-src blob:"
        + (recorded ? " 'self' file:" : "")
        + more
        + "; base-uri 'none'; form-action 'none'";
  }

  /** Fills every hole once; what is filled in is not looked at again. */
  private static String filled(String template, Map<String, String> fillings) {
    StringBuilder page = new StringBuilder(1 << 20);
    Matcher hole = HOLE.matcher(template);
    int from = 0;
    while (hole.find()) {
      page.append(template, from, hole.start());
      page.append(fillings.getOrDefault(hole.group(1), ""));
      from = hole.end();
    }
    return page.append(template, from, template.length()).toString();
  }
}
