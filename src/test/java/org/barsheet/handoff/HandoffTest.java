package org.barsheet.handoff;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Path;
import org.barsheet.clock.FrameRate;
import org.barsheet.film.FilmSheet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class HandoffTest {

  private static byte[] bytes(HandoffFile file) throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    file.content().writeTo(out);
    return out.toByteArray();
  }

  @Test
  void the_files_are_named_after_the_plan() {
    FilmSheet sheet = SampleFilm.at(FrameRate.FPS_24).sheet();
    assertThat(Handoff.documents(sheet, "quay"))
        .extracting(HandoffFile::path)
        .containsExactly(
            "timing.json",
            "quay-cues.csv",
            "quay-cues.vtt",
            "quay-chapters.vtt",
            "quay-cues.mid",
            "quay-frames.csv",
            "quay-inserts.csv",
            "quay.otio",
            "quay.edl",
            "quay-artwork.svg",
            "calls/cello.html",
            "cards/day-sheets.html",
            "cards/phone-setup-1.html",
            "cards/phone-setup-2.html",
            "cards/shooting-cards.html",
            "cards/small-lamp-gauge.svg",
            "mattes/panel 2 lamp-1.svg");
    assertThat(Handoff.sound(sheet, "quay"))
        .extracting(HandoffFile::path)
        .containsExactly("quay-click.wav", "quay-guide.wav");
  }

  @Test
  void the_same_film_gives_the_same_bytes() throws IOException {
    FilmSheet one = SampleFilm.at(FrameRate.FPS_29_97_DF).sheet();
    FilmSheet other = SampleFilm.at(FrameRate.FPS_29_97_DF).sheet();
    for (int i = 0; i < Handoff.documents(one, "quay").size(); i++) {
      HandoffFile file = Handoff.documents(one, "quay").get(i);
      assertThat(bytes(file))
          .as(file.path())
          .isEqualTo(bytes(Handoff.documents(other, "quay").get(i)));
    }
  }

  @ParameterizedTest
  @MethodSource("org.barsheet.handoff.HostileTexts#all")
  void no_file_leaves_the_folder_whatever_people_type(String text) {
    FilmSheet sheet = SampleFilm.at(FrameRate.FPS_24).saying(text).sheet();
    Path folder = Path.of("sheets").toAbsolutePath();
    for (HandoffFile file : Handoff.documents(sheet, "quay")) {
      Path target = folder.resolve(file.path()).normalize();
      assertThat(target.startsWith(folder)).isTrue();
      assertThat(target.getNameCount() - folder.getNameCount()).isLessThanOrEqualTo(2);
    }
  }
}
