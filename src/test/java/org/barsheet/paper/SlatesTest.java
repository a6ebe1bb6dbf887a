package org.barsheet.paper;

import static org.assertj.core.api.Assertions.assertThat;

import com.google.gson.JsonObject;
import com.google.gson.JsonParser;
import com.google.zxing.BinaryBitmap;
import com.google.zxing.DecodeHintType;
import com.google.zxing.RGBLuminanceSource;
import com.google.zxing.ReaderException;
import com.google.zxing.common.HybridBinarizer;
import com.google.zxing.qrcode.QRCodeReader;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.barsheet.film.FilmSheet;
import org.barsheet.handoff.DemoFilm;
import org.barsheet.shooting.Setup;
import org.barsheet.shooting.Step;
import org.barsheet.shooting.Take;
import org.junit.jupiter.api.Test;

/** Slates as a camera sees them: painted, and their codes read by a reader of codes. */
class SlatesTest {

  private static final FilmSheet DEMO = DemoFilm.sheet();
  private static final List<PaperPage> PAGES = PaperSheets.slates(DEMO);

  /** The code of one slate, half a page. */
  private static String read(BufferedImage page, int half) throws ReaderException {
    int width = page.getWidth();
    int height = page.getHeight() / 2;
    int[] dots = page.getRGB(0, half * height, width, height, null, 0, width);
    return new QRCodeReader()
        .decode(
            new BinaryBitmap(new HybridBinarizer(new RGBLuminanceSource(width, height, dots))),
            Map.of(DecodeHintType.TRY_HARDER, true))
        .getText();
  }

  @Test
  void the_code_of_every_slate_names_the_photographs_that_follow()
      throws IOException, ReaderException {
    List<JsonObject> read = new ArrayList<>();
    int slates = DEMO.shooting().setups().stream().mapToInt(setup -> setup.cards().size()).sum();
    try (PDDocument document = Loader.loadPDF(PagesPdfTest.pdf(PAGES))) {
      PDFRenderer painter = new PDFRenderer(document);
      for (int slate = 0; slate < slates; slate++) {
        String code = read(painter.renderImageWithDPI(slate / 2, 150), slate % 2);
        read.add(JsonParser.parseString(code).getAsJsonObject());
      }
    }
    Iterator<JsonObject> next = read.iterator();
    for (Setup setup : DEMO.shooting().setups()) {
      for (List<Step> card : setup.cards()) {
        Take take = card.get(0).take();
        JsonObject json = next.next();
        assertThat(json.get("setup").getAsString()).isEqualTo(setup.label(take));
        assertThat(json.get("film").getAsString()).isEqualTo("Lamplighters' Quay");
        assertThat(json.get("first").getAsString()).isEqualTo(take.taken().get(0));
        if (take instanceof Setup.Run run) {
          assertThat(json.get("sequence").getAsString()).isEqualTo(run.movement().name());
          assertThat(json.get("last").getAsString())
              .isEqualTo(
                  take.taken().stream()
                      .filter(name -> name.matches(".* [0-9]{3}"))
                      .reduce((before, name) -> name)
                      .orElseThrow());
        } else {
          List<String> last = card.get(card.size() - 1).take().taken();
          assertThat(json.get("last").getAsString()).isEqualTo(last.get(last.size() - 1));
        }
      }
    }
  }

  private static DrawnPage pageOf(String movement) {
    return PAGES.stream()
        .map(DrawnPage::of)
        .filter(page -> page.words().stream().anyMatch(words -> words.words().equals(movement)))
        .findFirst()
        .orElseThrow();
  }

  @Test
  void a_slate_says_in_large_letters_what_its_code_says() {
    DrawnPage page = pageOf("bakers-lamp");
    assertThat(page.words())
        .anySatisfy(
            words -> {
              assertThat(words.words()).startsWith("Setup ");
              assertThat(words.size()).isGreaterThan(12);
            })
        .anySatisfy(
            words -> {
              assertThat(words.words()).isEqualTo("bakers-lamp");
              assertThat(words.size()).isGreaterThan(7);
            });
    assertThat(page.text()).contains("000 – 029");
  }

  @Test
  void gray_steps_and_the_backing_say_their_values() {
    assertThat(pageOf("bakers-lamp").text())
        .contains("255", "128", "0", "backing green", "#00A03C");
    assertThat(PAGES.stream().flatMap(page -> page.inks().stream()).toList())
        .filteredOn(Ink.Patch.class::isInstance)
        .extracting(ink -> ((Ink.Patch) ink).color())
        .contains("FFFFFF", "808080", "000000", "00A03C");
  }

  /** Titles are a person's: letters of any script, and as long as they like. */
  @Test
  void a_code_holds_any_title() {
    String title = "灯の埠頭 ".repeat(60);
    SequenceCode code =
        new SequenceCode(title, "1", new Sequence("lamp", "lamp 000", "lamp 030"), "0".repeat(8));
    assertThat(code.drawn(0, 0, 60)).isNotEmpty();
    JsonObject json = JsonParser.parseString(code.text()).getAsJsonObject();
    assertThat(title).startsWith(json.get("film").getAsString());
    assertThat(json.get("last").getAsString()).isEqualTo("lamp 030");
  }
}
