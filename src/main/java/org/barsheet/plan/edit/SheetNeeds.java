package org.barsheet.plan.edit;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.Collections;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.commons.compress.archivers.zip.ZipArchiveEntry;
import org.apache.commons.compress.archivers.zip.ZipFile;
import org.barsheet.plan.table.CellPlace;

/**
 * What else of a workbook stands on the rows of a worksheet.
 *
 * @param lastRow the last row, from 1, that a note or a drawing hangs on or a formula of another
 *     sheet may name; 0 where there is none
 */
record SheetNeeds(int lastRow) {

  private static final Pattern PARTS =
      Pattern.compile("Target=[\"'][^\"']*?/((?:comments|drawing)\\w*\\.xml)[\"']");

  /** A row that a drawing begins or ends in, counted from 0. */
  private static final Pattern ANCHOR = Pattern.compile("<(?:\\w+:)?row>\\s*(\\d{1,7})\\s*<");

  static SheetNeeds of(ZipFile book, String sheet, String part) throws IOException {
    int slash = part.lastIndexOf('/') + 1;
    String relations = part.substring(0, slash) + "_rels/" + part.substring(slash) + ".rels";
    Matcher parts = PARTS.matcher(text(book, relations));
    int last = 0;
    while (parts.find()) {
      for (ZipArchiveEntry entry : Collections.list(book.getEntries())) {
        if (entry.getName().endsWith("/" + parts.group(1))) {
          String held = text(book, entry.getName());
          last = Math.max(last, Math.max(lastNote(held), lastAnchor(held)));
        }
      }
    }
    return new SheetNeeds(isNamedElsewhere(book, sheet, part) ? Integer.MAX_VALUE : last);
  }

  private static int lastAnchor(String drawings) {
    return ANCHOR
        .matcher(drawings)
        .results()
        .mapToInt(row -> Integer.parseInt(row.group(1)) + 1)
        .max()
        .orElse(0);
  }

  private static int lastNote(String notes) {
    return XmlTag.all(notes).stream()
        .filter(tag -> tag.name().equals("comment"))
        .mapToInt(tag -> CellPlace.rowOf(tag.attribute("ref")) + 1)
        .max()
        .orElse(0);
  }

  /** Whether another sheet has a formula that names this one. */
  private static boolean isNamedElsewhere(ZipFile book, String sheet, String part)
      throws IOException {
    Pattern formula =
        Pattern.compile(
            "<(?:\\w+:)?f[ >][^<]*" + Pattern.quote(sheet) + "'?!", Pattern.CASE_INSENSITIVE);
    for (ZipArchiveEntry entry : Collections.list(book.getEntries())) {
      boolean other = entry.getName().contains("worksheets/sheet") && !entry.getName().equals(part);
      if (other && formula.matcher(text(book, entry.getName())).find()) {
        return true;
      }
    }
    return false;
  }

  private static String text(ZipFile book, String part) throws IOException {
    ZipArchiveEntry entry = book.getEntry(part);
    if (entry == null) {
      return "";
    }
    try (var in = book.getInputStream(entry)) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    }
  }
}
