package org.barsheet.desk;

import static org.assertj.core.api.Assertions.assertThat;

import com.google.gson.JsonArray;
import com.google.gson.JsonElement;
import com.google.gson.JsonObject;
import com.google.gson.JsonParser;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What windows ask of the desk, and what becomes of the plan's text. */
class DeskEditsTest {

  @TempDir Path folder = Path.of("");
  private Path plan = Path.of("");
  private String before = "";
  private OpenDesk desk = new OpenDesk(Path.of("none"));

  @BeforeEach
  void open() throws IOException {
    plan = OpenDesk.smallPlan(folder);
    before = Files.readString(plan);
    desk = new OpenDesk(plan);
  }

  @AfterEach
  void close() {
    desk.close();
  }

  private JsonObject ask(String word, String body) throws IOException, InterruptedException {
    return JsonParser.parseString(desk.order(word, body)).getAsJsonObject();
  }

  private static String put(int panel, String cue) {
    return "{\"edits\":[{\"put\":[\"panels\",%d,\"cue\"],\"value\":\"%s\"}]}".formatted(panel, cue);
  }

  private JsonObject state() throws IOException, InterruptedException {
    return JsonParser.parseString(desk.get("/.desk/state").body())
        .getAsJsonObject()
        .getAsJsonObject("desk");
  }

  @Test
  void an_edit_changes_one_value_says_what_moved_and_is_undone_to_the_byte() throws Exception {
    JsonObject told = ask("do", put(1, "bar 12"));
    assertThat(told.getAsJsonArray("moved").get(0).getAsString())
        .isEqualTo("panel 2 is now on bar 12 and begins 180 frames later; it was on bar 9");
    assertThat(plan).hasContent(before.replace("cue: bar 9}", "cue: bar 12}"));
    assertThat(folder.resolve("plan-kept-1.yaml")).hasContent(before);
    assertThat(state().get("undo").getAsBoolean()).isTrue();
    ask("undo", "{}");
    assertThat(plan).hasContent(before);
    ask("redo", "{}");
    assertThat(plan).hasContent(before.replace("cue: bar 9}", "cue: bar 12}"));
  }

  @Test
  void what_is_only_tried_is_told_and_not_written() throws Exception {
    assertThat(ask("try", put(1, "bar 12")).getAsJsonArray("moved")).hasSize(1);
    JsonObject named =
        ask(
            "try",
            """
            {"motif": "wave", "edits": [{"put": ["motifs", "wave", "heard-at"],
             "value": {"place": "bar 1", "length": "2 bars", "part": "Cello"}}]}
            """);
    assertThat(named.getAsJsonArray("returns")).isNotEmpty();
    assertThat(plan).hasContent(before);
    assertThat(folder.resolve("plan-kept-1.yaml")).doesNotExist();
  }

  @Test
  void an_impossible_place_is_refused_and_every_fix_offered_frees_it() throws Exception {
    JsonObject refused = ask("do", put(1, "bar 25"));
    assertThat(plan).hasContent(before);
    JsonObject problem = refused.getAsJsonArray("refused").get(0).getAsJsonObject();
    assertThat(problem.get("sentence").getAsString()).contains("don't both fit");
    JsonArray fixes = problem.getAsJsonArray("fixes");
    assertThat(fixes).isNotEmpty();
    for (JsonElement fix : fixes) {
      JsonArray edits = new JsonArray();
      edits.addAll(
          JsonParser.parseString(put(1, "bar 25")).getAsJsonObject().getAsJsonArray("edits"));
      edits.addAll(fix.getAsJsonObject().getAsJsonArray("edits"));
      JsonObject both = new JsonObject();
      both.add("edits", edits);
      assertThat(ask("try", both.toString()).has("moved")).as(fix.toString()).isTrue();
    }
  }

  @Test
  void a_plan_that_is_impossible_when_opened_shows_its_fixes_and_takes_them(@TempDir Path other)
      throws Exception {
    Path own = OpenDesk.smallPlan(other);
    Files.writeString(own, before.replace("cue: bar 9}", "cue: bar 25}"));
    try (OpenDesk live = new OpenDesk(own)) {
      String page = live.get("/").body();
      Matcher fix = Pattern.compile("data-edits=\"([^\"]+)\"").matcher(page);
      assertThat(page).contains("can't be laid yet");
      assertThat(fix.find()).as("a fix as a button").isTrue();
      String edits = fix.group(1).replace("&quot;", "\"").replace("&#34;", "\"");
      assertThat(live.order("do", "{\"edits\":" + edits + "}")).contains("\"moved\"");
      assertThat(live.get("/").body()).contains("id=\"film\"");
      assertThat(live.faults()).isEmpty();
    }
  }

  @Test
  void panels_are_split_and_joined_and_a_motif_gets_another_name_everywhere() throws Exception {
    ask(
        "do",
        """
        {"edits": [{"split": "1", "second": "1a", "cue": "bar 5"},
         {"name": "motif", "before": "glimmer", "now": "spark"}]}
        """);
    assertThat(Files.readString(plan))
        .contains("spark: {heard-at", "cue: spark near bar 19", "panel: 1a", "cue: bar 5");
    ask("do", "{\"edits\":[{\"join\":\"1\"}]}");
    assertThat(Files.readString(plan)).doesNotContain("1a");
    assertThat(ask("do", "{\"edits\":[{\"join\":\"3\"}]}").toString())
        .contains("no panel comes after panel 3");
  }

  @Test
  void a_window_that_has_not_seen_the_last_change_is_asked_which_of_the_two_counts()
      throws Exception {
    long seen = state().get("version").getAsLong();
    ask("do", put(1, "bar 12"));
    String mine = put(1, "bar 10").replaceFirst("\\{", "{\"version\": " + seen + ",");
    JsonObject asked = ask("do", mine).getAsJsonArray("asked").get(0).getAsJsonObject();
    assertThat(asked.get("mine").getAsString()).isEqualTo("bar 10");
    assertThat(asked.get("theirs").getAsString()).isEqualTo("bar 12");
    String other = put(2, "glimmer near bar 21").replaceFirst("\\{", "{\"version\": " + seen + ",");
    assertThat(ask("do", other).has("moved")).as("another place is no question").isTrue();
    assertThat(plan)
        .hasContent(
            before.replace("cue: bar 9}", "cue: bar 12}").replace("near bar 19", "near bar 21"));
  }

  @Test
  void figures_nobody_named_are_offered_as_lines_for_the_plan() throws Exception {
    JsonArray figures = ask("figures", "{}").getAsJsonArray("figures");
    assertThat(figures).isNotEmpty();
    String notes = figures.get(0).getAsJsonObject().get("notes").getAsString();
    String body =
        "{\"edits\":[{\"put\":[\"motifs\",\"second\"],\"value\":{\"notes\":\"%s\"}}]}"
            .formatted(notes);
    assertThat(ask("do", body).has("moved")).isTrue();
    assertThat(Files.readString(plan)).contains("second:").contains(notes);
  }

  @Test
  void nonsense_is_refused_in_words() throws Exception {
    for (String body : new String[] {"", "[]", "{\"edits\":3}", "{\"edits\":[{}]}", "null"}) {
      assertThat(ask("do", body).toString()).contains("the desk doesn't understand this order");
    }
    assertThat(ask("do", "{\"edits\":[{\"move\":[\"panels\",77],\"to\":1}]}").toString())
        .contains("refused");
    assertThat(plan).hasContent(before);
  }

  @Test
  void a_drawing_dropped_on_the_page_is_kept_beside_the_plan_and_replaces_none() throws Exception {
    for (String image : new String[] {"one", "two", "one"}) {
      desk.post("/.desk/drawing/my%20lamp.png", image);
    }
    assertThat(folder.resolve("drawings/my lamp.png")).hasContent("one");
    assertThat(folder.resolve("drawings/my lamp-2.png")).hasContent("two");
    assertThat(folder.resolve("drawings/my lamp-3.png")).doesNotExist();
    for (String name : new String[] {"..%2Fplan.yaml", "x%2F..%2Fy.png", "plan.yaml", ".png", ""}) {
      assertThat(desk.post("/.desk/drawing/" + name, "x").body()).contains("refused");
    }
    assertThat(folder.toFile().list())
        .containsExactlyInAnyOrder("plan.yaml", "quay.mid", "drawings");
  }
}
