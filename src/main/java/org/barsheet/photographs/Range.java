package org.barsheet.photographs;

import java.util.List;

/** Names of photographs one after another: {@code bakers-lamp 017 to 030}. */
final class Range {

  private Range() {}

  static String of(List<CheckedPhotograph> photographs) {
    return ofPlanned(photographs.stream().map(CheckedPhotograph::planned).toList());
  }

  static String ofPlanned(List<PlannedPhotograph> photographs) {
    PlannedPhotograph first = photographs.get(0);
    PlannedPhotograph last = photographs.get(photographs.size() - 1);
    if (photographs.size() == 1) {
      return first.name();
    }
    String end = last.number() < 0 ? last.name() : digits(last);
    return first.name() + (photographs.size() == 2 ? " and " : " to ") + end;
  }

  private static String digits(PlannedPhotograph planned) {
    return planned.name().substring(planned.name().lastIndexOf(' ') + 1);
  }

  static List<String> names(List<CheckedPhotograph> photographs) {
    return photographs.stream().map(one -> one.planned().name()).toList();
  }
}
