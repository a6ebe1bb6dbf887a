package org.barsheet.cli;

import java.io.PrintWriter;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import org.barsheet.follow.Followed;
import org.barsheet.production.FollowedMusic;
import org.barsheet.production.Production;
import org.barsheet.pulse.Beat;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Lists when every beat of a score sounds in a recording of it. */
@Command(
    name = "follow",
    mixinStandardHelpOptions = true,
    sortOptions = false,
    header = "Lists when every beat of a score sounds in a recording or a played MIDI file.",
    description = {
      "",
      "Confidence goes from 0 to 1; listen to beats below 0.5. Places where the recording and the",
      "score differ are printed separately (standard error).",
      "",
    },
    footer = {
      "",
      "Examples:",
      "  barsheet follow score.mid mix.wav",
      "  barsheet follow score.mid take3.mid --format csv",
    })
final class FollowCommand implements Callable<Integer> {

  @Spec private CommandSpec spec = CommandSpec.create();

  @Parameters(index = "0", paramLabel = "SCORE", description = "A Standard MIDI File (.mid).")
  private Path score = Path.of("");

  @Parameters(
      index = "1",
      paramLabel = "RECORDING",
      description = "WAV or AIFF, with ffmpeg any sound or video, or a played MIDI file.")
  private Path recording = Path.of("");

  @Mixin private FormatOption form = new FormatOption();

  @Override
  public Integer call() {
    FollowedMusic followed = Production.follow(score, recording);
    PrintWriter err = spec.commandLine().getErr();
    followed.differences().forEach(sentence -> err.println("  ? " + sentence));
    table(followed).print(form.as, spec.commandLine().getOut());
    return ExitStatus.DONE;
  }

  private static Table table(FollowedMusic music) {
    Table table = new Table("bar", "beat", "score_seconds", "seconds", "confidence");
    Followed followed = music.followed();
    for (Beat beat : music.music().beats()) {
      double written = music.music().score().tempo().secondsAt(beat.tick()).toDouble();
      table.add(
          beat.bar().number(),
          beat.number(),
          rounded(written, 4),
          rounded(followed.secondsAt(written), 4),
          rounded(followed.confidenceAt(written), 2));
    }
    return table;
  }

  private static BigDecimal rounded(double value, int places) {
    return BigDecimal.valueOf(value).setScale(places, RoundingMode.HALF_UP);
  }
}
