package org.barsheet.production.noted;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.barsheet.ticks.Ticked;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Files from the phone that say less than they should. */
class PhoneTicksTest {

  private static final String BEGINS = "{\"format\":\"barsheet-taken\"";

  @TempDir private Path folder = Path.of("");

  private Ticked read(String text) throws IOException {
    return PhoneTicks.read(Files.writeString(folder.resolve("quay-taken.json"), text));
  }

  @Test
  void a_damaged_file_is_told() throws IOException {
    List<String> damaged =
        List.of(
            "oops",
            "",
            "null",
            "[1]",
            BEGINS,
            BEGINS + "}",
            BEGINS + ",\"taken\":3}",
            BEGINS + ",\"taken\":[3]}");
    for (String text : damaged) {
      assertThat(read(text).unread())
          .as(text)
          .extracting(Ticked.Unread::sentence)
          .containsExactly("quay-taken.json is ignored: it is damaged");
    }
  }

  @Test
  void a_note_too_long_to_print_is_told_and_its_tick_counts() throws IOException {
    String tick = "{\"photograph\":\"lamp 000\",\"mark\":\"taken\",\"note\":\"%s\"}";
    String note = "a hair ".repeat(600);
    Ticked ticked = read(BEGINS + ",\"taken\":[" + tick.formatted(note) + "]}");
    assertThat(ticked.ticks()).hasSize(1);
    assertThat(ticked.notes()).isEmpty();
    assertThat(ticked.unread())
        .extracting(Ticked.Unread::sentence)
        .containsExactly("quay-taken.json: the note on lamp 000 is longer than 4,000 characters");
  }
}
