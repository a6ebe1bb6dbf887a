package org.barsheet.production;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import org.barsheet.clips.MovieBytes;
import org.barsheet.clock.FrameRate;
import org.barsheet.clock.Seconds;
import org.barsheet.exposure.FileNames;
import org.barsheet.plan.Performer;
import org.barsheet.plan.Plan;
import org.barsheet.plan.read.PlanReader;
import org.barsheet.received.ReceivedClip;
import org.barsheet.received.ReceivedClip.State;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ClipsTest {

  private static final String LEAST = "title: Quay\nscore: quay.mid\nfilm: {frame-rate: 24}\n";

  @TempDir private Path folder;

  private Plan plan(String more) throws IOException {
    Path file = folder.resolve("plan/quay.yaml");
    Files.createDirectories(folder.resolve("plan/clips"));
    Files.writeString(file, LEAST + more);
    return PlanReader.read(file);
  }

  private void deliver(String name) throws IOException {
    byte[] film = new MovieBytes().clock(25).frames(500, 1).turned().bytes();
    Path file = folder.resolve("plan").resolve(name);
    Files.createDirectories(Objects.requireNonNull(file.getParent()));
    Files.write(file, film);
  }

  @Test
  void a_clip_s_own_rate_and_size_stand_in_the_plan() throws IOException {
    Plan plan = plan("clips: clips\nperformers: {cello: {clip: cello.mov}, horn: {clip: h.mov}}\n");
    deliver("clips/cello.mov");
    List<ReceivedClip> clips = Clips.of(plan);
    assertThat(clips)
        .extracting(ReceivedClip::state)
        .containsExactly(State.RECEIVED, State.MISSING);
    Performer cello = Clips.known(plan, clips).performers().get(0);
    assertThat(cello.clipRate()).contains(FrameRate.FPS_25);
    assertThat(cello.clipWidth()).isEqualTo(1080);
    assertThat(cello.clipHeight()).isEqualTo(1920);
  }

  @Test
  void nobody_looks_for_clips_without_a_folder() throws IOException {
    assertThat(Clips.of(plan("performers: {cello: {clip: cello.mov}}\n"))).isEmpty();
  }

  @Test
  void a_table_says_where_recordings_are_and_what_was_told_of_them() throws IOException {
    Plan plan =
        plan(
            """
            performers:
              cello: {clip: cello.mov, clip-rate: 30, clap: {at: -4 s, clip-frame: 9}}
              horn: {}
              flute: {clip: flute.mov}
            clips:
              cello: {file: post/take 3.mov, start: -10 s}
              horn: {file: post/horn.mov}
            """);
    deliver("post/take 3.mov");
    List<ReceivedClip> clips = Clips.of(plan);
    assertThat(clips)
        .extracting(ReceivedClip::state)
        .containsExactly(State.RECEIVED, State.MISSING, State.MISSING);
    Performer cello = Clips.known(plan, clips).performers().get(0);
    assertThat(cello.clip()).isEqualTo("take 3.mov");
    assertThat(cello.clipRate()).contains(FrameRate.FPS_25);
    assertThat(cello.tie()).contains(new Performer.Clap(Seconds.of(-10), 0));
    assertThat(clips.get(1).reason()).isEqualTo("is missing: post/horn.mov is not a file");
    assertThat(clips.get(2).reason()).isEmpty();
  }

  @Test
  void a_name_that_leads_out_of_the_folder_is_never_followed() throws IOException {
    Plan plan = plan("clips: clips\nperformers: {cello: {clip: ../cello.mov}}\n");
    deliver("cello.mov");
    assertThat(Clips.of(plan)).extracting(ReceivedClip::state).containsExactly(State.MISSING);
    deliver("clips/" + FileNames.ofClip(plan.performers().get(0)));
    assertThat(Clips.of(plan)).extracting(ReceivedClip::state).containsExactly(State.RECEIVED);
  }
}
