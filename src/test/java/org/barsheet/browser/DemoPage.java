package org.barsheet.browser;

import com.google.gson.JsonObject;
import com.google.gson.JsonParser;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.barsheet.film.FilmSheet;
import org.barsheet.production.Extras;
import org.barsheet.production.Production;
import org.barsheet.production.Progress;

/**
 * The demo's page in a browser. Page and browser are made once for all checks; each check opens the
 * page anew.
 *
 * @param film what was made
 * @param timing the {@code timing.json} made with it
 * @param page the page's file; what it saves comes into the same folder
 * @param browser in which it is open
 */
record DemoPage(FilmSheet film, JsonObject timing, Path page, Browser browser) {

  private static final class Once {
    private static final DemoPage PAGE = make();
  }

  /** The page as it is when somebody opens it on a laptop. */
  static DemoPage open() {
    DemoPage made = made();
    made.browser().width(1440, 900);
    made.browser().open(made.page());
    return made;
  }

  /** The page and what was made with it, whatever is open in the browser. */
  static DemoPage made() {
    Browser.required();
    return Once.PAGE;
  }

  private static DemoPage make() {
    try {
      // Other tests may run beside these, in a process of their own.
      Path target = Path.of("target", "demo-page-" + ProcessHandle.current().pid());
      Path folder = Files.createDirectories(target).toAbsolutePath();
      Path plan = Path.of("scores", "lamplighters-quay.yaml");
      FilmSheet film = Production.make(plan, folder, Extras.NONE, Progress.SILENT).film();
      String json = Files.readString(folder.resolve("timing.json"), StandardCharsets.UTF_8);
      Browser browser = Browser.start(folder);
      Runtime.getRuntime().addShutdownHook(new Thread(browser::close));
      return new DemoPage(
          film,
          JsonParser.parseString(json).getAsJsonObject(),
          folder.resolve("lamplighters-quay.html"),
          browser);
    } catch (IOException broken) {
      throw new UncheckedIOException(broken);
    }
  }
}
