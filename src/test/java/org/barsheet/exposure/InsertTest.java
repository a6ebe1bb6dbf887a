package org.barsheet.exposure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.barsheet.timing.Reveals.reveal;

import java.util.List;
import java.util.Optional;
import org.barsheet.artwork.ClipCrop;
import org.barsheet.artwork.FrameRect;
import org.barsheet.film.FilmPlanner;
import org.barsheet.film.FilmSheet;
import org.barsheet.plan.Field;
import org.barsheet.plan.Panel;
import org.barsheet.plan.Performer;
import org.barsheet.plan.Rect;
import org.barsheet.plan.Slow;
import org.barsheet.timing.Finding;
import org.barsheet.timing.MusicBuilder;
import org.barsheet.timing.PlanBuilder;
import org.junit.jupiter.api.Test;

/** Where performers are in the frame. The opening is 2 by 4 squares at 3 across, 7 down. */
class InsertTest {

  private static final Rect WHOLE = new Rect(0, 0, 24, 13.5);

  private static FilmSheet film(Optional<Field> field, int clipWidth, int clipHeight) {
    MusicBuilder music = new MusicBuilder().tempo(96).bars(12).motif("glimmer", 7, 1);
    PlanBuilder plan =
        new PlanBuilder(music)
            .opening("lamp-1", "small-lamp")
            .performer("celesta", "")
            .panel("", "")
            .panel("glimmer 1", "", List.of(reveal("lamp-1", 30, 2)))
            .appears("celesta", "lamp-1")
            .with(panel -> seeing(panel, field))
            .performersWith(performer -> sized(performer, clipWidth, clipHeight));
    return FilmPlanner.complete(plan.time(), List.of());
  }

  private static Panel seeing(Panel p, Optional<Field> field) {
    return new Panel(
        p.name(),
        p.action(),
        p.cue(),
        p.cut(),
        p.length(),
        field,
        p.drawing(),
        p.reveals(),
        p.appears(),
        p.locked(),
        p.where());
  }

  private static Performer sized(Performer p, int width, int height) {
    return new Performer(
        p.name(),
        p.part(),
        p.clip(),
        p.clipRate(),
        p.clap(),
        p.clipStart(),
        width,
        height,
        p.clothes(),
        p.behind(),
        p.where());
  }

  private static Optional<Field> still(Rect rect) {
    return Optional.of(new Field(rect, rect, Slow.NONE));
  }

  private static List<String> told(FilmSheet film) {
    return film.findings().stream()
        .filter(finding -> finding.concerns() == Finding.Concerns.EDITOR)
        .map(Finding::sentence)
        .toList();
  }

  @Test
  void an_appearance_has_a_rectangle_on_each_of_its_frames() {
    FilmSheet film = film(still(WHOLE), 1080, 1920);
    Appearance seen = film.appearances().get(0);
    List<Insert> inserts = Insert.of(film.timing(), seen);
    assertThat(inserts).hasSize((int) seen.frames().length());
    assertThat(inserts.get(0).frame()).isEqualTo(seen.frames().start());
    assertThat(inserts).allMatch(insert -> insert.rect().equals(new FrameRect(240, 560, 160, 320)));
    assertThat(told(film)).isEmpty();
  }

  @Test
  void a_panel_that_does_not_say_what_the_camera_sees_is_told() {
    FilmSheet film = film(Optional.empty(), 0, 0);
    assertThat(Insert.of(film.timing(), film.appearances().get(0))).isEmpty();
    assertThat(told(film))
        .containsExactly("panel 2 has no field, so performers can't be placed in the frame");
  }

  @Test
  void an_opening_outside_the_frame_is_told() {
    assertThat(told(film(still(new Rect(10, 0, 12, 6.75)), 0, 0)))
        .containsExactly("lamp-1 is outside the frame while celesta is due to appear in it");
  }

  /** The field ends 1.5 squares down the opening: 1.5 of 4 squares are in, 38 %. */
  @Test
  void an_opening_mostly_cut_off_is_told() {
    assertThat(told(film(still(new Rect(0, 1.75, 12, 6.75)), 0, 0)))
        .containsExactly("at one point only 38 % of lamp-1, with celesta in it, is in the frame");
  }

  /** In a field 8 squares wide the opening is 480 pixels wide; the crop of the clip has 240. */
  @Test
  void a_clip_blown_up_past_its_pixels_is_told_with_the_size_to_ask_for() {
    FilmSheet film = film(still(new Rect(0, 6.5, 8, 4.5)), 270, 480);
    assertThat(told(film)).containsExactly("celesta's clip is enlarged to 200 % in lamp-1");
    assertThat(film.findings())
        .extracting(Finding::remedy)
        .contains("ask for a clip of 540x960 pixels or more, or widen the field");
    assertThat(told(film(still(new Rect(0, 6.5, 8, 4.5)), 1080, 1920))).isEmpty();
  }

  /** The largest rectangle of one to two inside 1080 by 1920 is 960 by 1920. */
  @Test
  void the_crop_of_a_clip_is_the_largest_rectangle_of_the_opening_s_shape_in_its_middle() {
    assertThat(ClipCrop.of(1080, 1920, new Rect(3, 7, 2, 4)))
        .isEqualTo(new ClipCrop(60, 0, 960, 1920));
    assertThat(ClipCrop.of(1920, 1080, new Rect(3, 7, 2, 4)))
        .isEqualTo(new ClipCrop(690, 0, 540, 1080));
    ClipCrop crop = ClipCrop.of(1080, 1920, new Rect(3, 7, 2, 4));
    assertThat(crop.scaleIn(new FrameRect(0, 0, 160, 320))).isCloseTo(1 / 6.0, within(1e-9));
  }
}
