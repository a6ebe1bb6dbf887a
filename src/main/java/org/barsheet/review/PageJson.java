package org.barsheet.review;

import com.google.gson.stream.JsonWriter;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.Optional;
import java.util.function.Consumer;

/**
 * Writes the page's data as JSON without spaces. No sign that a page could take for markup stands
 * in it: the less-than sign and its like are written as escapes.
 */
final class PageJson {

  private final StringWriter text = new StringWriter(1 << 16);
  private final JsonWriter json = new JsonWriter(text);

  PageJson() {
    json.setHtmlSafe(true);
  }

  private interface Step {
    void run() throws IOException;
  }

  /** A writer into memory never refuses. */
  private static void sure(Step step) {
    try {
      step.run();
    } catch (IOException impossible) {
      throw new UncheckedIOException(impossible);
    }
  }

  PageJson name(String name) {
    sure(() -> json.name(name));
    return this;
  }

  PageJson text(String name, String value) {
    sure(() -> json.name(name).value(value));
    return this;
  }

  PageJson number(String name, long value) {
    sure(() -> json.name(name).value(value));
    return this;
  }

  /** A number for drawing, to at most four decimals. */
  PageJson decimal(String name, double value) {
    name(name);
    return decimal(value);
  }

  PageJson yes(String name, boolean value) {
    sure(() -> json.name(name).value(value));
    return this;
  }

  PageJson item(String value) {
    sure(() -> json.value(value));
    return this;
  }

  PageJson item(long value) {
    sure(() -> json.value(value));
    return this;
  }

  /** A number for drawing, to at most four decimals. */
  PageJson decimal(double value) {
    double rounded = Math.rint(value * 10_000) / 10_000;
    sure(
        () -> {
          if (rounded == Math.rint(rounded)) {
            json.value((long) rounded);
          } else {
            json.value(rounded);
          }
        });
    return this;
  }

  PageJson object(Runnable fields) {
    sure(json::beginObject);
    fields.run();
    sure(json::endObject);
    return this;
  }

  PageJson list(String name, Runnable items) {
    name(name);
    return list(items);
  }

  PageJson list(Runnable items) {
    sure(json::beginArray);
    items.run();
    sure(json::endArray);
    return this;
  }

  <T> PageJson list(String name, Iterable<T> items, Consumer<T> write) {
    return list(name, () -> items.forEach(write));
  }

  /** A list of objects. */
  <T> PageJson objects(String name, Iterable<T> items, Consumer<T> fields) {
    return list(name, items, item -> object(() -> fields.accept(item)));
  }

  /** A list of texts. */
  PageJson texts(String name, Iterable<String> items) {
    return list(name, items, this::item);
  }

  /** A field that is left out where there is nothing. */
  <T> PageJson maybe(Optional<T> value, Consumer<T> write) {
    value.ifPresent(write);
    return this;
  }

  @Override
  public String toString() {
    return text.toString();
  }
}
