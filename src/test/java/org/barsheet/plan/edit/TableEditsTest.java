package org.barsheet.plan.edit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.barsheet.input.InputException;
import org.barsheet.plan.read.PlanSource;
import org.barsheet.plan.source.Entry;
import org.barsheet.plan.source.PlanReading;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A changed field of a table of panels in text: that field only, read back as asked. */
class TableEditsTest {

  private static final List<String> VALUES =
      List.of("glimmer 3", "\"big\" lamp", "two\nlines", "a, b; c\td", " bar 3 ", "é 😀", "it's");

  @TempDir private Path folder;

  private static PlanPath field(int panel, String key) {
    return PlanPath.ROOT.key("panels").item(panel).key(key);
  }

  private byte[] edited(String table, Edit... edits) throws IOException {
    Path plan = Files.writeString(folder.resolve("plan.yaml"), "title: x\npanels: panels.csv\n");
    Files.writeString(folder.resolve("panels.csv"), table);
    List<EditedFile> files = PlanEdits.of(plan, List.of(edits));
    assertThat(files)
        .singleElement()
        .extracting(EditedFile::file)
        .hasToString(folder.resolve("panels.csv").toString());
    return files.get(0).after();
  }

  @Test
  void a_field_changes_in_its_row_and_keeps_its_quotes() throws IOException {
    String table = "\uFEFFpanel;cue;mood\r\n1; bar 3 ;\"so; so\"\r\n\r\n2;\"bar 4\";\r\n";
    byte[] after =
        edited(table, new Edit(field(0, "cue"), "bar 7"), new Edit(field(1, "cue"), "mark \"B\""));
    assertThat(new String(after, StandardCharsets.UTF_8))
        .isEqualTo("\uFEFFpanel;cue;mood\r\n1;bar 7;\"so; so\"\r\n\r\n2;\"mark \"\"B\"\"\";\r\n");
  }

  @Test
  void a_reveal_in_a_row_of_its_own_is_reached_by_its_place_in_the_list() throws IOException {
    String table = "panel,opening,lands-on\n1,lamp,bar 3\n,lamp,bar 5\n";
    PlanPath second = PlanPath.ROOT.key("panels").item(0).key("reveals").item(1);
    byte[] after = edited(table, new Edit(second.key("lands-on"), "mark B, C"));
    assertThat(new String(after, StandardCharsets.UTF_8))
        .isEqualTo("panel,opening,lands-on\n1,lamp,bar 3\n,lamp,\"mark B, C\"\n");
  }

  @Test
  void random_tables_keep_every_byte_outside_the_changed_fields() throws IOException {
    for (int seed = 0; seed < 300; seed++) {
      Random random = new Random(seed);
      char delimiter = ",;\t".charAt(random.nextInt(3));
      String lineEnd = List.of("\n", "\r\n", "\r").get(random.nextInt(3));
      int rows = 1 + random.nextInt(5);
      List<Edit> edits = new ArrayList<>();
      StringBuilder before = new StringBuilder(random.nextBoolean() ? "\uFEFF" : "");
      before.append(String.join("" + delimiter, "panel", "action", "cue", "own"));
      StringBuilder expected = new StringBuilder(before);
      for (int row = 0; row < rows; row++) {
        String end = lineEnd.repeat(1 + random.nextInt(2));
        before.append(end).append(row + 1);
        expected.append(end).append(row + 1);
        for (String key : List.of("action", "cue", "own")) {
          boolean quoted = random.nextBoolean();
          String old = field(VALUES.get(random.nextInt(VALUES.size())), quoted, delimiter, lineEnd);
          before.append(delimiter).append(old);
          boolean changes = !key.equals("own") && random.nextBoolean();
          String now = VALUES.get(random.nextInt(VALUES.size())).replace('\n', ' ');
          if (changes) {
            edits.add(new Edit(field(row, key), now));
          }
          expected
              .append(delimiter)
              .append(changes ? field(now, old.startsWith("\""), delimiter, lineEnd) : old);
        }
      }
      if (!edits.isEmpty()) {
        byte[] after = edited(before.toString(), edits.toArray(new Edit[0]));
        assertThat(new String(after, StandardCharsets.UTF_8)).isEqualTo(expected.toString());
        assertReadBack(after, edits);
      }
    }
  }

  private static String field(String value, boolean quoted, char delimiter, String lineEnd) {
    boolean needed = value.matches("(?s).*[\n\"" + delimiter + "].*");
    return quoted || needed
        ? "\"" + value.replace("\"", "\"\"").replace("\n", lineEnd) + "\""
        : value;
  }

  private void assertReadBack(byte[] table, List<Edit> edits) throws IOException {
    Files.write(folder.resolve("panels.csv"), table);
    Entry read = PlanSource.read(new PlanReading(folder.resolve("plan.yaml")));
    for (Edit edit : edits) {
      assertThat(edit.at().textIn(read).orElseThrow().text()).isEqualTo(edit.now().orElseThrow());
    }
  }

  @Test
  void a_file_that_is_no_text_any_more_is_told_by_its_name() throws IOException {
    Path plan = Files.writeString(folder.resolve("plan.yaml"), "panels: panels.csv\n");
    Files.write(folder.resolve("panels.csv"), new byte[] {'p', (byte) 0xFF, 'x'});
    InputException refused =
        catchThrowableOfType(
            InputException.class,
            () -> PlanEdits.of(plan, List.of(new Edit(field(0, "cue"), "bar 3"))));
    assertThat(refused.problems()).singleElement().asString().contains("UTF-8");
  }
}
