package org.barsheet.text;

import java.text.Normalizer;
import java.util.Map;
import java.util.regex.Pattern;

/** Text for files that know nothing but ASCII. */
public final class Ascii {

  /**
   * Letters and signs that Unicode does not take apart into a plain letter and marks, as Unicode's
   * own transliteration writes them (CLDR, Latin-ASCII).
   */
  private static final Map<String, String> PLAIN =
      Map.ofEntries(
          Map.entry("Æ", "AE"),
          Map.entry("æ", "ae"),
          Map.entry("Œ", "OE"),
          Map.entry("œ", "oe"),
          Map.entry("Ø", "O"),
          Map.entry("ø", "o"),
          Map.entry("ß", "ss"),
          Map.entry("ẞ", "SS"),
          Map.entry("Ł", "L"),
          Map.entry("ł", "l"),
          Map.entry("Đ", "D"),
          Map.entry("đ", "d"),
          Map.entry("Ð", "D"),
          Map.entry("ð", "d"),
          Map.entry("Þ", "TH"),
          Map.entry("þ", "th"),
          Map.entry("Ħ", "H"),
          Map.entry("ħ", "h"),
          Map.entry("ı", "i"),
          Map.entry("‘", "'"),
          Map.entry("’", "'"),
          Map.entry("“", "\""),
          Map.entry("”", "\""),
          Map.entry("–", "-"),
          Map.entry("—", "-"));

  private static final Pattern SPECIAL =
      Pattern.compile("[" + String.join("", PLAIN.keySet()) + "]");

  private Ascii() {}

  /** On one line, in plain letters; each run of what has none becomes '_'. */
  public static String line(String words) {
    String letters =
        SPECIAL.matcher(words).replaceAll(found -> PLAIN.getOrDefault(found.group(), "_"));
    return Normalizer.normalize(letters, Normalizer.Form.NFKD)
        .replaceAll("\\p{M}+", "")
        .replaceAll("\\p{Cntrl}+", " ")
        .replaceAll("[^\\x20-\\x7E]+", "_")
        .strip();
  }
}
