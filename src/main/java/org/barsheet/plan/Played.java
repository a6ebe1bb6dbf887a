package org.barsheet.plan;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.barsheet.motif.Form;

/**
 * In which form a return of a motif is meant, and who plays it. {@code toString} prints what the
 * grammar reads, with a space before it.
 *
 * @param forms all of them together, each at most once, in the order of {@link Form}; none: any
 *     form
 * @param part name of a part that plays it, perhaps with others; empty: anybody
 */
public record Played(List<Form> forms, Optional<String> part) {

  /** In any form, by anybody. */
  public static final Played ANYHOW = new Played(List.of(), Optional.empty());

  public Played {
    forms = forms.stream().distinct().sorted().toList();
  }

  /** Whether a part's name must be quoted, so that it can be told from what follows it. */
  static boolean needsQuotes(String part) {
    boolean near = List.of(part.split(" ", -1)).stream().anyMatch("near"::equalsIgnoreCase);
    return near || part.isEmpty() || Character.isDigit(part.charAt(part.length() - 1));
  }

  @Override
  public String toString() {
    String form = forms.stream().map(one -> " " + one.word()).collect(Collectors.joining());
    return form + part.map(Played::inPart).orElse("");
  }

  private static String inPart(String part) {
    return " in " + (needsQuotes(part) ? '"' + part + '"' : part);
  }
}
