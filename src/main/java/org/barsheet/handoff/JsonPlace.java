package org.barsheet.handoff;

import com.google.gson.JsonElement;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.regex.Pattern;
import org.barsheet.clock.FrameSpan;
import org.barsheet.input.InputException;
import org.barsheet.input.PlainText;
import org.barsheet.input.Problem;

/**
 * A value in a JSON file together with where it stands, so that damage can be pointed at.
 *
 * @param file as messages name it
 * @param path {@code shots[3].startFrame}, or "" for the whole file
 * @param value what stands there
 */
record JsonPlace(String file, String path, JsonElement value) {

  private static final Pattern WHOLE = Pattern.compile("-?\\d{1,18}");
  private static final Pattern DECIMAL = Pattern.compile("-?\\d{1,18}(\\.\\d{1,18})?");

  /** What to do about any damage: the file is made from plan and score and can be made again. */
  static final String REMEDY =
      "restore an undamaged copy, or move the file away; make then writes a new one,"
          + " but forgets what was locked";

  JsonPlace get(String key) {
    if (!value.isJsonObject()) {
      throw damage("a group of named values is expected here");
    }
    JsonElement inside = value.getAsJsonObject().get(key);
    String inner = path.isEmpty() ? key : path + "." + key;
    if (inside == null) {
      throw new JsonPlace(file, inner, value).damage("this value is missing");
    }
    return new JsonPlace(file, inner, inside);
  }

  /** A value that files made before it was written do not hold. */
  Optional<JsonPlace> find(String key) {
    boolean there = value.isJsonObject() && value.getAsJsonObject().has(key);
    return there ? Optional.of(get(key)) : Optional.empty();
  }

  <T> List<T> each(Function<JsonPlace, T> item) {
    if (!value.isJsonArray()) {
      throw damage("a list is expected here");
    }
    List<T> items = new ArrayList<>();
    for (JsonElement element : value.getAsJsonArray()) {
      items.add(item.apply(new JsonPlace(file, path + "[" + items.size() + "]", element)));
    }
    return items;
  }

  String text() {
    if (!value.isJsonPrimitive() || !value.getAsJsonPrimitive().isString()) {
      throw damage("a text in quotes is expected here");
    }
    return PlainText.of(value.getAsString()).replaceAll("\\p{Cntrl}", " ");
  }

  boolean yesOrNo() {
    if (!value.isJsonPrimitive() || !value.getAsJsonPrimitive().isBoolean()) {
      throw damage("true or false is expected here");
    }
    return value.getAsBoolean();
  }

  long whole() {
    return Long.parseLong(number(WHOLE, "a whole number is expected here"));
  }

  int small() {
    long number = whole();
    if (number != (int) number) {
      throw damage("the number " + number + " is too large");
    }
    return (int) number;
  }

  BigDecimal decimal() {
    return new BigDecimal(number(DECIMAL, "a number is expected here"));
  }

  private String number(Pattern spelling, String expected) {
    boolean isNumber = value.isJsonPrimitive() && value.getAsJsonPrimitive().isNumber();
    if (!isNumber || !spelling.matcher(value.getAsString()).matches()) {
      throw damage(expected);
    }
    return value.getAsString();
  }

  /** The frames from {@code start} up to but not including {@code end}, at least one. */
  FrameSpan frames(long start, long end) {
    if (end <= start) {
      throw damage(
          "frames run from " + start + " to " + end + ", which runs backwards or is empty");
    }
    return new FrameSpan(start, end);
  }

  InputException damage(String sentence) {
    return new InputException(Problem.at(file, path, sentence, REMEDY));
  }
}
