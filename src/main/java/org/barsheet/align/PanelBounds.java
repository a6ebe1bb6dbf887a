package org.barsheet.align;

import org.barsheet.align.places.CutWindow;

/** What a film costs at least on either side of a panel's cut, in millionths. */
interface PanelBounds {

  /** Where nothing is known. */
  PanelBounds NONE =
      new PanelBounds() {
        @Override
        public double before(long cut) {
          return 0;
        }

        @Override
        public double from(long cut) {
          return 0;
        }

        @Override
        public CutWindow within(double limit) {
          return CutWindow.ANY;
        }
      };

  /** What the panels before it cost at least if it begins on a frame. */
  double before(long cut);

  /** What it and the panels after it cost at least if it begins on a frame. */
  double from(long cut);

  /** The frames it may begin on in a layout that costs no more than a limit. */
  CutWindow within(double limit);
}
