package org.barsheet.handoff;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import javax.xml.parsers.DocumentBuilder;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.barsheet.calls.Call;
import org.barsheet.calls.CallAppearance;
import org.barsheet.clock.FrameRate;
import org.barsheet.film.FilmSheet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;
import org.xml.sax.SAXException;

class CallSheetsTest {

  private static String page(FilmSheet sheet) {
    List<HandoffFile> files = CallSheets.files(sheet);
    assertThat(files).hasSize(1);
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try {
      files.get(0).content().writeTo(bytes);
    } catch (IOException broken) {
      throw new UncheckedIOException(broken);
    }
    return bytes.toString(StandardCharsets.UTF_8);
  }

  /** The pages are written so that a strict XML parser takes them too. */
  private static Document parsed(String page) {
    try {
      DocumentBuilder builder = DocumentBuilderFactory.newInstance().newDocumentBuilder();
      builder.setErrorHandler(null);
      return builder.parse(new InputSource(new StringReader(page)));
    } catch (ParserConfigurationException | SAXException | IOException broken) {
      throw new AssertionError(broken);
    }
  }

  private static List<String> texts(Document page, String element) {
    NodeList nodes = page.getElementsByTagName(element);
    List<String> texts = new ArrayList<>();
    for (int i = 0; i < nodes.getLength(); i++) {
      texts.add(nodes.item(i).getTextContent());
    }
    return texts;
  }

  @Test
  void a_player_reads_when_they_are_seen_in_the_time_of_the_sound_file() {
    Document page = parsed(page(SampleFilm.at(FrameRate.FPS_24).sheet()));
    // Frames 165 to 297 of the film are 6.875 s to 12.375 s; the sound file begins 8 s earlier.
    assertThat(texts(page, "td"))
        .containsExactly(
            "2 The baker's lamp",
            "in lamp-1",
            "3 to 5",
            "0:12.9",
            "0:14.9",
            "0:20.4",
            "0:22.4",
            "plays 75 % of the time",
            "the right edge");
  }

  /** In the demo the office shutter opens in panel 13; the horn is seen in it in 15 and 24. */
  @Test
  void a_player_in_an_opening_that_stands_open_waits_for_no_edge() {
    List<Call> calls = DemoFilm.sheet().calls();
    Call horn =
        calls.stream()
            .filter(call -> call.performer().name().equals("horn"))
            .findFirst()
            .orElseThrow();
    assertThat(horn.seen())
        .extracting(CallAppearance::opensFirst)
        .containsExactly("it is already open", "it is already open");
  }

  @Test
  void a_player_reads_how_to_hold_the_camera_and_what_to_send() {
    List<String> lines = texts(parsed(page(SampleFilm.at(FrameRate.FPS_24).sheet())), "li");
    assertThat(lines)
        .contains(
            // Largest 1:2 rectangle inside 1080 by 1920.
            "lamp-1 (panel 2): hold the camera in portrait (1080 × 1920). The left and the right 6 %"
                + " of your frame are cut off.",
            "Wear nothing green, nothing shiny, no fine stripes or checks. The color you noted,"
                + " #00A03C, dark green, is too close to green: wear something else.",
            "Clap once, in frame, at 0:05.0, 5 s before the music starts.",
            "One file named cello.mov, as the camera recorded it: not trimmed, not converted, not"
                + " through a messenger that shrinks it. A second take is cello take 2.mov.",
            "Sound recorded apart: cello.wav, in one piece, 48000 samples per second, 24 bits.",
            "Set exposure, white balance and focus by hand and leave them alone; shoot at 29.97"
                + " fps, as you told us, never at a variable rate.");
  }

  /**
   * The frame is 40 mm high: 1920 pixels; the hole has half its height as width, 60 from the left.
   */
  @Test
  void the_drawing_shows_the_hole_in_the_frame_to_scale() {
    Document page = parsed(page(SampleFilm.at(FrameRate.FPS_24).sheet()));
    NodeList boxes = page.getElementsByTagName("rect");
    assertThat(attributes((Element) boxes.item(0)))
        .containsExactly("0.00", "0.00", "22.50", "40.00");
    assertThat(attributes((Element) boxes.item(1)))
        .containsExactly("1.25", "0.00", "20.00", "40.00");
    Element head = (Element) page.getElementsByTagName("ellipse").item(0);
    // A quarter of the hole's height, in the middle.
    assertThat(head.getAttribute("cx")).isEqualTo("11.25");
    assertThat(head.getAttribute("ry")).isEqualTo("5.00");
  }

  private static List<String> attributes(Element box) {
    return Stream.of("x", "y", "width", "height").map(box::getAttribute).toList();
  }

  @Test
  void what_nobody_has_said_is_left_to_write_in() {
    String page = page(SampleFilm.at(FrameRate.FPS_24).sheet());
    assertThat(page).contains("<p>Send it to: <span", "<p>By: <span", "<p>Questions: <span");
    assertThat(page).doesNotContain("frame 439", "01:00:06:21");
  }

  @Test
  void the_count_in_takes_the_pickup_away_and_is_told() {
    // Two bars of 3/4 less one beat of pickup: 5 clicks of 0.625 s, to 2 s after film frame 0.
    assertThat(texts(parsed(page(SampleFilm.at(FrameRate.FPS_24).sheet())), "li"))
        .contains(
            "The count-in is 5 clicks and begins at 0:06.9; the music starts at 0:10.0."
                + " The beep at 0:06.0 isn't part of it.");
  }

  @Test
  void cautions_for_filming_at_home_and_for_children_defer_to_the_law_of_the_place() {
    String page = page(SampleFilm.at(FrameRate.FPS_24).sheet());
    assertThat(page)
        .contains("Let lamps cool", "Keep doors and exits clear", "headphones")
        .contains("not a permit")
        .contains("guardian", "check the local law and whether a license is needed");
  }

  @ParameterizedTest
  @MethodSource("org.barsheet.handoff.HostileTexts#all")
  void whatever_people_type_is_text_and_never_markup(String text) {
    String page = page(SampleFilm.at(FrameRate.FPS_30).saying(text).sheet());
    Document document = parsed(page);
    assertThat(document.getElementsByTagName("script").getLength()).isZero();
    assertThat(texts(document, "td")).hasSize(9);
    assertThat(page).doesNotContainPattern("[\\u202A-\\u202E]");
  }
}
