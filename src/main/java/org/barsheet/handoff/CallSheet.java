package org.barsheet.handoff;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import org.barsheet.clock.FrameSpan;
import org.barsheet.clock.Seconds;
import org.barsheet.exposure.Appearance;
import org.barsheet.exposure.ClipCrop;
import org.barsheet.exposure.FilmSheet;
import org.barsheet.handoff.sound.SoundLayout;
import org.barsheet.handoff.text.Html;
import org.barsheet.plan.Artwork;
import org.barsheet.plan.Film;
import org.barsheet.plan.Opening;
import org.barsheet.plan.Performer;
import org.barsheet.timing.FilmClock;
import org.barsheet.timing.Shot;

/** One performer's page. Times are those of the sound file they play along with. */
final class CallSheet {

  private static final List<String> COLUMNS =
      List.of(
          "panel",
          "you are",
          "bars",
          "ready and still from",
          "seen from",
          "seen until",
          "still until",
          "seen for",
          "film timecode",
          "your part",
          "opens first");

  private static final String STYLE =
      """
      <style>
      @page { margin: 12mm }
      body { font: 10pt/1.35 system-ui, Arial, sans-serif; color: #1B1F24; background: #FFFFFF;
        max-width: 60em; margin: 1em auto; padding: 0 1em; font-variant-numeric: tabular-nums }
      h1 { font-size: 16pt; margin: 0 } h2 { font-size: 11pt; margin: 1.2em 0 .3em;
        border-bottom: 2px solid #1B1F24; break-after: avoid }
      p.sub { color: #5B6570; margin: 0 }
      table { border-collapse: collapse; width: 100%; font-size: 8.5pt }
      th { text-align: left; vertical-align: bottom; border-bottom: 1.5px solid #1B1F24 }
      th, td { padding: .25em .35em }
      td { border-bottom: 1px solid #C8CED4; vertical-align: top }
      td:nth-child(-n+2) { overflow-wrap: anywhere; min-width: 7em }
      td:nth-child(n+4):nth-child(-n+9) { white-space: nowrap }
      tr { break-inside: avoid } ul { margin: .3em 0; padding-left: 1.3em }
      .fill { border: 1px solid #5B6570; background: #F4F1EA; display: inline-block;
        min-width: 12em; height: 1.4em }
      </style>
      """;

  private final FilmSheet sheet;
  private final Film film;
  private final SoundLayout sound;
  private final String name;
  private final Performer performer;
  private final List<Appearance> seen;

  CallSheet(FilmSheet sheet, String name, Performer performer, List<Appearance> seen) {
    this.sheet = sheet;
    this.film = sheet.timing().plan().film();
    this.sound = SoundLayout.of(sheet);
    this.name = name;
    this.performer = performer;
    this.seen = seen;
  }

  String page() {
    String title = performer.name() + " · " + sheet.timing().plan().title();
    Html html = new Html();
    html.raw("<!DOCTYPE html>\n<html lang=\"en\">\n<head>\n<meta charset=\"utf-8\"/>\n");
    html.raw("<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\"/>\n");
    html.element("title", title).raw(STYLE).raw("</head>\n<body>\n");
    html.element("h1", "Call sheet: " + title);
    html.raw("<p class=\"sub\">").raw(Html.escaped(subtitle())).raw("</p>\n");
    appearances(html);
    html.element("h2", "Play along").list(playAlong());
    html.element("h2", "Picture").list(picture());
    html.element("h2", "Send").list(send());
    html.raw("<p>By <span class=\"fill\"></span></p>\n");
    html.element("h2", "Take care").list(Cautions.AT_HOME);
    html.element("h2", "Children").list(Cautions.CHILDREN);
    return html.raw("</body>\n</html>\n").toString();
  }

  private String subtitle() {
    String part = performer.part().isEmpty() ? "no part of the score" : performer.part();
    return part
        + " · "
        + FilmWords.counting(film)
        + " · times in minutes:seconds of the sound file";
  }

  private void appearances(Html html) {
    html.element("h2", "When you are seen");
    if (seen.isEmpty()) {
      html.element("p", "You are not seen in any shot yet.");
      return;
    }
    html.raw("<table>\n<thead>").row("th", COLUMNS).raw("</thead>\n<tbody>\n");
    seen.forEach(appearance -> html.row("td", cells(appearance)));
    html.raw("</tbody>\n</table>\n");
  }

  private List<String> cells(Appearance appearance) {
    Shot shot = sheet.timing().shots().get(appearance.shot());
    FrameSpan frames = appearance.frames();
    Seconds from = inSoundFile(frames.start());
    Seconds until = inSoundFile(frames.endExclusive());
    return List.of(
        shot.panel().name() + " " + shot.panel().action(),
        "in " + appearance.opening().name(),
        bars(frames),
        minutes(from.minus(Appearance.HANDLE)),
        minutes(from),
        minutes(until),
        minutes(until.plus(Appearance.HANDLE)),
        until.minus(from).toDecimal(1) + " s, " + frames.length() + " f",
        film.timecode(frames.start()).toString(),
        sounding(appearance),
        opensFirst(appearance.opening().motion()));
  }

  private Seconds inSoundFile(long frame) {
    return film.rate().startOf(frame).plus(Seconds.of(sound.headSeconds()));
  }

  /** {@code 1:02.4}, to the nearest tenth. */
  private static String minutes(Seconds time) {
    BigInteger tenths = time.toDecimal(1).movePointRight(1).toBigInteger().max(BigInteger.ZERO);
    long all = tenths.longValueExact();
    long seconds = all / 10 % 60;
    return all / 600 + ":" + (seconds < 10 ? "0" : "") + seconds + "." + all % 10;
  }

  private String bars(FrameSpan frames) {
    int first = barAt(frames.start());
    int last = barAt(frames.endExclusive() - 1);
    return first == last ? Integer.toString(first) : first + " to " + last;
  }

  private int barAt(long frame) {
    FilmClock clock = sheet.timing().clock();
    Seconds inScore = clock.scoreTime(frame);
    return sheet
        .timing()
        .music()
        .bars()
        .locate(sheet.timing().music().tempo().tickAt(inScore))
        .bar();
  }

  private String sounding(Appearance appearance) {
    if (performer.part().isEmpty() || appearance.sounding() == 0) {
      return "silent";
    }
    long percent = Math.round(100 * appearance.sounding());
    return percent >= 100 ? "sounds" : "sounds " + percent + " % of it";
  }

  private static String opensFirst(Opening.Motion motion) {
    if (motion instanceof Opening.Hinged hinged) {
      return edgeOpposite(hinged.hinge());
    }
    if (motion instanceof Opening.Slides slides) {
      return edgeOpposite(slides.towards());
    }
    return motion instanceof Opening.Iris ? "the middle" : "all of it at once";
  }

  private static String edgeOpposite(Opening.Side side) {
    return switch (side) {
      case LEFT -> "the right edge";
      case RIGHT -> "the left edge";
      case TOP -> "the bottom edge";
      case BOTTOM -> "the top edge";
    };
  }

  private List<String> playAlong() {
    List<String> lines = new ArrayList<>();
    long countIn = sound.clicks().stream().filter(SoundLayout.Click::countIn).count();
    Seconds firstClick = sound.clicks().get(0).at().plus(Seconds.of(sound.headSeconds()));
    lines.add(
        "Play "
            + Handoff.guide(name)
            + " (or "
            + Handoff.click(name)
            + ") over headphones from its very beginning, on another device than the camera.");
    lines.add(
        "The count-in is "
            + countIn
            + (countIn == 1 ? " click" : " clicks")
            + " and begins at "
            + minutes(firstClick)
            + ".");
    lines.add(clap());
    lines.add("Clap once more, in the picture, after the music has ended.");
    lines.add(
        "Be ready and still 2 s before you are seen; keep still 2 s after. Do one take in one go,"
            + " from before the count-in to after the last clap.");
    return lines;
  }

  /** On the pop or else the first click, unless the plan says where the clap is. */
  private String clap() {
    FilmClock clock = sheet.timing().clock();
    Seconds musicStart = clock.rate().startOf(clock.musicStartFrame());
    Seconds agreed = film.pop().map(Seconds.ZERO::minus).orElse(sound.clicks().get(0).at());
    Seconds at = performer.clap().map(Performer.Clap::at).orElse(agreed.minus(musicStart));
    Seconds inFile = at.plus(musicStart).plus(Seconds.of(sound.headSeconds()));
    BigDecimal fromMusic = FilmWords.plain(at.toDecimal(3));
    return "Clap once, in the picture, "
        + with()
        + minutes(inFile)
        + " (that is "
        + fromMusic
        + " s from the music's start).";
  }

  private String with() {
    if (performer.clap().isPresent()) {
      return "at ";
    }
    return film.pop().isPresent()
        ? "together with the pop at "
        : "together with the first click at ";
  }

  private List<String> picture() {
    List<String> lines = new ArrayList<>();
    for (Opening opening : seen.stream().map(Appearance::opening).distinct().toList()) {
      lines.add(shape(opening));
      backing(opening).ifPresent(lines::add);
    }
    lines.add("Look into the lens unless the director asks for something else.");
    lines.add("Nothing shiny, no fine stripes or checks.");
    lines.add(
        "Exposure, white balance and focus set by hand and left alone; "
            + film.rate()
            + " frames a second if the camera has it, else whatever it has, never variable.");
    return lines.stream().distinct().toList();
  }

  private String shape(Opening opening) {
    double wide = opening.rect().wide();
    double high = opening.rect().high();
    String hold = high > wide ? "upright" : high < wide ? "lying" : "either way";
    return opening.name()
        + " is "
        + FilmWords.decimal(wide).toPlainString()
        + " wide by "
        + FilmWords.decimal(high).toPlainString()
        + " high: hold the camera "
        + hold
        + used(opening)
        + ".";
  }

  /** How much of the clip's picture is seen. */
  private String used(Opening opening) {
    return ClipCrop.of(performer, opening.rect())
        .map(
            crop ->
                "; of your "
                    + size(performer.clipWidth(), performer.clipHeight())
                    + " picture "
                    + size(Math.round(crop.wide()), Math.round(crop.high()))
                    + " in the middle is used")
        .orElse("");
  }

  private static String size(long wide, long high) {
    return wide + " × " + high;
  }

  private Optional<String> backing(Opening opening) {
    return sheet
        .timing()
        .plan()
        .artwork()
        .model(opening.model())
        .map(Artwork.Model::backing)
        .filter(backing -> !backing.isEmpty())
        .map(backing -> "The backing is " + backing + ": wear nothing of that colour.");
  }

  private List<String> send() {
    List<String> lines = new ArrayList<>();
    String clip = performer.clip().isEmpty() ? performer.name() + ".mov" : performer.clip();
    lines.add("One file named " + FileNames.safe(clip) + ", as the camera recorded it.");
    for (Appearance appearance : seen) {
      Shot shot = sheet.timing().shots().get(appearance.shot());
      lines.add("Panel " + shot.panel().name() + ": " + piece(appearance) + ".");
    }
    return lines;
  }

  /** Visible frames and a handle on either side; the clip's frames where the clap is known. */
  private String piece(Appearance appearance) {
    FrameSpan frames = appearance.frames();
    Seconds seenFor = film.rate().startOf(frames.length());
    String length =
        seenFor.plus(Appearance.HANDLE).plus(Appearance.HANDLE).toDecimal(1)
            + " s with the handles";
    OptionalLong first = appearance.clipFrameAt(sheet.timing().clock(), frames.start());
    return first.isPresent()
        ? length + ", seen from frame " + first.getAsLong() + " of the clip"
        : length;
  }
}
