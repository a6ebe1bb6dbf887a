package org.barsheet.workbook;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.barsheet.changes.Identities;
import org.barsheet.workbook.pen.SheetPlaces;
import org.barsheet.workbook.typed.RowOrigins;

/** Which row of the workbook before is about what a row is about. */
final class RowIdentity implements RowOrigins {

  private static final Pattern FRAME = Pattern.compile("panel (.+) frame (\\d+)( held)?");
  private static final Pattern SEEN = Pattern.compile("panel (.+?) (.+) in (.+)");
  private static final String PANEL = "panel ";
  private static final String MOVEMENT = "movement ";

  private final Identities identities;

  RowIdentity(Identities identities) {
    this.identities = identities;
  }

  @Override
  public Optional<Origin> of(String sheet, String rowName) {
    return switch (sheet) {
      case CuesWorksheet.NAME ->
          identities.ofCue(rowName).map(was -> new Origin(was.name(), was.changed()));
      case SheetPlaces.TIMELINE ->
          same(rowName, identities.isOnOtherMusic(rowName.substring(PANEL.length())));
      case ShootingWorksheet.NAME ->
          same(
              rowName,
              rowName.startsWith(MOVEMENT)
                  && identities.hasOtherPhotographs(rowName.substring(MOVEMENT.length())));
      case "Exposure" -> ofFrame(rowName);
      case PerformersWorksheet.NAME, "Calls" -> same(rowName, isSeenOtherwise(rowName));
      default -> same(rowName, false);
    };
  }

  private static Optional<Origin> same(String rowName, boolean changed) {
    return Optional.of(new Origin(rowName, changed));
  }

  private boolean isSeenOtherwise(String rowName) {
    Matcher seen = SEEN.matcher(rowName);
    return seen.matches()
        && identities.isSeenOtherwise(seen.group(1), seen.group(2), seen.group(3));
  }

  private Optional<Origin> ofFrame(String rowName) {
    Matcher frame = FRAME.matcher(rowName);
    if (!frame.matches()) {
      return same(rowName, false);
    }
    String panel = frame.group(1);
    long inShot = Long.parseLong(frame.group(2));
    String end = frame.group(3) == null ? "" : frame.group(3);
    return identities
        .frameBefore(panel, inShot)
        .map(
            was ->
                new Origin(
                    PANEL + panel + " frame " + was + end,
                    identities.showsOther(panel, inShot, was)));
  }
}
