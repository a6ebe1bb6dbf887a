package org.barsheet.plan.read;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import org.apache.commons.numbers.fraction.BigFraction;
import org.barsheet.clock.FrameRate;
import org.barsheet.clock.Seconds;
import org.barsheet.clock.Timecode;
import org.barsheet.motif.Accent;
import org.barsheet.motif.Form;
import org.barsheet.motif.Match;
import org.barsheet.plan.Artwork;
import org.barsheet.plan.Camera;
import org.barsheet.plan.Delivery;
import org.barsheet.plan.Field;
import org.barsheet.plan.Film;
import org.barsheet.plan.Hand;
import org.barsheet.plan.Length;
import org.barsheet.plan.MotifRequest;
import org.barsheet.plan.Opening;
import org.barsheet.plan.Panel;
import org.barsheet.plan.Performer;
import org.barsheet.plan.Place;
import org.barsheet.plan.Plan;
import org.barsheet.plan.Recording;
import org.barsheet.plan.Rect;
import org.barsheet.plan.Reveal;
import org.barsheet.plan.SentClip;
import org.barsheet.plan.SentClips;
import org.barsheet.plan.Slow;
import org.barsheet.plan.Where;
import org.barsheet.plan.source.PlanKey;
import org.barsheet.plan.source.PlanKeys;
import org.barsheet.pulse.TempoRequest;
import org.barsheet.score.Meter;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PlanReaderTest {

  private static final String LEAST = "title: Quay\nscore: quay.mid\nfilm: {frame-rate: 24}\n";

  @TempDir private Path folder;

  private Plan read(String text) throws IOException {
    Path file = folder.resolve("plan.yaml");
    Files.writeString(file, text);
    return PlanReader.read(file);
  }

  private Plan wholeSchema() throws IOException {
    try (InputStream in = Plan.class.getResourceAsStream("whole-schema.yaml")) {
      byte[] bytes = Objects.requireNonNull(in).readAllBytes();
      return read(new String(bytes, StandardCharsets.UTF_8));
    }
  }

  @Test
  void title_score_and_frame_rate_are_enough_and_the_rest_has_defaults() throws IOException {
    Plan plan = read(LEAST);
    assertThat(plan.title()).isEqualTo("Quay");
    assertThat(plan.music().score()).isEqualTo(folder.resolve("quay.mid"));
    assertThat(plan.film())
        .isEqualTo(
            new Film(
                FrameRate.FPS_24,
                new Timecode(FrameRate.FPS_24, 1, 0, 0, 0),
                Seconds.ZERO,
                Film.MusicFrom.START_OF_FILE,
                2,
                0,
                12,
                Seconds.ZERO,
                1920,
                1080,
                Optional.of(Film.USUAL_POP),
                Film.Paper.A4));
    assertThat(plan.music().tempo()).isEqualTo(TempoRequest.DEFAULT);
    assertThat(plan.workshop().artwork())
        .isEqualTo(
            new Artwork(
                25.4, 24, 13.5, List.of(), 0, List.of(new Artwork.Model("artwork", 1, "", ""))));
    assertThat(plan.text().given()).containsExactly("film", "film.frame-rate", "score", "title");
    assertThat(plan.panels()).isEmpty();
  }

  @Test
  void a_panel_and_a_reveal_have_defaults_too() throws IOException {
    Plan plan =
        read(
            LEAST
                + """
                motifs: {glimmer: {notes: C5/4 E5/4}}
                openings: {lamp: {left: 1, top: 1, width: 2, height: 2, iris: 100 %}}
                panels: [{panel: 1, cue: glimmer, reveals: [{opening: lamp, photographs: 9}]}]
                """);
    assertThat(plan.motifs().get(0).match()).isEqualTo(Match.TONAL);
    assertThat(plan.motifs().get(0).accent()).isEqualTo(Accent.FIRST);
    assertThat(plan.workshop().hand()).isEqualTo(Hand.DEFAULT);
    assertThat(plan.workshop().openings().get(0).model()).isEqualTo("artwork");
    Panel panel = plan.panels().get(0);
    assertThat(panel.cut()).isEqualTo(new Panel.AutoCut());
    assertThat(panel.length()).isEmpty();
    Reveal reveal = panel.reveals().get(0);
    assertThat(reveal.framesPerPhotograph()).isEqualTo(2);
    assertThat(reveal.slow()).isEqualTo(Slow.NONE);
    assertThat(reveal.lands()).isEqualTo(Reveal.Lands.FULLY_OPEN);
    assertThat(reveal.landsOn()).isEqualTo(new Reveal.OnAccent());
    assertThat(plan.text().given())
        .contains("panels.1.cue", "panels.1.reveals.1.photographs", "motifs.glimmer.notes")
        .doesNotContain("panels.1.cut", "panels.1.reveals.1.slow");
  }

  @Test
  void settings_of_the_film_and_the_music_are_read() throws IOException {
    Plan plan = wholeSchema();
    assertThat(plan.film())
        .isEqualTo(
            new Film(
                FrameRate.FPS_29_97_DF,
                new Timecode(FrameRate.FPS_29_97_DF, 1, 0, 0, 0),
                Seconds.of(2),
                Film.MusicFrom.FIRST_NOTE,
                3,
                -1,
                10,
                Seconds.of(3, 2),
                1920,
                1080,
                Optional.of(Seconds.of(3)),
                Film.Paper.LETTER));
    assertThat(plan.music().tempo())
        .isEqualTo(
            new TempoRequest(
                TempoRequest.Mode.PLAYED,
                1,
                TempoRequest.Pickup.YES,
                Optional.of("1-16, 9-15, 17-40"),
                List.of(
                    new TempoRequest.Pin(1, Seconds.of(13, 25)),
                    new TempoRequest.Pin(33, Seconds.of(1526, 25))),
                Optional.of(new Meter(6, 8)),
                Optional.of(BigFraction.of(96)),
                Optional.of(BigFraction.of(3, 2))));
    Recording recording = plan.music().recording().orElseThrow();
    assertThat(recording.file()).isEqualTo(folder.resolve("mixes/harbour.wav"));
    assertThat(recording.starts()).contains(FrameRate.FPS_29_97_DF.startOf(-15));
  }

  @ParameterizedTest
  @CsvSource({
    "-0.5 s, 3/2",
    "12 f, 5/2",
    "01:00:03:12, 7/2",
  })
  void a_recording_begins_so_long_after_the_music_or_at_a_timecode(String starts, String inFilm)
      throws IOException {
    String film = "title: Quay\nscore: quay.mid\nfilm: {frame-rate: 24, music-starts: 2 s}\n";
    Plan plan = read(film + "music: {recording: a.wav, recording-starts: '" + starts + "'}\n");
    assertThat(plan.music().recording().orElseThrow().starts())
        .hasToString("Optional[" + inFilm + "]");
  }

  @Test
  void a_recording_without_a_start_begins_with_the_score() throws IOException {
    Plan plan = read(LEAST + "music: {recording: a.wav}\n");
    assertThat(plan.music().recording().orElseThrow().starts()).isEmpty();
  }

  @Test
  void a_sent_clip_begins_so_long_after_the_music_or_at_a_timecode() throws IOException {
    String least = "title: Quay\nscore: quay.mid\nperformers: {cello: {}}\n";
    String film = "film: {frame-rate: 24, first-frame: '01:00:00:00', music-starts: 2 s}\n";
    String clip = "clips: {cello: {file: a.wav, start: '00:59:52:00'}}\n";
    assertThat(read(least + film + clip).clips().told().get(0).start()).contains(Seconds.of(-10));
  }

  @Test
  void a_film_over_midnight_has_timecodes_on_both_sides_of_it() throws IOException {
    String least = "title: Quay\nscore: quay.mid\nperformers: {cello: {}}\n";
    String film = "film: {frame-rate: 24, first-frame: '23:59:30:00'}\n";
    String clip = "clips: {cello: {file: a.wav, start: '00:00:10:00'}}\n";
    assertThat(read(least + film + clip).clips().told().get(0).start()).contains(Seconds.of(40));
  }

  @Test
  void where_performers_send_their_recordings_is_read() throws IOException {
    assertThat(wholeSchema().delivery())
        .isEqualTo(
            new Delivery(
                "Ida at the boathouse, 555 0134",
                "harbor@quay.example",
                Optional.of(LocalDate.of(2026, 2, 13)),
                Optional.of(true)));
    assertThat(wholeSchema().performers().get(0).behind()).isEqualTo("a bare brick wall");
    assertThat(read(LEAST).delivery()).isEqualTo(Delivery.NONE);
  }

  @Test
  void recordings_lie_in_a_folder_or_where_a_table_says() throws IOException {
    SentClips inFolder = read(LEAST + "clips: recordings\n").clips();
    assertThat(inFolder).isEqualTo(SentClips.in(folder.resolve("recordings")));
    SentClips inTable = wholeSchema().clips();
    assertThat(inTable.folder()).isEmpty();
    assertThat(inTable.told())
        .usingRecursiveFieldByFieldElementComparatorIgnoringFields("where")
        .containsExactly(
            new SentClip(
                "cello",
                folder.resolve("recordings/cello take 3.mov"),
                Optional.of(FrameRate.FPS_25),
                Optional.of(Seconds.of(-21, 2)),
                "second take: a door creaks",
                new Where("", "")));
  }

  @Test
  void motifs_are_heard_or_written_and_have_further_shapes() throws IOException {
    Plan plan = wholeSchema();
    MotifRequest glimmer = plan.motifs().get(0);
    assertThat(glimmer.shapes()).hasSize(3);
    assertThat(glimmer.shapes().get(2)).isInstanceOf(MotifRequest.Written.class);
    MotifRequest.HeardAt first = (MotifRequest.HeardAt) glimmer.shapes().get(0);
    assertThat(first.place()).hasToString("bar 3");
    assertThat(first.length()).hasToString("1 bar");
    assertThat(first.part()).isEqualTo("Celesta");
    assertThat(glimmer.accent()).isEqualTo(Accent.LAST);
    assertThat(glimmer.match()).isEqualTo(Match.FREE);
    assertThat(glimmer.forms())
        .containsExactly(
            Form.INVERTED,
            Form.RETROGRADE,
            Form.AUGMENTED,
            Form.DIMINISHED,
            Form.ORNAMENTED,
            Form.SHORTENED);
    assertThat(plan.motifs().get(1).accent()).isEqualTo(new Accent(3));
  }

  @Test
  void words_that_other_yaml_readers_turn_into_something_else_stay_as_typed() throws IOException {
    Plan plan = wholeSchema();
    assertThat(plan.motifs()).extracting(MotifRequest::name).containsExactly("glimmer", "on");
    assertThat(plan.performers()).extracting(Performer::name).containsExactly("cello", "no");
    assertThat(plan.panels()).extracting(Panel::name).containsExactly("1", "1.10", "1e3", "12A");
  }

  @Test
  void openings_move_in_one_of_six_ways() throws IOException {
    assertThat(wholeSchema().workshop().openings())
        .extracting(Opening::motion)
        .containsExactly(
            new Opening.Hinged(Opening.Side.LEFT, 90),
            new Opening.Slides(Opening.Side.RIGHT, 50.8),
            new Opening.LiftsOff(30),
            new Opening.Brightens(80),
            new Opening.Iris(100),
            new Opening.Values(List.of(0.5, 1.0, 2.25), "mm"));
  }

  @Test
  void artwork_camera_rates_of_work_and_performers_are_kept() throws IOException {
    Plan plan = wholeSchema();
    assertThat(plan.workshop().artwork().palette()).containsExactly("28786E", "C8963C", "142850");
    assertThat(plan.workshop().artwork().smallestWorkableMillimeters()).isEqualTo(40);
    assertThat(plan.workshop().artwork().model("small-lamp"))
        .contains(new Artwork.Model("small-lamp", 3, "green", "night"));
    assertThat(plan.workshop().openings().get(1).model()).isEqualTo("quay");
    assertThat(plan.workshop().openings().get(0).heldBy())
        .containsExactly(
            new Opening.Support("putty", Optional.of(25.0), Optional.empty(), "putty up to 25 mm"),
            new Opening.Support(
                "thread",
                Optional.empty(),
                Optional.of(200.0),
                "thread from 200 mm above the hinge"),
            new Opening.Support("tweezers", Optional.empty(), Optional.empty(), "tweezers"));
    assertThat(plan.workshop().camera()).contains(new Camera(50, 36, 6000, 4000));
    assertThat(plan.workshop().shoot().orElseThrow().hoursPerDay()).contains(6.5);
    assertThat(plan.workshop().hand()).isEqualTo(new Hand(1, 0.25, 2, Optional.of(6.0)));
    Performer cello = plan.performers().get(0);
    assertThat(cello.clap()).contains(new Performer.Clap(Seconds.of(-5), 143));
    assertThat(cello.clipHeight()).isEqualTo(1920);
    assertThat(cello.clothes()).containsExactly("28786E");
  }

  @Test
  void panels_are_read_in_story_order_with_everything_in_them() throws IOException {
    List<Panel> panels = wholeSchema().panels();
    Panel second = panels.get(1);
    assertThat(second.action()).isEqualTo("The baker's lamp: lit");
    assertThat(second.cue()).hasToString("glimmer near bar 33");
    assertThat(second.cut()).isEqualTo(new Panel.Before(Length.parse("1 beat")));
    assertThat(second.length()).contains(Length.parse("2..4 bars"));
    assertThat(second.locked()).isTrue();
    Reveal first = second.reveals().get(0);
    assertThat(first.landsOn()).isEqualTo(new Reveal.OnNotes());
    assertThat(first.evenIn()).isEqualTo(Reveal.EvenIn.OPENING);
    assertThat(first.photographed()).isTrue();
    assertThat(second.appears())
        .containsExactly(new Panel.Appears("cello", "lamp-1"), new Panel.Appears("no", "door"));
    assertThat(panels.get(0).drawing()).contains(folder.resolve("panels/01.png"));
    assertThat(panels.get(2).cue()).hasToString("2 bars into panel 1.10");
    assertThat(panels.get(3).cut()).isInstanceOf(Panel.AtPlace.class);
  }

  @Test
  void an_opening_with_values_has_a_photograph_for_each() throws IOException {
    assertThat(wholeSchema().panels().get(1).reveals().get(1).photographs()).isEqualTo(3);
  }

  @Test
  void the_height_of_a_field_follows_from_the_films_photograph() throws IOException {
    List<Panel> panels = wholeSchema().panels();
    Rect whole = new Rect(0, 0, 24, 13.5);
    Rect near = new Rect(1, 4.6, 6, 3.375);
    assertThat(panels)
        .extracting(panel -> panel.field().orElseThrow())
        .containsExactly(
            new Field(whole, whole, Slow.NONE),
            new Field(whole, near, Slow.BOTH),
            new Field(near, near, Slow.NONE),
            new Field(whole, near, Slow.END));
  }

  @Test
  void the_whole_of_an_artwork_of_another_shape_lies_in_the_middle_of_its_field()
      throws IOException {
    Plan plan = read(LEAST + "artwork: {squares: 16x18}\npanels: [{panel: 1, field: whole}]\n");
    assertThat(plan.panels().get(0).field().orElseThrow().from())
        .isEqualTo(new Rect(-8, 0, 32, 18));
  }

  @Test
  void every_key_of_the_whole_schema_counts_as_given() throws IOException {
    Set<String> given = wholeSchema().text().given();
    for (PlanKey key : PlanKeys.FILM) {
      assertThat(given).contains("film." + key.name());
    }
    for (PlanKey key : PlanKeys.PANEL) {
      assertThat(given).contains("panels.1.10." + key.name());
    }
    for (PlanKey key : PlanKeys.REVEAL) {
      assertThat(given).contains("panels.1.10.reveals.1." + key.name());
    }
  }

  @Test
  void a_place_in_the_plan_is_known_for_each_panel() throws IOException {
    Where where = wholeSchema().panels().get(1).where();
    assertThat(where.file()).endsWith("plan.yaml");
    assertThat(where.position()).isEqualTo("line 65, column 5");
  }

  @Test
  void a_key_left_empty_is_as_good_as_left_out() throws IOException {
    Plan plan = read(LEAST + "music:\npanels:\n  - panel: 1\n    cue:\n    length:\n");
    assertThat(plan.panels().get(0).cue()).isEqualTo(new Place.Anywhere());
    assertThat(plan.text().given()).doesNotContain("music", "panels.1.cue");
  }

  @Test
  void what_an_anchor_names_can_be_repeated() throws IOException {
    Plan plan =
        read(
            LEAST
                + """
                openings:
                  lamp-1: &lamp {left: 1, top: 1, width: 2, height: 2, iris: 100 %}
                  lamp-2: *lamp
                """);
    assertThat(plan.workshop().openings().get(1).rect())
        .isEqualTo(plan.workshop().openings().get(0).rect());
  }

  @Test
  void folders_in_file_names_may_be_parted_either_way() throws IOException {
    Plan plan = read(LEAST + "panels: [{panel: 1, drawing: panels\\01.png}]\n");
    assertThat(plan.panels().get(0).drawing()).contains(folder.resolve("panels/01.png"));
  }

  @Test
  void a_byte_order_mark_and_other_line_ends_do_no_harm() throws IOException {
    Path file = folder.resolve("plan.yaml");
    Files.write(file, ("\uFEFF" + LEAST.replace("\n", "\r\n")).getBytes(StandardCharsets.UTF_8));
    assertThat(PlanReader.read(file).title()).isEqualTo("Quay");
    Files.write(file, LEAST.getBytes(StandardCharsets.UTF_16));
    assertThat(PlanReader.read(file).title()).isEqualTo("Quay");
  }
}
