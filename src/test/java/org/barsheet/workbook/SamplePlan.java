package org.barsheet.workbook;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import org.apache.commons.numbers.fraction.BigFraction;
import org.barsheet.clock.FrameRate;
import org.barsheet.clock.Seconds;
import org.barsheet.clock.Timecode;
import org.barsheet.motif.Accent;
import org.barsheet.motif.Form;
import org.barsheet.motif.Match;
import org.barsheet.plan.Artwork;
import org.barsheet.plan.Delivery;
import org.barsheet.plan.Film;
import org.barsheet.plan.Hand;
import org.barsheet.plan.Length;
import org.barsheet.plan.MotifRequest;
import org.barsheet.plan.MusicRequest;
import org.barsheet.plan.Opening;
import org.barsheet.plan.Panel;
import org.barsheet.plan.Performer;
import org.barsheet.plan.Place;
import org.barsheet.plan.Plan;
import org.barsheet.plan.PlanText;
import org.barsheet.plan.Rect;
import org.barsheet.plan.Reveal;
import org.barsheet.plan.SentClips;
import org.barsheet.plan.Slow;
import org.barsheet.plan.Where;
import org.barsheet.plan.Workshop;
import org.barsheet.pulse.TempoRequest;

/**
 * The plan of a film made up for a test.
 *
 * @param drawing of every panel
 * @param performers the first one is seen wherever something opens, the others nowhere
 */
record SamplePlan(
    FrameRate rate,
    String title,
    Film.Paper paper,
    Optional<Path> drawing,
    List<String> openings,
    List<String> performers) {

  private static final Where NOWHERE = new Where("sample.yaml", "");

  /** The plan of these scenes, a panel each. */
  Plan of(List<SampleFilm.Scene> scenes) {
    Film film =
        new Film(
            rate,
            Timecode.parse(rate, "01:00:00:00"),
            Seconds.of(2),
            Film.MusicFrom.START_OF_FILE,
            2,
            0,
            12,
            Seconds.ZERO,
            1920,
            1080,
            Optional.of(Film.USUAL_POP),
            paper);
    List<Panel> panels = scenes.stream().map(this::panel).toList();
    return new Plan(
        new PlanText(
            Path.of("sample.yaml"),
            Optional.empty(),
            Set.of("film.frame-rate", "film.first-frame"),
            List.of()),
        title,
        film,
        new MusicRequest(Path.of("sample.mid"), TempoRequest.DEFAULT, Optional.empty()),
        List.of(motif("glimmer"), motif("tide")),
        new Workshop(
            new Artwork(
                25.4,
                24,
                13.5,
                List.of("28786E"),
                40,
                List.of(new Artwork.Model("small-lamp", 3, "green", ""))),
            openings.stream().map(SamplePlan::opening).toList(),
            Optional.empty(),
            Hand.DEFAULT,
            Optional.empty()),
        performers.stream().map(SamplePlan::performer).toList(),
        SentClips.NONE,
        Delivery.NONE,
        panels);
  }

  private static Performer performer(String name) {
    return new Performer(
        name,
        "Cello",
        "",
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        0,
        0,
        List.of(),
        "",
        NOWHERE);
  }

  private static MotifRequest motif(String name) {
    return new MotifRequest(
        name, List.of(), Accent.LAST, Match.TONAL, Set.of(Form.INVERTED), NOWHERE);
  }

  private static Opening opening(String name) {
    return new Opening(
        name,
        new Rect(3, 7, 2, 4),
        "small-lamp",
        new Opening.Hinged(Opening.Side.LEFT, 90),
        List.of(),
        NOWHERE);
  }

  private Panel panel(SampleFilm.Scene scene) {
    return new Panel(
        scene.name(),
        scene.action(),
        new Place.OfMotif("glimmer", OptionalInt.empty(), OptionalInt.empty()),
        new Panel.AutoCut(),
        Optional.of(Length.of(Length.Unit.BARS, BigFraction.of(4))),
        Optional.empty(),
        drawing,
        scene.reveals().stream().map(SamplePlan::reveal).toList(),
        scene.reveals().stream()
            .limit(1)
            .map(asked -> new Panel.Appears(performers.get(0), asked.opening()))
            .toList(),
        false,
        NOWHERE);
  }

  static Reveal reveal(SampleFilm.Asked asked) {
    return new Reveal(
        asked.opening(),
        Reveal.Way.OPENS,
        asked.photographs(),
        asked.each(),
        Slow.END,
        Reveal.EvenIn.ANGLE,
        Reveal.Lands.FULLY_OPEN,
        new Reveal.OnAccent(),
        Optional.empty(),
        Reveal.Taken.NOT_YET,
        NOWHERE);
  }
}
