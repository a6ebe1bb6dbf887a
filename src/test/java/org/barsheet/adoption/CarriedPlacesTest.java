package org.barsheet.adoption;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.barsheet.adoption.ComposedScore.ComposedBar;
import org.barsheet.changes.LaidFilm;
import org.barsheet.film.FilmSheet;
import org.barsheet.production.Production;
import org.barsheet.production.Progress;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What becomes of each kind of place when twenty bars of invented music are revised. */
class CarriedPlacesTest {

  private static final int BARS = 20;

  /** The bars, counted from 0, that hold the motif, and the part that plays it. */
  private static final int[][] MOTIFS = {{2, 0}, {6, 1}, {12, 0}};

  @TempDir private Path folder;

  private static ComposedScore score() {
    Random random = new Random(8);
    List<ComposedBar> bars = new ArrayList<>();
    for (int i = 0; i < BARS; i++) {
      bars.add(bar(random, i));
    }
    return new ComposedScore(bars);
  }

  private static ComposedBar bar(Random random, int id) {
    List<List<int[]>> parts = new ArrayList<>();
    for (int part = 0; part < ComposedScore.PARTS; part++) {
      List<int[]> notes = new ArrayList<>();
      for (int eighth = 0; eighth < 8; eighth += 2) {
        notes.add(new int[] {eighth, 40 + 12 * part + random.nextInt(11)});
      }
      parts.add(notes);
    }
    for (int[] motif : MOTIFS) {
      if (motif[0] == id) {
        parts.set(motif[1], List.of(ComposedScore.MOTIF));
      }
    }
    return new ComposedBar(id, id, parts, id == 9 ? "B" : "");
  }

  private static ComposedScore inserted(int before, int count) {
    Random random = new Random(80);
    List<ComposedBar> bars = new ArrayList<>(score().bars());
    for (int i = 0; i < count; i++) {
      bars.add(before, bar(random, 100 + i));
    }
    return new ComposedScore(bars);
  }

  private static ComposedScore without(int from, int to) {
    List<ComposedBar> bars = new ArrayList<>(score().bars());
    bars.subList(from, to).clear();
    return new ComposedScore(bars);
  }

  private static ComposedScore with(int index, ComposedBar bar) {
    List<ComposedBar> bars = new ArrayList<>(score().bars());
    bars.set(index, bar);
    return new ComposedScore(bars);
  }

  /** What is told, a line a place, of a plan with these panels. */
  private List<String> carried(ComposedScore now, String panels) throws IOException {
    return carried(now, "notes: \"C5/4 E5/8 D5/8 G5/4 B4/4\"", "", panels, false);
  }

  private List<String> carried(
      ComposedScore now, String motif, String more, String panels, boolean timecodes)
      throws IOException {
    score().write(folder.resolve("old.mid"));
    now.write(folder.resolve("new.mid"));
    Path plan =
        Files.writeString(
            folder.resolve("plan.yaml"),
            "title: Quay\nscore: old.mid\nfilm: {frame-rate: 24, music-starts: 2 s}\n"
                + ("motifs: {glimmer: {" + motif + "}}\n" + more)
                + ("panels:\n- {panel: 1}\n" + panels));
    FilmSheet film = Production.film(plan, folder.resolve("none"), Progress.SILENT);
    LaidFilm laid = film.laidDown();
    return Adoption.of(
            film.plan(),
            laid,
            laid.music().orElseThrow(),
            asked -> Production.music(folder.resolve("new.mid"), asked),
            timecodes,
            false)
        .carried()
        .stream()
        .map(CarriedPlacesTest::line)
        .toList();
  }

  private static String line(Carried one) {
    String what = one.of() + ": " + one.before();
    return one.isAsked()
        ? what + "? " + one.question() + " " + one.nearest()
        : what + " → " + one.now() + (one.otherNotes() ? ", other notes" : "");
  }

  @Test
  void a_return_keeps_its_kind_of_name() throws IOException {
    assertThat(
            carried(
                inserted(1, 2),
                """
                - {panel: 2, cue: glimmer 1}
                - {panel: 3, cue: glimmer near bar 6}
                - {panel: 4, cue: glimmer in Part A near bar 14}
                """))
        .containsExactly(
            "panel 2 cue: glimmer 1 → glimmer 1",
            "panel 3 cue: glimmer near bar 6 → glimmer near bar 8",
            "panel 4 cue: glimmer in Part A near bar 14 → glimmer in Part A near bar 14");
  }

  @Test
  void a_number_counts_a_return_that_came_before_it() throws IOException {
    ComposedBar first = score().bars().get(0);
    ComposedBar sounding =
        new ComposedBar(
            0,
            0,
            List.of(List.of(ComposedScore.MOTIF), first.notes().get(1), first.notes().get(2)),
            "");
    assertThat(carried(with(0, sounding), "- {panel: 2, cue: glimmer 2}\n"))
        .containsExactly("panel 2 cue: glimmer 2 → glimmer 3");
  }

  @Test
  void a_return_that_is_gone_is_asked_about_with_the_nearest_that_are_left() throws IOException {
    assertThat(carried(without(6, 7), "- {panel: 2, cue: glimmer 2}\n"))
        .containsExactly(
            "panel 2 cue: glimmer 2? glimmer 2, bar 7 is gone"
                + " [glimmer 1 (bar 3), glimmer 2 (bar 12)]");
  }

  @Test
  void a_bar_in_a_block_that_is_played_twice_now_is_asked_about() throws IOException {
    List<ComposedBar> bars = new ArrayList<>(score().bars());
    bars.addAll(6, score().bars().subList(4, 6));
    assertThat(carried(new ComposedScore(bars), "- {panel: 2, cue: bar 5 beat 2}\n"))
        .singleElement()
        .asString()
        .contains("panel 2 cue: bar 5 beat 2?")
        .contains("[bar 5 beat 2, bar 7 beat 2]");
  }

  @Test
  void a_mark_that_has_another_name_is_renamed_and_one_that_went_becomes_its_bar()
      throws IOException {
    ComposedBar marked = score().bars().get(9);
    String panels = "- {panel: 2, cue: mark B}\n";
    assertThat(carried(with(9, new ComposedBar(9, 9, marked.notes(), "Quay")), panels))
        .containsExactly("panel 2 cue: mark B → mark Quay");
    assertThat(carried(with(9, new ComposedBar(9, 9, marked.notes(), "")), panels))
        .containsExactly("panel 2 cue: mark B → bar 10");
  }

  @Test
  void a_place_counted_into_a_panel_counts_the_bars_that_came_between() throws IOException {
    String panels =
        "- {panel: 2, cue: bar 4, cut: bar 4}\n- {panel: 3, cue: 5 bars into panel 2}\n";
    assertThat(carried(inserted(1, 3), panels))
        .contains("panel 3 cue: 5 bars into panel 2 → 5 bars into panel 2");
    assertThat(carried(inserted(6, 3), panels))
        .contains("panel 3 cue: 5 bars into panel 2 → 8 bars into panel 2");
  }

  @Test
  void a_timecode_stays_unless_it_is_asked_to_follow() throws IOException {
    String notes = "notes: \"C5/4 E5/8 D5/8 G5/4 B4/4\"";
    // Bar 6 begins 10 s after the music, which begins 2 s after the film.
    String panels = "- {panel: 2, cue: \"01:00:12:00\"}\n";
    assertThat(carried(inserted(1, 2), notes, "", panels, false))
        .containsExactly("panel 2 cue: 01:00:12:00 → 01:00:12:00");
    assertThat(carried(inserted(1, 2), notes, "", panels, true))
        .containsExactly("panel 2 cue: 01:00:12:00 → 01:00:16:00");
  }

  @Test
  void pinned_bars_keep_their_seconds() throws IOException {
    String pins = "music: {pins: [{bar: 1, at: 0 s}, {bar: 11, at: 20 s}]}\n";
    assertThat(
            carried(
                inserted(4, 2),
                "notes: \"C5/4 E5/8 D5/8 G5/4 B4/4\"",
                pins,
                "- {panel: 2, cue: bar 5}\n",
                false))
        .containsExactly("pin 0 s: 1 → 1", "pin 20 s: 11 → 13", "panel 2 cue: bar 5 → bar 7");
  }

  @Test
  void a_motif_is_heard_where_its_notes_are_now() throws IOException {
    String heard = "heard-at: {place: bar 3, length: 1 bar, part: Part A}";
    String panels = "- {panel: 2, cue: glimmer 2}\n";
    assertThat(carried(inserted(1, 2), heard, "", panels, false))
        .containsExactly(
            "motif glimmer heard-at: bar 3 → bar 5", "panel 2 cue: glimmer 2 → glimmer 2");
    assertThat(carried(without(2, 3), heard, "", panels, false))
        .containsExactly(
            "motif glimmer heard-at: bar 3 → bar 6",
            "motif glimmer part: Part A → Part B",
            "panel 2 cue: glimmer 2 → glimmer 1");
  }

  @Test
  void a_motif_that_another_part_plays_now_is_heard_in_that_part() throws IOException {
    ComposedBar bar = score().bars().get(2);
    ComposedBar other =
        new ComposedBar(
            2,
            2,
            List.of(bar.notes().get(1), bar.notes().get(2), List.of(ComposedScore.MOTIF)),
            "");
    assertThat(
            carried(
                with(2, other),
                "heard-at: {place: bar 3, length: 1 bar, part: Part A}",
                "",
                "- {panel: 2, cue: glimmer 1}\n",
                false))
        .contains("motif glimmer part: Part A → Part C", "panel 2 cue: glimmer 1 → glimmer 1");
  }

  @Test
  void a_motif_whose_notes_are_nowhere_is_asked_about_with_all_its_places() throws IOException {
    List<ComposedBar> bars = new ArrayList<>(score().bars());
    bars.removeIf(bar -> bar.id() == 2 || bar.id() == 6 || bar.id() == 12);
    assertThat(
            carried(
                new ComposedScore(bars),
                "heard-at: {place: bar 3, length: 1 bar, part: Part A}",
                "",
                "- {panel: 2, cue: glimmer 1}\n",
                false))
        .containsExactly(
            "motif glimmer heard-at: bar 3? the new score doesn't play the notes of glimmer"
                + " [bar 2, bar 3]",
            "panel 2 cue: glimmer 1? the new score doesn't play the notes of glimmer []");
  }
}
