package org.barsheet.plan;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import org.barsheet.input.Nearest;
import org.barsheet.input.SyntaxException;

/**
 * A choice among fixed words.
 *
 * @param meanings each word and what it means, in the order they are told
 */
public record WordChoice<T>(Map<String, T> meanings) implements Function<String, T> {

  public static final WordChoice<Boolean> YES_OR_NO =
      new WordChoice<Boolean>(new LinkedHashMap<>())
          .with("yes", true)
          .with("no", false)
          .with("true", true)
          .with("false", false);

  /** Frames per drawing: on ones, on twos … */
  public static final WordChoice<Integer> SHOWN = shown();

  /** The constants of an enumeration by a word each has. */
  public static <E> WordChoice<E> of(List<E> constants, Function<E, String> word) {
    WordChoice<E> words = new WordChoice<>(new LinkedHashMap<>());
    constants.forEach(constant -> words.meanings.put(word.apply(constant), constant));
    return words;
  }

  /** The constants of an enumeration by their own names. */
  public static <E extends Enum<E>> WordChoice<E> of(E[] constants) {
    return of(
        Arrays.asList(constants),
        constant -> constant.name().toLowerCase(Locale.ROOT).replace('_', ' '));
  }

  private static WordChoice<Integer> shown() {
    WordChoice<Integer> words = new WordChoice<>(new LinkedHashMap<>());
    List<String> numbers =
        List.of("ones", "twos", "threes", "fours", "fives", "sixes", "sevens", "eights");
    for (String number : numbers) {
      words.meanings.put("on " + number, words.meanings.size() + 1);
    }
    return words;
  }

  private WordChoice<T> with(String word, T meaning) {
    meanings.put(word, meaning);
    return this;
  }

  /** The words, in the order they are told. */
  public List<String> words() {
    return new ArrayList<>(meanings.keySet());
  }

  /** What a word means, if it is one of them. */
  public Optional<T> find(String word) {
    return meanings.entrySet().stream()
        .filter(known -> known.getKey().equalsIgnoreCase(word))
        .map(Map.Entry::getValue)
        .findFirst();
  }

  /**
   * What a word means, whatever its case and its spaces.
   *
   * @throws SyntaxException if it is none of them
   */
  @Override
  public T apply(String text) {
    String typed = new TextCursor(text).text();
    return find(typed.replaceAll(" +", " ")).orElseThrow(() -> unknown(typed));
  }

  private SyntaxException unknown(String typed) {
    String near = Nearest.to(typed, words()).map(word -> "; did you mean " + word + "?").orElse("");
    String remedy = "write one of: " + String.join(", ", words()) + near;
    return new SyntaxException(typed, 0, "'" + typed + "' is not known here", remedy);
  }
}
