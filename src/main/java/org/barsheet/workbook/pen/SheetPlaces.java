package org.barsheet.workbook.pen;

import org.barsheet.timing.Shot;

/** Places of the workbook that many sheets lead to. */
public final class SheetPlaces {

  /** The sheet of findings. */
  public static final String FILM = "Film";

  /** The sheet of panels. */
  public static final String TIMELINE = "Timeline";

  private SheetPlaces() {}

  /** Where a shot stands on the sheet of panels: a row a shot. */
  public static Address ofShot(Shot shot) {
    return new Address(TIMELINE, SheetFrame.FIRST_ROW + shot.index(), 0);
  }
}
