package org.barsheet.plan.edit;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Random;
import java.util.stream.Stream;
import org.barsheet.input.InputException;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.snakeyaml.engine.v2.api.Load;
import org.snakeyaml.engine.v2.api.LoadSettings;
import org.snakeyaml.engine.v2.schema.FailsafeSchema;

/**
 * Random edits of plans laid out by chance: an independent reader says that nothing else changed.
 */
class RandomEditsTest {

  @TempDir private Path folder;

  @Test
  void random_edits_of_random_layouts_change_one_stretch_and_nothing_else() throws IOException {
    tryEdits(0, 150);
  }

  @Test
  @Tag("trial")
  void two_thousand_random_edits_change_one_stretch_and_nothing_else() throws IOException {
    tryEdits(1000, 2000);
  }

  private void tryEdits(int first, int count) throws IOException {
    int refused = 0;
    for (int seed = first; seed < first + count; seed++) {
      refused += isMade(seed) ? 0 : 1;
    }
    assertThat(refused).as("edits refused").isLessThanOrEqualTo(count / 100);
  }

  private boolean isMade(int seed) throws IOException {
    Random random = new Random(seed);
    LaidOut laidOut = new LaidOut(random);
    Map<String, Object> plan = laidOut.plan();
    String yaml = laidOut.yaml(plan);
    assertThat(read(yaml)).as(yaml).isEqualTo(plan);
    String before = yaml.replace("\n", random.nextInt(3) == 0 ? "\r\n" : "\n");
    RandomEdit edit = RandomEdit.of(plan, laidOut, random);
    try {
      String after = edited(before, edit.edit());
      String about = "seed " + seed + ", " + edit.edit() + "\n" + before + "\n-----\n" + after;
      assertThat(read(after)).as(about).isEqualTo(edit.wanted());
      assertStretch(edit.kind(), before, after, about);
      return true;
    } catch (InputException told) {
      assertThat(told.problems()).singleElement().asString().contains("line ");
      return false;
    }
  }

  private String edited(String plan, PlanEdit edit) throws IOException {
    PlanTexts before = PlanTexts.read(Files.writeString(folder.resolve("plan.yaml"), plan));
    List<EditedFile> files = before.with(edit).since(before);
    return files.isEmpty() ? plan : new String(files.get(0).after(), StandardCharsets.UTF_8);
  }

  private static Object read(String yaml) {
    LoadSettings settings = LoadSettings.builder().setSchema(new FailsafeSchema()).build();
    return new Load(settings).loadFromString(yaml.replace("\r\n", "\n"));
  }

  private static void assertStretch(
      RandomEdit.Kind kind, String before, String after, String about) {
    int shorter = Math.min(before.length(), after.length());
    int start = 0;
    while (start < shorter && before.charAt(start) == after.charAt(start)) {
      start++;
    }
    int end = 0;
    while (end < shorter - start
        && before.charAt(before.length() - 1 - end) == after.charAt(after.length() - 1 - end)) {
      end++;
    }
    switch (kind) {
      case ADDS -> assertThat(start + end).as(about).isEqualTo(before.length());
      case REMOVES -> assertThat(start + end).as(about).isEqualTo(after.length());
      case MOVES ->
          assertThat(after.chars().sorted().toArray())
              .as(about)
              .isEqualTo(before.chars().sorted().toArray());
      case REPLACES -> assertThat(comments(after)).as(about).isEqualTo(comments(before));
    }
    assertThat(after.replace("\r\n", "").contains(before.contains("\r") ? "\n" : "\r"))
        .as(about)
        .isFalse();
  }

  private static List<String> comments(String yaml) {
    return Stream.of(yaml.split("\r?\n", -1))
        .filter(line -> line.matches(".*(?:# aside|# a plan|# below).*"))
        .map(String::strip)
        .toList();
  }

  /** Texts that anchors and aliases share: an edit is right to the last value, or refused. */
  @Test
  void random_edits_of_plans_with_anchors_are_right_or_refused_with_their_line()
      throws IOException {
    PlanPath panels = PlanPath.ROOT.key("panels");
    int made = 0;
    for (int seed = 0; seed < 200; seed++) {
      Random random = new Random(seed);
      String before = new MangledPlan(random).text();
      List<Object> wanted = panels(before);
      int index = random.nextInt(wanted.size());
      PlanEdit edit =
          switch (random.nextInt(3)) {
            case 0 -> {
              wanted.add(index, Map.of("panel", "new"));
              yield new TreeEdit.Insert(panels.item(index), Values.keyed("panel", "new"));
            }
            case 1 -> {
              wanted.remove(index);
              yield new TreeEdit.Remove(panels.item(index));
            }
            default -> {
              wanted.add(0, wanted.remove(index));
              yield new TreeEdit.Move(panels.item(index), 0);
            }
          };
      try {
        String after = edited(before, edit);
        made++;
        assertThat(panels(after)).as(before + "\n-----\n" + after).isEqualTo(wanted);
      } catch (InputException told) {
        assertThat(told.problems()).singleElement().asString().contains("line ");
      }
    }
    assertThat(made).isGreaterThan(150);
  }

  private static List<Object> panels(String yaml) {
    Map<?, ?> plan = (Map<?, ?>) new Load(LoadSettings.builder().build()).loadFromString(yaml);
    return new ArrayList<>((List<?>) Objects.requireNonNull(plan.get("panels")));
  }
}
