package org.barsheet.production;

import java.nio.file.Path;
import java.util.Optional;

/**
 * What {@link Production#make} makes on request only.
 *
 * @param sound the guide and the click track: tens of megabytes
 * @param soundBank the file of instruments to play the guide with, where it is not to be our own
 * @param placeholders a drawing in the place of every photograph still to take
 * @param paper cutting sheets and slates to print: the library that writes them takes half a second
 * @param overlays the outline of hole and flap for every photograph of a movement
 * @param issue the name it is sent out under, or ""
 * @param movie the film as a movie
 */
public record Extras(
    boolean sound,
    Optional<Path> soundBank,
    boolean placeholders,
    boolean paper,
    boolean overlays,
    String issue,
    MovieAsk movie) {

  /** Nothing besides the sheets. */
  public static final Extras NONE =
      new Extras(false, Optional.empty(), false, false, false, "", MovieAsk.NONE);
}
