package org.barsheet.pulse;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.barsheet.clock.Seconds;
import org.barsheet.score.MidiBytes;
import org.barsheet.score.Score;
import org.barsheet.score.ScoreReader;

/** Small scores for tests, each through the reader. */
public final class Scores {

  static final int TICKS_PER_QUARTER = 480;

  private Scores() {}

  public static Score read(MidiBytes file, Path folder) {
    return ScoreReader.read(file.into(folder));
  }

  /** Bars of 4/4 in quarter notes, at 120 to the minute. */
  static MidiBytes quarters(int bars) {
    return quarters(bars, new MidiBytes.Track());
  }

  /** Bars of quarter notes under the events of another track. */
  static MidiBytes quarters(int bars, MidiBytes.Track tempos) {
    MidiBytes.Track notes = new MidiBytes.Track();
    for (long beat = 0; beat < 4L * bars; beat++) {
      notes.note(beat * TICKS_PER_QUARTER, beat * TICKS_PER_QUARTER + 240, 0, 60);
    }
    return MidiBytes.file().track(tempos).track(notes);
  }

  static TempoRequest pinned(TempoRequest.Pin... pins) {
    return request(TempoRequest.Pickup.AUTO, 1, "", List.of(pins));
  }

  static TempoRequest.Pin pin(int bar, String seconds) {
    return new TempoRequest.Pin(bar, Seconds.parse(seconds));
  }

  static TempoRequest request(
      TempoRequest.Pickup pickup, int firstBar, String order, List<TempoRequest.Pin> pins) {
    TempoRequest all = TempoRequest.DEFAULT;
    return new TempoRequest(
        all.tempo(),
        firstBar,
        pickup,
        order.isEmpty() ? all.playedOrder() : Optional.of(order),
        pins,
        all.meter(),
        all.beatsPerMinute(),
        all.feltBeat());
  }
}
