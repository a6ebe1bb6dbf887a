package org.barsheet.photographs;

import java.math.BigInteger;
import java.util.Comparator;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** File names as people count them: {@code IMG_9.JPG} comes before {@code IMG_10.JPG}. */
final class NaturalOrder implements Comparator<String> {

  private static final Pattern PART = Pattern.compile("\\d+|\\D+");

  @Override
  public int compare(String one, String other) {
    Matcher parts = PART.matcher(one);
    Matcher others = PART.matcher(other);
    while (parts.find()) {
      if (!others.find()) {
        return 1;
      }
      int order = comparePart(parts.group(), others.group());
      if (order != 0) {
        return order;
      }
    }
    return others.find() ? -1 : one.compareTo(other);
  }

  private static int comparePart(String one, String other) {
    boolean numbers = Character.isDigit(one.charAt(0)) && Character.isDigit(other.charAt(0));
    return numbers
        ? new BigInteger(one).compareTo(new BigInteger(other))
        : one.compareToIgnoreCase(other);
  }
}
