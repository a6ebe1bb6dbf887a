package org.barsheet.plan.source;

import java.util.Iterator;
import org.snakeyaml.engine.v2.api.LoadSettings;
import org.snakeyaml.engine.v2.api.lowlevel.Parse;
import org.snakeyaml.engine.v2.events.Event;

/** A plan's YAML as the parser sees it. */
public final class YamlEvents {

  private static final LoadSettings SETTINGS =
      LoadSettings.builder().setCodePointLimit(Integer.MAX_VALUE).build();

  private YamlEvents() {}

  /**
   * The parser's events, each with its marks in the text; iterating throws where the text is no
   * YAML.
   *
   * @param text with line feeds as line ends
   */
  public static Iterator<Event> of(String text) {
    return new Parse(SETTINGS).parseString(YamlEscapes.known(text, SETTINGS)).iterator();
  }
}
