package org.barsheet.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.commons.numbers.fraction.BigFraction;
import org.barsheet.clock.Seconds;
import org.barsheet.production.Production;
import org.barsheet.pulse.Beat;
import org.barsheet.pulse.Doubt;
import org.barsheet.pulse.Music;
import org.barsheet.pulse.Reading;
import org.barsheet.pulse.TempoRequest;
import org.barsheet.pulse.TempoRequest.Pin;
import org.barsheet.score.Meter;
import org.barsheet.score.ReadingNote;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Lists the bars and beats of a score with their times. */
@Command(
    name = "beats",
    mixinStandardHelpOptions = true,
    sortOptions = false,
    header =
        "Lists the bars and beats of a MIDI file in seconds, for anyone who needs exact times.",
    description = {"", "Confidence is printed separately (standard error).", ""},
    footer = {
      "",
      "Examples:",
      "  barsheet beats score.mid",
      "  barsheet beats played.mid --meter 3/4 --bpm 92",
      "  barsheet beats played.mid --alternatives    twice as fast, or another first beat?",
      "  barsheet beats score.mid --pin 1=0.52 --pin 33=61.04 --format csv",
    })
final class BeatsCommand implements Callable<Integer> {

  private static final BigFraction SLOWEST = BigFraction.of(10);
  private static final BigFraction FASTEST = BigFraction.of(999);

  private static final Pattern METER = Pattern.compile("(\\d{1,3})/(\\d{1,3})");
  private static final Pattern PIN = Pattern.compile("(\\d{1,6})=(\\d{1,7}(?:\\.\\d{1,9})?)");

  @Spec private CommandSpec spec = CommandSpec.create();

  @Parameters(paramLabel = "SCORE", description = "A Standard MIDI File (.mid).")
  private Path score = Path.of("");

  @Option(
      names = "--tempo",
      paramLabel = "SOURCE",
      defaultValue = "auto",
      description =
          "Where tempo and bars come from: auto (default), written (the file) or played (the notes).")
  private String tempo = "auto";

  @Option(
      names = "--meter",
      paramLabel = "METER",
      description = "The bars you count, such as 3/4, if the file doesn't tell.")
  private Optional<String> meter = Optional.empty();

  @Option(
      names = "--bpm",
      paramLabel = "BPM",
      description = "Roughly the beat you hear, in bpm, if the file doesn't tell.")
  private Optional<String> bpm = Optional.empty();

  @Option(
      names = "--pin",
      paramLabel = "BAR=SECONDS",
      description = "A bar that begins at a known second; repeat as needed.")
  private List<String> pins = List.of();

  @Option(
      names = "--alternatives",
      description = "Lists other ways to hear the beats instead, and the options for each.")
  private boolean alternatives;

  @Mixin private FormatOption form = new FormatOption();

  @Override
  public Integer call() {
    PrintWriter out = spec.commandLine().getOut();
    if (alternatives) {
      List<Reading> readings = Production.readings(score, request());
      remark(readings.get(0).music());
      ReadingsTable.of(readings).print(form.as, out);
    } else {
      Music music = Production.music(score, request());
      remark(music);
      beats(music).print(form.as, out);
    }
    return ExitStatus.DONE;
  }

  /** What was followed and what is doubtful about it. */
  private void remark(Music music) {
    PrintWriter err = spec.commandLine().getErr();
    err.println(music.sentence());
    for (Doubt doubt : music.doubts()) {
      err.println("  ? " + doubt.sentence());
    }
    for (ReadingNote note : music.score().readingNotes()) {
      err.println("  byte " + note.byteOffset() + ": " + note.sentence());
    }
    boolean hinted = meter.isPresent() || bpm.isPresent();
    boolean sought = music.source() == Music.Source.PLAYED || mode() == TempoRequest.Mode.PLAYED;
    if (hinted && !sought) {
      err.println(
          "  tempo and bars are the file's own; to go by --meter and --bpm, add --tempo played");
    }
  }

  private static Table beats(Music music) {
    Table table = new Table("bar", "beat", "quarter", "seconds", "downbeat");
    for (Beat beat : music.beats()) {
      table.add(
          beat.bar().number(),
          beat.number(),
          Figures.decimal(beat.quarter(), 6),
          beat.seconds().toDecimal(6),
          beat.isDownbeat() && beat.bar().number() > 0 ? 1 : 0);
    }
    return table;
  }

  private TempoRequest request() {
    return new TempoRequest(
        mode(),
        1,
        TempoRequest.Pickup.AUTO,
        Optional.empty(),
        pinned(),
        meter.map(this::meter),
        bpm.map(this::beatsPerMinute),
        Optional.empty());
  }

  private TempoRequest.Mode mode() {
    for (TempoRequest.Mode mode : TempoRequest.Mode.values()) {
      if (mode.name().toLowerCase(Locale.ROOT).equals(tempo)) {
        return mode;
      }
    }
    throw wrong("--tempo '" + tempo + "' is not one of auto, written, played");
  }

  private Meter meter(String text) {
    Matcher matcher = METER.matcher(text);
    if (matcher.matches()) {
      try {
        return new Meter(Integer.parseInt(matcher.group(1)), Integer.parseInt(matcher.group(2)));
      } catch (IllegalArgumentException noMeter) {
        throw wrong("--meter: " + noMeter.getMessage());
      }
    }
    throw wrong("--meter '" + text + "' is not a meter; write 3/4 or 6/8");
  }

  private BigFraction beatsPerMinute(String text) {
    try {
      BigFraction beats = Seconds.parse(text).value();
      if (beats.compareTo(SLOWEST) >= 0 && beats.compareTo(FASTEST) <= 0) {
        return beats;
      }
    } catch (IllegalArgumentException noNumber) {
      // told below
    }
    throw wrong("--bpm '" + text + "' is not a tempo; write bpm, 10 to 999");
  }

  private List<Pin> pinned() {
    List<Pin> list = new ArrayList<>();
    for (String pin : pins) {
      Matcher matcher = PIN.matcher(pin);
      if (!matcher.matches()) {
        throw wrong("--pin '" + pin + "' is not a pin; write BAR=SECONDS, 33=61.04");
      }
      list.add(new Pin(Integer.parseInt(matcher.group(1)), Seconds.parse(matcher.group(2))));
    }
    return list;
  }

  private ParameterException wrong(String sentence) {
    return new ParameterException(spec.commandLine(), sentence);
  }
}
