package org.barsheet.plan;

/**
 * What the camera sees of the artwork in a shot. Its height follows from the frame.
 *
 * @param from at the shot's first frame
 * @param to at its last frame; equal to {@code from} where the camera stands still
 * @param slow where a moving camera is slow
 */
public record Field(Rect from, Rect to, Slow slow) {

  public boolean isMoving() {
    return !from.equals(to);
  }
}
