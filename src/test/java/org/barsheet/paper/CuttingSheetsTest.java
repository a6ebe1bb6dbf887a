package org.barsheet.paper;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.barsheet.artwork.Piece;
import org.barsheet.clock.FrameRate;
import org.barsheet.film.FilmSheet;
import org.barsheet.handoff.DemoFilm;
import org.barsheet.handoff.SampleFilm;
import org.barsheet.plan.Artwork;
import org.barsheet.plan.Opening;
import org.barsheet.plan.Opening.Support;
import org.barsheet.plan.Rect;
import org.barsheet.plan.Where;
import org.junit.jupiter.api.Test;

/** Cutting sheets measured back from their drawings, in millimeters. */
class CuttingSheetsTest {

  private static final FilmSheet DEMO = DemoFilm.sheet();
  private static final List<PaperPage> PAGES = PaperSheets.cutting(DEMO);

  /** A hand with a ruler cannot tell less. */
  private static final double CLOSE = 0.05;

  private static void liesOnItsPage(PaperPage printed) {
    DrawnPage page = DrawnPage.of(printed);
    assertThat(page.all())
        .as(printed.name())
        .allSatisfy(
            line -> {
              assertThat(Math.min(line.x1(), line.x2())).isGreaterThanOrEqualTo(10);
              assertThat(Math.max(line.x1(), line.x2())).isLessThanOrEqualTo(page.width() - 10);
              assertThat(Math.max(line.y1(), line.y2())).isLessThanOrEqualTo(page.height() - 8);
            });
    assertThat(page.words())
        .as(printed.name())
        .allSatisfy(
            words -> {
              assertThat(words.size()).isGreaterThanOrEqualTo(8 * 25.4 / 72 - 0.001);
              assertThat(words.x()).isBetween(8.0, page.width() - 8);
              assertThat(words.y()).isBetween(8.0, page.height() - 8);
            });
  }

  private static DrawnPage page(String name) {
    return page(PAGES, name);
  }

  private static DrawnPage page(List<PaperPage> pages, String name) {
    return pages.stream()
        .filter(page -> page.name().equals(name))
        .findFirst()
        .map(DrawnPage::of)
        .orElseThrow(() -> new AssertionError("no page " + name));
  }

  /** Squares of the plan are an inch; a model is so many times as large. */
  private static double onModel(Opening opening, double squares) {
    return squares
        * 25.4
        * DEMO.plan().workshop().artwork().model(opening.model()).orElseThrow().enlarged();
  }

  @Test
  void every_flap_is_as_large_on_its_sheet_as_its_hole_on_the_model() {
    List<NeededPiece> flaps =
        NeededPiece.of(DEMO).stream()
            .filter(needed -> needed.piece().opening().motion() instanceof Opening.Hinged)
            .toList();
    assertThat(flaps).hasSizeGreaterThan(5);
    for (NeededPiece flap : flaps) {
      Opening opening = flap.piece().opening();
      DrawnPage page = page(flap.name() + " flap");
      List<DrawnPage.Line> outline = new ArrayList<>(page.lines("cut"));
      assertThat(outline).as(flap.name()).hasSize(3);
      outline.addAll(page.lines("crease"));
      assertThat(outline).as(flap.name()).hasSize(4);
      assertThat(DrawnPage.width(outline))
          .as(flap.name())
          .isCloseTo(onModel(opening, opening.rect().width()), within(CLOSE));
      assertThat(DrawnPage.height(outline))
          .as(flap.name())
          .isCloseTo(onModel(opening, opening.rect().height()), within(CLOSE));
    }
  }

  @Test
  void every_page_has_a_bar_of_100_mm_and_a_caution_and_nothing_lies_off_it() {
    for (PaperPage printed : PAGES) {
      DrawnPage page = DrawnPage.of(printed);
      List<DrawnPage.Line> bar =
          page.all().stream().filter(line -> line.look().equals("check")).toList();
      assertThat(DrawnPage.width(bar)).isCloseTo(100, within(CLOSE));
      assertThat(page.text()).contains("print at 100 %").contains("! Blades: cut away");
      liesOnItsPage(printed);
    }
  }

  /** Weight and dashes say what color would; each kind on a page has its words beside a sample. */
  @Test
  void kinds_of_lines_are_told_apart_without_color_and_named_in_words() {
    List<Stroke> named =
        List.of(Stroke.values()).stream().filter(kind -> !kind.words().isEmpty()).toList();
    assertThat(named)
        .extracting(kind -> kind.weight() + " " + kind.dashes())
        .doesNotHaveDuplicates();
    assertThat(named).extracting(Stroke::words).doesNotHaveDuplicates();
    for (PaperPage printed : PAGES) {
      DrawnPage page = DrawnPage.of(printed);
      for (Stroke kind : named) {
        boolean isDrawn = !page.lines(kind.look()).isEmpty();
        assertThat(!isDrawn || page.text().contains(kind.words()))
            .as("%s on %s", kind, printed.name())
            .isTrue();
      }
    }
  }

  @Test
  void two_setups_share_a_piece_only_where_it_fits_both() {
    List<NeededPiece> pieces = NeededPiece.of(DEMO);
    assertThat(pieces).extracting(NeededPiece::name).doesNotHaveDuplicates();
    for (NeededPiece needed : pieces) {
      for (String opening : needed.openings()) {
        Opening other = DEMO.plan().workshop().opening(opening).orElseThrow();
        assertThat(onModel(other, other.rect().width()))
            .as("%s for %s", needed.name(), opening)
            .isCloseTo(needed.piece().width(), within(CLOSE));
        assertThat(onModel(other, other.rect().height()))
            .isCloseTo(needed.piece().height(), within(CLOSE));
      }
    }
    assertThat(pieces).extracting(NeededPiece::name).contains("sailmakers-lamp", "customs-lamp");
  }

  @Test
  void the_list_has_every_piece_with_its_size_and_how_many_to_cut() {
    String list = page("pieces").text();
    List<NeededPiece> pieces = NeededPiece.of(DEMO);
    for (NeededPiece needed : pieces) {
      assertThat(list).contains(needed.name());
      assertThat(list).contains(Millimeters.of(needed.piece().width(), needed.piece().height()));
    }
    int fresh =
        DEMO.shooting().setups().stream()
            .flatMap(setup -> setup.steps().stream())
            .mapToInt(step -> step.fresh().size())
            .sum();
    assertThat(pieces.stream().mapToInt(NeededPiece::fresh).sum()).isEqualTo(fresh);
    assertThat(list).contains("99.1 × 152.4 mm", "114.3 × 167.6 mm", "1 + 1 spare", "1 spare");
  }

  @Test
  void pieces_of_any_size_and_movement_stay_on_their_pages() {
    FilmSheet film = SampleFilm.at(FrameRate.FPS_24).sheet();
    Random random = new Random(19);
    for (int trial = 0; trial < 24; trial++) {
      List<Opening.Side> sides = List.of(Opening.Side.values());
      List<Opening.Motion> motions =
          List.of(
              new Opening.Hinged(sides.get(random.nextInt(4)), 90),
              new Opening.Slides(sides.get(random.nextInt(4)), 0),
              new Opening.LiftsOff(40),
              new Opening.Iris(50),
              new Opening.Brightens(80),
              new Opening.Values(List.of(1.0, 2.0), "mm"));
      Opening opening =
          new Opening(
              "lamp-" + "x".repeat(random.nextInt(30)),
              new Rect(1, 1, 0.1 + 5 * random.nextDouble(), 0.1 + 5 * random.nextDouble()),
              film.plan().workshop().artwork().models().get(0).name(),
              motions.get(trial % motions.size()),
              List.of(new Support("thread", Optional.empty(), Optional.of(200.0), "thread")),
              new Where("quay.yaml", "line 1"));
      NeededPiece needed =
          new NeededPiece(
              Piece.of(opening, film.plan().workshop().artwork()), List.of("x"), List.of("1"), 0);
      for (PaperPage page : new CuttingSheets(film).pages(List.of(needed))) {
        liesOnItsPage(page);
      }
    }
  }

  /** Squares of 1 m: a lamp of 6 by 12 m would take more than 200 pages. */
  @Test
  void a_piece_too_large_for_tiles_is_told_on_the_list() {
    FilmSheet film = SampleFilm.at(FrameRate.FPS_24).sheet();
    Artwork.Model lamp = film.plan().workshop().artwork().models().get(0);
    Artwork huge = new Artwork(1000, 24, 13.5, List.of(), 0, List.of(lamp));
    Opening opening = film.plan().workshop().openings().get(0);
    NeededPiece needed =
        new NeededPiece(Piece.of(opening, huge), List.of("lamp-1"), List.of("1"), 0);
    assertThat(new CuttingSheets(film).pages(List.of(needed))).isEmpty();
    DrawnPage list = DrawnPage.of(new PieceList(film).pages(List.of(needed), true).get(0));
    assertThat(list.text()).contains("too large to print in tiles: draw it by its sizes");
    assertThat(page("pieces").text()).doesNotContain("too large");
  }

  /** Two lamps of 2 by 4 squares of an inch, three times as large: 152.4 by 304.8 mm. */
  @Test
  void a_piece_larger_than_the_page_is_whole_again_when_its_tiles_are_joined() {
    List<PaperPage> pages = PaperSheets.cutting(SampleFilm.at(FrameRate.FPS_24).sheet());
    DrawnPage upper = page(pages, "lamp-1 flap A1");
    DrawnPage lower = page(pages, "lamp-1 flap B1");
    double down = crossOf(upper, true) - crossOf(lower, false);
    double top = DrawnPage.top(upper.lines("cut"));
    List<DrawnPage.Line> below = lower.lines("cut");
    double bottom = DrawnPage.top(below) + DrawnPage.height(below) + down;
    assertThat(bottom - top).isCloseTo(304.8, within(CLOSE));
    assertThat(DrawnPage.top(below) + down)
        .as("pages overlap by 10 mm")
        .isCloseTo(
            DrawnPage.top(upper.lines("cut")) + DrawnPage.height(upper.lines("cut")) - 10,
            within(CLOSE));
    assertThat(page(pages, "lamp-1 flap A1").text()).contains("overlaps B1: lay cross on cross");
  }

  /** Height of the crosses nearest the joint. */
  private static double crossOf(DrawnPage page, boolean atFoot) {
    List<Double> heights =
        page.lines("register").stream()
            .filter(line -> line.y1() == line.y2())
            .map(DrawnPage.Line::y1)
            .sorted()
            .toList();
    return atFoot ? heights.get(heights.size() - 1) : heights.get(0);
  }

  /** 24 by 13.5 squares of an inch are 609.6 by 342.9 mm. */
  @Test
  void the_artworks_tiles_join_to_the_whole_artwork() {
    double width = 0;
    double height = 0;
    for (int column = 1; column <= 4; column++) {
      width +=
          DrawnPage.width(
              page("artwork A" + column).lines("grid").stream()
                  .filter(line -> line.y1() == line.y2())
                  .toList());
    }
    for (String row : List.of("A", "B")) {
      height +=
          DrawnPage.height(
              page("artwork " + row + "1").lines("grid").stream()
                  .filter(line -> line.x1() == line.x2())
                  .toList());
    }
    assertThat(width - 3 * 10).isCloseTo(609.6, within(CLOSE));
    assertThat(height - 10).isCloseTo(342.9, within(CLOSE));
  }

  @Test
  void in_the_artwork_only_what_is_photographed_in_it_is_cut() {
    DrawnPage office = page("artwork A2");
    assertThat(office.text()).contains("office-shutter", "on model warehouse");
    DrawnPage lighthouse = page("artwork A4");
    assertThat(lighthouse.text()).contains("lantern", "on model lighthouse");
    assertThat(lighthouse.lines("cut")).isEmpty();
    assertThat(lighthouse.lines("hidden")).hasSize(8);
  }
}
