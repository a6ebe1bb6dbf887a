package org.barsheet.workbook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assumptions.assumeThat;
import static org.assertj.core.data.Offset.offset;

import java.awt.Font;
import java.awt.FontFormatException;
import java.awt.font.FontRenderContext;
import java.io.File;
import java.io.IOException;
import java.util.List;
import org.barsheet.plan.Film;
import org.barsheet.workbook.pen.Column;
import org.barsheet.workbook.pen.Columns;
import org.barsheet.workbook.pen.Look;
import org.barsheet.workbook.pen.PageSize;
import org.barsheet.workbook.pen.Signs;
import org.barsheet.workbook.pen.TextWidth;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class LayoutTest {

  /** Where Debian and Ubuntu keep the fonts whose widths Arial shares. */
  private static final String FONTS = "/usr/share/fonts/truetype/liberation/LiberationSans-";

  @ParameterizedTest
  @CsvSource({"Regular, false", "Bold, true"})
  void widths_are_those_of_liberation_sans(String face, boolean bold)
      throws IOException, FontFormatException {
    Font font = liberation(face);
    Look look = bold ? Look.BODY.size(1000).inBold() : Look.BODY.size(1000);
    for (char letter = ' '; letter <= '~'; letter++) {
      String text = String.valueOf(letter);
      assertThat(TextWidth.of(text, look)).as(text).isCloseTo(width(font, text), offset(0.51));
    }
  }

  @Test
  void every_sign_exists_in_liberation_sans() throws IOException, FontFormatException {
    String signs = Signs.ACCENT + Signs.HOLD + Signs.QUESTION + Signs.DONE;
    assertThat(liberation("Regular").canDisplayUpTo(signs + "×!··√")).isEqualTo(-1);
  }

  private static Font liberation(String face) throws IOException, FontFormatException {
    File file = new File(FONTS + face + ".ttf");
    assumeThat(file).as("Liberation Sans is not installed").exists();
    return Font.createFont(Font.TRUETYPE_FONT, file).deriveFont(1000f);
  }

  private static double width(Font font, String text) {
    return font.getStringBounds(text, new FontRenderContext(null, true, true)).getWidth();
  }

  @Test
  void long_words_and_wrapped_words_are_counted_in_lines() {
    assertThat(TextWidth.lines("lamp", Look.BODY, 60)).isEqualTo(1);
    assertThat(TextWidth.lines("the baker's lamp opens", Look.BODY, 60)).isEqualTo(2);
    assertThat(TextWidth.lines("m".repeat(40), Look.BODY, 60)).isEqualTo(6);
    assertThat(TextWidth.lines("one\ntwo", Look.BODY, 60)).isEqualTo(2);
    assertThat(TextWidth.lines("chandlers-lamp opens", Look.BODY, 60)).isEqualTo(2);
    assertThat(TextWidth.lines("harbour-masters-window", Look.BODY, 60)).isEqualTo(3);
  }

  @Test
  void columns_fill_the_page_and_never_overfill_it() {
    PageSize page = new PageSize(Film.Paper.LETTER, false);
    Columns columns =
        new Columns(
            List.of(Column.words("a", 100, 1), Column.words("b", 100, 3), Column.rowName()),
            page.width());
    assertThat(columns.points(0, 2)).isCloseTo(page.width(), offset(1e-9));
    assertThat(columns.points(1) - 100).isCloseTo(3 * (columns.points(0) - 100), offset(1e-9));
  }

  @Test
  void boxes_that_would_collide_go_on_lines_of_their_own() {
    MusicBox early = new MusicBox(0, 5, false, "early", 0, 9, false);
    MusicBox late = new MusicBox(10, 12, false, "late", 10, 12, false);
    MusicBox between = new MusicBox(8, 9, false, "between", 8, 9, false);
    assertThat(MusicBox.lines(List.of(early, late, between)))
        .containsExactly(List.of(early, late), List.of(between));
  }
}
