package org.barsheet.handoff;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import javax.xml.parsers.DocumentBuilder;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.barsheet.clock.FrameRate;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.xml.sax.SAXException;

class MattesTest {

  private static Document matte(HandoffFile file) {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try {
      file.content().writeTo(bytes);
      DocumentBuilder builder = DocumentBuilderFactory.newInstance().newDocumentBuilder();
      builder.setErrorHandler(null);
      return builder.parse(new ByteArrayInputStream(bytes.toByteArray()));
    } catch (IOException broken) {
      throw new UncheckedIOException(broken);
    } catch (ParserConfigurationException | SAXException broken) {
      throw new AssertionError(broken);
    }
  }

  @Test
  void a_matte_is_white_where_the_opening_is_and_black_elsewhere() {
    List<HandoffFile> files = Mattes.files(DemoFilm.sheet());
    HandoffFile file =
        files.stream().filter(f -> f.path().contains("panel 24 bakers")).findFirst().orElseThrow();
    assertThat(file.path()).isEqualTo("mattes/panel 24 bakers-lamp.svg");
    Document svg = matte(file);
    Element ground = (Element) svg.getElementsByTagName("rect").item(0);
    assertThat(ground.getAttribute("width")).isEqualTo("1920");
    assertThat(ground.getAttribute("height")).isEqualTo("1080");
    assertThat(ground.getAttribute("fill")).isEqualTo("#000000");
    // The whole artwork is seen, 80 pixels a square: the opening begins at 4.8 across, 7.2 down.
    Element hole = (Element) svg.getElementsByTagName("rect").item(1);
    assertThat(hole.getAttribute("x")).isEqualTo("384");
    assertThat(hole.getAttribute("y")).isEqualTo("576");
    assertThat(hole.getAttribute("width")).isEqualTo("120");
    assertThat(hole.getAttribute("height")).isEqualTo("176");
    assertThat(hole.getAttribute("fill")).isEqualTo("#FFFFFF");
  }

  @Test
  void a_matte_under_a_moving_camera_says_which_frame_it_is() {
    HandoffFile file = Mattes.files(SampleFilm.at(FrameRate.FPS_29_97_DF).sheet()).get(0);
    assertThat(matte(file).getElementsByTagName("desc").item(0).getTextContent())
        .contains("the camera moves: this is frame")
        .contains("29.97 fps, drop-frame");
  }

  @ParameterizedTest
  @MethodSource("org.barsheet.handoff.HostileTexts#all")
  void whatever_people_type_is_text_and_never_markup(String text) {
    for (HandoffFile file : Mattes.files(SampleFilm.at(FrameRate.FPS_24).saying(text).sheet())) {
      assertThat(matte(file).getElementsByTagName("*").getLength()).isEqualTo(5);
    }
  }
}
