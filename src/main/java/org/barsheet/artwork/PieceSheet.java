package org.barsheet.artwork;

import java.util.List;
import org.barsheet.plan.Rect;

/**
 * One sheet of paper of a piece, its front toward the camera.
 *
 * @param title what it is: "flap", "frame", "shutter", "lid"
 * @param board all of it, in millimeters from the hole's top left corner
 * @param marks what is drawn on it
 */
public record PieceSheet(String title, Rect board, List<PieceMark> marks) {
  public PieceSheet {
    marks = List.copyOf(marks);
  }
}
