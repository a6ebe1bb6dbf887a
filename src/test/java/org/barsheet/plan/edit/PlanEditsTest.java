package org.barsheet.plan.edit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.io.IOException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.regex.Pattern;
import org.barsheet.input.InputException;
import org.barsheet.plan.read.PlanSource;
import org.barsheet.plan.source.Entry;
import org.barsheet.plan.source.PlanReading;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** A changed text of a plan in YAML: that text only, read back as asked. */
class PlanEditsTest {

  private static final PlanPath CUE = PlanPath.ROOT.key("panels").item(0).key("cue");
  private static final PlanPath CUT = PlanPath.ROOT.key("panels").item(0).key("cut");

  private static final List<String> NEW_VALUES =
      List.of("glimmer 4", "bar 16", "mark B", "mark C: the end", "mark it's", "mark #2", "é, 😀");

  @TempDir private Path folder;

  private String edited(String plan, Edit... edits) throws IOException {
    Path file = Files.writeString(folder.resolve("plan.yaml"), plan);
    List<EditedFile> files = PlanEdits.of(file, List.of(edits));
    assertThat(files).hasSize(1);
    assertThat(files.get(0).isBefore(Files.readAllBytes(file))).isTrue();
    return new String(files.get(0).after(), StandardCharsets.UTF_8);
  }

  @ParameterizedTest
  @CsvSource(
      quoteCharacter = '`',
      delimiter = '|',
      value = {
        "cue: glimmer 3   # the baker|cue: glimmer 4   # the baker",
        "cue: 'glimmer 3'|cue: 'glimmer 4'",
        "cue: \"glimmer 3\"|cue: \"glimmer 4\"",
        "cue: \"glimmer\\x203\" # x|cue: \"glimmer 4\" # x",
        "cue:|cue: glimmer 4",
        "cue: # none yet|cue: glimmer 4 # none yet",
        "cue: !!str glimmer 3|cue: !!str glimmer 4",
        "\"cue\" : glimmer 3|\"cue\" : glimmer 4",
      })
  void a_text_is_written_as_the_one_before_was(String line, String changed) throws IOException {
    String before = "panels:\n- panel: 1\n  " + line + "\n  action: dawn\n";
    assertThat(edited(before, new Edit(CUE, "glimmer 4")))
        .isEqualTo("panels:\n- panel: 1\n  " + changed + "\n  action: dawn\n");
  }

  @Test
  void a_text_is_quoted_where_yaml_would_read_another() throws IOException {
    String plan = "panels: [{cue: mark A, cut: 'x'}]";
    assertThat(edited(plan, new Edit(CUE, "mark B, C"), new Edit(CUT, "it's")))
        .isEqualTo("panels: [{cue: \"mark B, C\", cut: 'it''s'}]");
  }

  @Test
  void a_text_over_several_lines_becomes_one_line_and_what_follows_stays() throws IOException {
    String plan = "panels:\n- cue: | # why\n    glimmer\n    3\n\n  # aside\n  cut: bar\n    12\n";
    assertThat(edited(plan, new Edit(CUE, "glimmer 4"), new Edit(CUT, "bar 16")))
        .isEqualTo("panels:\n- cue: glimmer 4 # why\n\n  # aside\n  cut: bar 16\n");
  }

  @Test
  void an_alias_gives_way_where_it_alone_changes_and_an_anchor_nobody_needs_goes()
      throws IOException {
    String plan = "title: &x bar 3\npanels: [{cue: *x, cut: *x }]\n";
    assertThat(edited(plan, new Edit(CUE, "bar 4")))
        .isEqualTo("title: &x bar 3\npanels: [{cue: bar 4, cut: *x }]\n");
    assertThat(edited(plan, new Edit(CUE, "bar 4"), new Edit(CUT, "bar 5")))
        .isEqualTo("title: bar 3\npanels: [{cue: bar 4, cut: bar 5 }]\n");
  }

  @Test
  void an_anchor_that_changes_leaves_its_aliases_what_they_were_unless_they_change_alike()
      throws IOException {
    String plan = "title: &x bar 3\npanels: [{cue: *x, cut: *x }]\n";
    PlanPath title = PlanPath.ROOT.key("title");
    assertThat(edited(plan, new Edit(title, "bar 4")))
        .isEqualTo("title: bar 4\npanels: [{cue: bar 3, cut: bar 3 }]\n");
    assertThat(edited(plan, new Edit(title, "bar 4"), new Edit(CUT, "bar 4")))
        .isEqualTo("title: &x bar 4\npanels: [{cue: bar 3, cut: *x }]\n");
  }

  @Test
  void a_text_in_a_repeated_table_changes_only_if_all_of_it_changes() throws IOException {
    String plan = "panels:\n- &p {cue: bar 3}\n- *p\n";
    PlanPath second = PlanPath.ROOT.key("panels").item(1).key("cue");
    assertThat(edited(plan, new Edit(CUE, "bar 4"), new Edit(second, "bar 4")))
        .isEqualTo("panels:\n- &p {cue: bar 4}\n- *p\n");
    InputException refused =
        catchThrowableOfType(InputException.class, () -> edited(plan, new Edit(CUE, "bar 4")));
    assertThat(refused.problems()).singleElement().asString().contains("line 2").contains("alias");
  }

  @Test
  void the_only_item_of_a_list_may_be_written_without_its_dash() throws IOException {
    assertThat(edited("panels: {cue: bar 3}", new Edit(CUE, "bar 4")))
        .isEqualTo("panels: {cue: bar 4}");
  }

  @Test
  void a_key_that_is_not_there_is_put_behind_the_others() throws IOException {
    Edit length = new Edit(PlanPath.ROOT.key("panels").item(0).key("length"), "4 bars");
    assertThat(edited("panels:\r\n  - panel: 1 # one\r\n    # aside\r\n  - panel: 2\r\n", length))
        .isEqualTo(
            String.join(
                "\r\n",
                "panels:",
                "  - panel: 1 # one",
                "    length: 4 bars",
                "    # aside",
                "  - panel: 2",
                ""));
    assertThat(edited("panels: [{panel: 1, }, {}]", length))
        .isEqualTo("panels: [{panel: 1, length: 4 bars, }, {}]");
    assertThat(edited("title: x", new Edit(PlanPath.ROOT.key("score"), "a, b.mid")))
        .isEqualTo("title: x\nscore: a, b.mid");
  }

  @Test
  void a_key_is_taken_out_with_its_value_and_its_line() throws IOException {
    Edit cut = Edit.without(CUT);
    assertThat(edited("panels:\n- cue: x\n  cut:\n    a\n    b # c\n  action: y\n", cut))
        .isEqualTo("panels:\n- cue: x\n  action: y\n");
    assertThat(edited("panels:\n- cut: x\n  cue: y\n", cut)).isEqualTo("panels:\n- cue: y\n");
    assertThat(edited("panels: [{cue: x, cut: y }]", cut)).isEqualTo("panels: [{cue: x }]");
    assertThat(edited("panels: [{cut: y}]", cut)).isEqualTo("panels: [{}]");
    InputException refused =
        catchThrowableOfType(InputException.class, () -> edited("panels:\n- cut: y\n", cut));
    assertThat(refused.problems()).singleElement().asString().contains("only key");
  }

  @Test
  void a_key_that_is_put_and_taken_out_again_leaves_every_byte_of_random_layouts()
      throws IOException {
    Path file = folder.resolve("plan.yaml");
    for (int seed = 0; seed < 150; seed++) {
      String text =
          new MangledPlan(new Random(seed)).text().replace("\n", seed % 2 == 0 ? "\n" : "\r\n");
      Files.writeString(file, text);
      PlanPath key = PlanPath.ROOT.key("panels").item(0).key("length");
      byte[] put = PlanEdits.of(file, List.of(new Edit(key, "4 bars"))).get(0).after();
      Files.write(file, put);
      assertThat(key.textIn(PlanSource.read(new PlanReading(file)))).isPresent();
      byte[] again = PlanEdits.of(file, List.of(Edit.without(key))).get(0).after();
      assertThat(new String(again, StandardCharsets.UTF_8)).isEqualTo(text);
    }
  }

  /** Line ends, byte order marks and encodings that editors write. */
  @ParameterizedTest
  @ValueSource(strings = {"UTF-8", "UTF-16LE", "UTF-16BE"})
  void random_layouts_keep_every_byte_outside_the_changed_texts(String encoding)
      throws IOException {
    for (int seed = 0; seed < 150; seed++) {
      Random random = new Random(seed);
      MangledPlan plan = new MangledPlan(random);
      String mark = encoding.equals("UTF-8") && random.nextBoolean() ? "" : "\uFEFF";
      String lineEnd = List.of("\n", "\r\n", "\r").get(random.nextInt(3));
      Map<PlanPath, String> now = new HashMap<>();
      for (MangledPlan.Text text : plan.texts()) {
        if (random.nextInt(3) == 0) {
          now.put(text.at(), NEW_VALUES.get(random.nextInt(NEW_VALUES.size())));
        }
      }
      if (!now.isEmpty()) {
        assertOnlyTheseChange(plan, mark, lineEnd, Charset.forName(encoding), now);
      }
    }
  }

  private void assertOnlyTheseChange(
      MangledPlan plan, String mark, String lineEnd, Charset charset, Map<PlanPath, String> now)
      throws IOException {
    Path file = folder.resolve("plan.yaml");
    byte[] bytes = (mark + plan.text().replace("\n", lineEnd)).getBytes(charset);
    Files.write(file, bytes);
    List<Edit> edits =
        now.entrySet().stream().map(one -> new Edit(one.getKey(), one.getValue())).toList();
    byte[] after = PlanEdits.of(file, edits).get(0).after();
    Files.write(file, after);
    Entry read = PlanSource.read(new PlanReading(file));
    for (MangledPlan.Text text : plan.texts()) {
      assertThat(text.at().textIn(read).orElseThrow().text())
          .as("%s in%n%s", text.at(), plan.text())
          .isEqualTo(now.getOrDefault(text.at(), text.value()));
    }
    assertOutsideIsSame(mark, plan, lineEnd, new String(after, charset), now.keySet());
  }

  private static void assertOutsideIsSame(
      String mark, MangledPlan plan, String lineEnd, String after, Set<PlanPath> changed) {
    Set<Integer> groups = new HashSet<>();
    plan.texts().stream()
        .filter(text -> text.shared() >= 0 && changed.contains(text.at()))
        .forEach(text -> groups.add(text.shared()));
    StringBuilder expected = new StringBuilder(Pattern.quote(mark));
    int from = 0;
    for (MangledPlan.Text text : plan.texts()) {
      if (changed.contains(text.at()) || groups.contains(text.shared())) {
        String outside = plan.text().substring(from, text.from()).replace("\n", lineEnd);
        String own = plan.text().substring(text.from(), text.to()).replace("\n", lineEnd);
        String anchorless = Pattern.quote(own.replaceFirst("^&a\\d+ +", ""));
        expected.append(Pattern.quote(outside));
        expected.append(changed.contains(text.at()) ? "(?:" : "(?:" + anchorless + "|");
        expected.append("[^\r\n]*)");
        from = text.to();
      }
    }
    expected.append(Pattern.quote(plan.text().substring(from).replace("\n", lineEnd)));
    assertThat(after).as(plan.text()).matches(expected.toString());
  }
}
