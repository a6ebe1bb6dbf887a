package org.barsheet.frames;

import java.nio.file.Path;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.barsheet.artwork.Framing;
import org.barsheet.timing.Shot;

/**
 * What stays the same throughout a shot.
 *
 * @param shot which
 * @param framing what the camera sees; empty where the panel does not say
 * @param whole the drawing of the whole artwork that lies at the back
 * @param own the panel's own drawing, where it lies over that: the camera stands still
 * @param nothingDrawn whether the frame has to name its panel, for there is nothing to be seen
 * @param standing amounts of the openings that stand open and do not move, by name, in the plan's
 *     order
 * @param asDrawn names of the openings that the drawing behind shows as they are planned
 */
public record ShotView(
    Shot shot,
    Optional<Framing> framing,
    Optional<Path> whole,
    Optional<Path> own,
    boolean nothingDrawn,
    Map<String, Double> standing,
    Set<String> asDrawn) {

  public ShotView {
    standing = Collections.unmodifiableMap(new LinkedHashMap<>(standing));
    asDrawn = Set.copyOf(asDrawn);
  }
}
