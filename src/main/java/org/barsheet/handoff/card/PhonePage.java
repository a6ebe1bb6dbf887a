package org.barsheet.handoff.card;

import com.google.gson.stream.JsonWriter;
import java.io.IOException;
import java.io.InputStream;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import org.barsheet.film.FilmSheet;
import org.barsheet.shooting.WorkDay;
import org.barsheet.text.Html;
import org.barsheet.text.Sha256;

/**
 * The card for the phone beside the camera: one HTML file a day with everything inside. Its content
 * security policy lets in its own style and script, by their SHA-256, and nothing from a network.
 */
public final class PhonePage {

  private static final DateTimeFormatter DATE =
      DateTimeFormatter.ofPattern("EEEE, MMMM d", Locale.US);

  private PhonePage() {}

  /**
   * The page of a day.
   *
   * @param name the plan's file name without extension: the page saves {@code <name>-taken.json}
   */
  public static String of(FilmSheet film, String name, WorkDay day) {
    String style = part("phone.css");
    String script = part("phone.js");
    String title = Html.escaped(day.name() + " · " + film.plan().title());
    return """
    <!DOCTYPE html>
    <html lang="en">
    <head>
    <meta charset="utf-8">
    <meta http-equiv="Content-Security-Policy" content="%s">
    <meta name="viewport" content="width=device-width, initial-scale=1">
    <meta name="referrer" content="no-referrer">
    <link rel="icon" href="data:,">
    <title>%s</title>
    <style>%s</style>
    </head>
    <body>
    <main>
    <div class="top"><p id="head"></p><p id="count"></p></div>
    <div id="bar"><div></div></div>
    <noscript><p>This card works with its own script. Allow scripts for this file, or use the shooting cards.</p></noscript>
    <h1 id="title"></h1>
    <div id="middle">
    <div class="which"><div id="number"></div><div id="of"></div><svg id="flap" viewBox="0 0 116 84" role="img"></svg></div>
    <p id="before"></p>
    <dl id="facts"></dl>
    <p id="written"></p>
    </div>
    <div id="note-form" hidden><textarea id="note-text" aria-label="note"></textarea><button id="note-keep" type="button">keep the note</button></div>
    <p id="caution"></p>
    <p id="said" role="status"></p>
    <div class="small"><button id="note" type="button">note</button><button id="save" type="button">save</button><button id="light" type="button">light</button></div>
    <div class="large"><button id="back" type="button">‹ back</button><button id="again" type="button">again</button><button id="taken" type="button">taken √</button></div>
    </main>
    <script type="application/json" id="day">%s</script>
    <script>%s</script>
    </body>
    </html>
    """
        .formatted(policy(style, script), title, style, data(film, name, day), script);
  }

  private static String policy(String style, String script) {
    return "default-src 'none'; script-src '"
        + Sha256.policySource(script)
        + "'; style-src '"
        + Sha256.policySource(style)
        + "'; img-src data:; base-uri 'none'; form-action 'none'";
  }

  private static String part(String name) {
    try (InputStream part = PhonePage.class.getResourceAsStream(name)) {
      return new String(Objects.requireNonNull(part, name).readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException broken) {
      throw new UncheckedIOException(broken);
    }
  }

  private static String data(FilmSheet film, String name, WorkDay day) {
    StringWriter text = new StringWriter();
    try (JsonWriter json = new JsonWriter(text)) {
      json.setHtmlSafe(true);
      json.beginObject();
      json.name("film").value(film.plan().title());
      json.name("name").value(name);
      json.name("date").value(day.date().map(DATE::format).orElse(day.name()));
      json.name("items").beginArray();
      for (PhoneItem item : PhoneItem.of(film, day)) {
        item(json, item);
      }
      json.endArray().endObject();
    } catch (IOException impossible) {
      throw new UncheckedIOException(impossible);
    }
    return text.toString();
  }

  private static void item(JsonWriter json, PhoneItem item) throws IOException {
    json.beginObject();
    json.name("photograph").value(item.photograph());
    json.name("setup").value(item.setup());
    json.name("title").value(item.title());
    json.name("panels").value(item.panels());
    json.name("number").value(item.number());
    json.name("of").value(item.of());
    json.name("likeness").value(item.likeness());
    json.name("mark").value(item.mark());
    json.name("before").value(item.before());
    json.name("degrees");
    if (item.degrees().isPresent()) {
      json.value(item.degrees().getAsDouble());
    } else {
      json.nullValue();
    }
    json.name("mirrored").value(item.mirrored());
    json.name("caution").value(item.caution());
    json.name("rows").beginArray();
    for (List<String> row : item.rows()) {
      json.beginArray();
      for (String cell : row) {
        json.value(cell);
      }
      json.endArray();
    }
    json.endArray().endObject();
  }
}
