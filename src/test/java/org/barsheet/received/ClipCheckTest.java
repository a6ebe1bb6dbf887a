package org.barsheet.received;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.barsheet.clips.ClipFacts;
import org.barsheet.clips.ClipFacts.Video;
import org.barsheet.clock.FrameRate;
import org.barsheet.clock.FrameSpan;
import org.barsheet.clock.Seconds;
import org.barsheet.cues.FilmClock;
import org.barsheet.exposure.Appearance;
import org.barsheet.plan.Opening;
import org.barsheet.plan.Performer;
import org.barsheet.plan.Rect;
import org.barsheet.plan.Where;
import org.junit.jupiter.api.Test;

/** The clap is on frame 125, 5 s before the music; seen from 2 s to 12 s after its start. */
class ClipCheckTest {

  private static final Where WHERE = new Where("plan.yaml", "line 1");
  private static final FilmClock CLOCK = new FilmClock(FrameRate.FPS_24, 48, Seconds.ZERO);

  private static Performer performer(FrameRate rate) {
    return performer(rate, new Performer.Clap(Seconds.of(-5), 125));
  }

  private static Performer performer(FrameRate rate, Performer.Clap clap) {
    return new Performer(
        "cello",
        "Cello",
        "cello.mov",
        Optional.of(rate),
        Optional.of(clap),
        Optional.empty(),
        1080,
        1920,
        List.of(),
        "",
        WHERE);
  }

  private static Appearance seen(Performer performer) {
    Opening lamp =
        new Opening(
            "lamp-1",
            new Rect(3, 7, 2, 4),
            "quay",
            new Opening.Hinged(Opening.Side.LEFT, 90),
            List.of(),
            WHERE);
    return new Appearance(0, performer, lamp, new FrameSpan(96, 336), 1);
  }

  private static ReceivedClip clip(FrameRate said, long frames, Seconds frame, boolean steady) {
    return clip(said, new Video(frames, frame.times(frames), steady, 1080, 1920));
  }

  private static ReceivedClip clip(FrameRate said, Video video) {
    ClipFacts facts = new ClipFacts(video.length(), Optional.of(video), Optional.empty());
    return ReceivedClip.received(performer(said), facts);
  }

  private static List<String> told(ReceivedClip clip) {
    Appearance seen = seen(clip.asReceived());
    return List.of(
            ClipCheck.ofWhole(clip, CLOCK, List.of(seen)),
            ClipCheck.ofAppearance(clip, CLOCK, seen))
        .stream()
        .flatMap(List::stream)
        .map(fault -> fault.severity() + " " + fault.sentence())
        .toList();
  }

  /** At 25 fps it is seen until 17 s after the clap: frame 550, 600 with the handle. */
  @Test
  void a_clip_long_enough_with_its_handles_is_usable() {
    assertThat(told(clip(FrameRate.FPS_25, 600, Seconds.of(1, 25), true))).isEmpty();
  }

  @Test
  void a_clip_that_only_lacks_its_handle_is_usable() {
    assertThat(usable(590)).isTrue();
    assertThat(usable(549)).isFalse();
  }

  private static boolean usable(int frames) {
    ReceivedClip clip = clip(FrameRate.FPS_25, frames, Seconds.of(1, 25), true);
    return ClipCheck.isUsable(ClipCheck.ofAppearance(clip, CLOCK, seen(clip.asReceived())));
  }

  @Test
  void a_clip_that_ends_too_soon_is_told_in_its_own_frames() {
    assertThat(told(clip(FrameRate.FPS_25, 590, Seconds.of(1, 25), true)))
        .containsExactly("REMARK cello.mov has 10 frames too few in its last handle");
    assertThat(told(clip(FrameRate.FPS_25, 549, Seconds.of(1, 25), true)))
        .containsExactly("ERROR cello.mov is 1 frame too short");
  }

  /** 30 where 29.97 was said: 0.02997 fps, over the 17 s from the clap to the last frame. */
  @Test
  void a_rate_other_than_the_plan_s_is_told_with_its_drift_and_then_used() {
    ReceivedClip clip = clip(FrameRate.FPS_29_97, 3000, Seconds.of(1, 30), true);
    assertThat(clip.asReceived().clipRate()).contains(FrameRate.FPS_30);
    assertThat(told(clip))
        .containsExactly(
            "WARNING cello.mov has 30 fps, not 29.97 as the plan says: it would drift by 1"
                + " frame; the file's own rate is used");
  }

  @Test
  void a_wandering_rate_is_told() {
    assertThat(told(clip(FrameRate.FPS_30, 3000, Seconds.of(100, 2983), false)))
        .containsExactly("WARNING cello.mov has a variable frame rate: 29.830 fps on average");
  }

  /**
   * A film frame of 60 a second, the 25th after the clap, is 9.6 clip frames after it: the 10th.
   */
  @Test
  void a_clip_slower_than_the_film_is_too_short_by_the_frame_its_last_one_needs() {
    FilmClock film = new FilmClock(FrameRate.FPS_60, 0, Seconds.ZERO);
    Performer cello = performer(FrameRate.FPS_24, new Performer.Clap(Seconds.ZERO, 0));
    Appearance untilFrame25 =
        new Appearance(0, cello, seen(cello).opening(), new FrameSpan(0, 25), 1);
    assertThat(atEnd(cello, 10, film, untilFrame25))
        .containsExactly("cello.mov is 1 frame too short");
    assertThat(atEnd(cello, 11, film, untilFrame25))
        .containsExactly("cello.mov has 47 frames too few in its last handle");
  }

  private static List<String> atEnd(Performer who, long frames, FilmClock film, Appearance seen) {
    Video video = new Video(frames, Seconds.of(frames, 24), true, 1080, 1920);
    ClipFacts facts = new ClipFacts(video.length(), Optional.of(video), Optional.empty());
    return ClipCheck.ofAppearance(ReceivedClip.received(who, facts), film, seen).stream()
        .map(ClipFault::sentence)
        .filter(sentence -> !sentence.contains("first handle"))
        .toList();
  }

  /** 225 s hold 6,750 frames of 30 a second, once it is steady; 5,930 are stored. */
  @Test
  void a_wandering_rate_is_as_long_as_it_lasts_whatever_frames_are_stored() {
    FilmClock film = new FilmClock(FrameRate.FPS_24, 0, Seconds.ZERO);
    Performer cello = performer(FrameRate.FPS_30, new Performer.Clap(Seconds.ZERO, 0));
    Video video = new Video(5_930, Seconds.of(225), false, 1080, 1920);
    ClipFacts facts = new ClipFacts(video.length(), Optional.of(video), Optional.empty());
    ReceivedClip clip = ReceivedClip.received(cello, facts);
    for (long seconds : new long[] {220, 226}) {
      Appearance seen =
          new Appearance(0, cello, seen(cello).opening(), new FrameSpan(48, 24 * seconds), 1);
      assertThat(ClipCheck.ofAppearance(clip, film, seen))
          .extracting(ClipFault::sentence)
          .isEqualTo(seconds == 220 ? List.of() : List.of("cello.mov is 30 frames too short"));
    }
    assertThat(clip.steadyRate()).contains(FrameRate.FPS_25);
    assertThat(clip.asReceived().clipRate()).contains(FrameRate.FPS_30);
  }

  @Test
  void a_steady_rate_that_no_film_has_is_told() {
    for (int rate : new int[] {15, 120, 240}) {
      assertThat(told(clip(FrameRate.FPS_30, 20L * rate + 600, Seconds.of(1, rate), true)))
          .contains(
              "WARNING cello.mov has an unusual rate, "
                  + rate
                  + ".000 fps, so its frames can't be placed");
    }
  }

  @Test
  void a_clip_that_lies_where_the_opening_stands_is_told() {
    Video lying = new Video(600, Seconds.of(24), true, 1920, 1080);
    assertThat(told(clip(FrameRate.FPS_25, lying)))
        .containsExactly(
            "REMARK cello.mov is 1920x1080 pixels, not 1080x1920 as the plan says",
            "WARNING cello.mov is landscape, but lamp-1 is taller than wide");
  }

  @Test
  void a_clip_without_a_video_and_one_that_cannot_be_read_are_told() {
    ClipFacts sound = new ClipFacts(Seconds.of(60), Optional.empty(), Optional.empty());
    assertThat(told(ReceivedClip.received(performer(FrameRate.FPS_25), sound)))
        .containsExactly("WARNING cello.mov has sound but no video");
    assertThat(
            told(
                ReceivedClip.unreadable(
                    performer(FrameRate.FPS_25), "is cut short", "ask for it again")))
        .containsExactly("WARNING cello.mov is cut short");
    assertThat(told(ReceivedClip.missing(performer(FrameRate.FPS_25)))).isEmpty();
  }
}
