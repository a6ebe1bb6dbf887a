package org.barsheet.photographs;

import java.nio.charset.StandardCharsets;
import java.util.Locale;

/** What kind of file it is, by its first bytes; only cameras' raw files are told by their names. */
enum FileKind {
  JPEG("a JPEG"),
  PNG("a PNG"),
  HEIC("a HEIC image"),
  RAW("a raw image"),
  OTHER_IMAGE("an image of another kind"),
  OTHER("");

  /** So many bytes tell. */
  static final int HEAD = 16;

  private static final String RAW_ENDINGS =
      "(?i).*\\.(cr2|cr3|crw|nef|nrw|arw|srf|sr2|raf|orf|rw2|pef|dng|raw|rwl|iiq|3fr|x3f)";

  private final String words;

  FileKind(String words) {
    this.words = words;
  }

  /** {@code a HEIC image}. */
  String words() {
    return words;
  }

  boolean isRead() {
    return this == JPEG || this == PNG;
  }

  static FileKind of(String name, byte... head) {
    String letters = new String(head, StandardCharsets.ISO_8859_1);
    if (name.matches(RAW_ENDINGS)) {
      return RAW;
    }
    if (letters.startsWith("\u00ff\u00d8\u00ff")) {
      return JPEG;
    }
    if (letters.startsWith("\u0089PNG")) {
      return PNG;
    }
    String brand = letters.length() < 12 ? "" : letters.substring(4, 12).toLowerCase(Locale.ROOT);
    if (brand.matches("ftyp(hei[cxms]|hev[cxm]|mif1|msf1|avif|avis)")) {
      return HEIC;
    }
    boolean image =
        letters.startsWith("II*\0")
            || letters.startsWith("MM\0*")
            || letters.startsWith("GIF8")
            || letters.startsWith("BM")
            || (letters.startsWith("RIFF") && letters.indexOf("WEBP") == 8);
    return image ? OTHER_IMAGE : OTHER;
  }
}
