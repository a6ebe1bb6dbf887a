package org.barsheet.cli;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** {@code make --paper} and {@code make --overlays}, from its words to the files in the folder. */
class PaperCommandTest {

  @TempDir private Path folder = Path.of("set by the test runner");

  private String told = "";

  private int make(Path sheets, String... options) throws IOException {
    return make(text -> text, sheets, options);
  }

  private int make(UnaryOperator<String> changed, Path sheets, String... options)
      throws IOException {
    Path plan =
        Files.writeString(
            folder.resolve("quay.yaml"),
            changed.apply(
                """
            title: The quay
            score: %s
            film: {frame-rate: 24, paper: letter}
            motifs:
              glimmer: {heard-at: {place: bar 9, length: 5 beats, part: Celesta}, accent: last}
            artwork: {square: 1 in, squares: 24x13.5, models: {lamp: {enlarged: 3, backing: green}}}
            camera: {lens: 50 mm, sensor: 36 mm, pixels: 6000x4000}
            openings:
              lamp-1: {left: 3, top: 7, width: 1, height: 2, model: lamp, hinge: left, to: 90 deg}
              hatch: {left: 8, top: 7, width: 1, height: 1, slides: right}
            panels:
              - {panel: 1, action: Fog}
              - {panel: 2, action: A lamp, cue: glimmer 1, field: {left: 2, top: 6, width: 4}, reveals: [{opening: lamp-1, photographs: 6}]}
              - {panel: 3, action: A hatch, cue: glimmer 2, field: {left: 7, top: 6, width: 5}, reveals: [{opening: hatch, photographs: 4}]}
            """
                    .formatted(Path.of("scores", "lamplighters-quay.mid").toAbsolutePath())),
            UTF_8);
    List<String> words = new ArrayList<>(List.of("make", plan.toString()));
    words.addAll(List.of("--out", sheets.toString()));
    words.addAll(List.of(options));
    StringWriter err = new StringWriter();
    int status =
        Barsheet.run(
            new PrintWriter(new StringWriter()),
            new PrintWriter(err),
            words.toArray(String[]::new));
    told = err.toString();
    assertThat(told).doesNotContain("barsheet:");
    return status;
  }

  @Test
  void cutting_sheets_and_slates_come_on_request_as_drawings_and_as_pdf() throws IOException {
    Path sheets = folder.resolve("sheets");
    assertThat(make(sheets, "--paper")).isZero();
    Path paper = sheets.resolve("paper");
    assertThat(paper.resolve("lamp-1 flap.svg")).exists();
    assertThat(paper.resolve("hatch shutter.svg")).exists();
    assertThat(paper.resolve("pieces.svg")).exists();
    assertThat(paper.resolve("slates 1.svg")).exists();
    try (PDDocument cutting = Loader.loadPDF(paper.resolve("quay-cutting.pdf").toFile())) {
      String text = new PDFTextStripper().getText(cutting);
      assertThat(text).contains("List of pieces", "76.2 × 152.4 mm", "Artwork at true size");
      assertThat(cutting.getPage(0).getMediaBox().getWidth()).isEqualTo(612);
      assertThat(cutting.getPage(0).getMediaBox().getHeight()).isEqualTo(792);
    }
    try (PDDocument slates = Loader.loadPDF(paper.resolve("quay-slates.pdf").toFile())) {
      assertThat(new PDFTextStripper().getText(slates)).contains("Setup 1", "hatch");
    }
  }

  @Test
  void overlays_come_on_request() throws IOException {
    Path sheets = folder.resolve("overlaid");
    assertThat(make(sheets, "--overlays")).isZero();
    assertThat(sheets.resolve("overlays").resolve("lamp 006.svg")).exists();
    assertThat(sheets.resolve("overlays").resolve("hatch 004.svg")).exists();
    assertThat(sheets.resolve("paper")).doesNotExist();
    assertThat(told).doesNotContain("No overlays");
  }

  @Test
  void what_has_no_overlays_is_told() throws IOException {
    Path sheets = folder.resolve("overlaid");
    assertThat(
            make(
                text -> text.replace("field: {left: 7, top: 6, width: 5}, ", ""),
                sheets,
                "--overlays"))
        .isZero();
    assertThat(told).contains("No overlays for hatch: no panel says what the camera sees.");
    assertThat(sheets.resolve("overlays").resolve("lamp 006.svg")).exists();
    assertThat(make(text -> text.replaceAll("camera: .*", ""), sheets, "--overlays")).isZero();
    assertThat(told).contains("No overlays: the plan has no camera.");
  }

  @Test
  void nothing_is_drawn_on_paper_unless_it_is_asked_for() throws IOException {
    Path sheets = folder.resolve("plain");
    assertThat(make(sheets)).isZero();
    assertThat(sheets.resolve("paper")).doesNotExist();
    assertThat(sheets.resolve("overlays")).doesNotExist();
  }
}
