package org.barsheet.shooting;

import java.util.List;
import org.barsheet.plan.Artwork;
import org.barsheet.plan.Rect;

/**
 * What the camera has to see of a model for one thing that is photographed.
 *
 * @param model what is under the camera; its light and backing belong to the setup
 * @param seen what panels show of it, in squares of the artwork; none where no panel says
 * @param narrowest width in squares of the narrowest field a panel shows of it, which has to stay
 *     sharp; infinite where none has to
 */
record Sight(Artwork.Model model, List<Rect> seen, double narrowest) {

  Sight {
    seen = List.copyOf(seen);
  }
}
