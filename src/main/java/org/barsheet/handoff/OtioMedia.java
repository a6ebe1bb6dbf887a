package org.barsheet.handoff;

import com.google.gson.JsonElement;
import com.google.gson.JsonNull;
import com.google.gson.JsonObject;
import java.util.Optional;
import org.barsheet.clips.ClipFacts;
import org.barsheet.clock.FrameRate;
import org.barsheet.clock.Seconds;
import org.barsheet.exposure.FileNames;
import org.barsheet.film.FilmSheet;
import org.barsheet.plan.Performer;
import org.barsheet.received.ReceivedClip;

/**
 * A performer's file as a timeline names it. Where the file carries timecode, its ranges count from
 * that, as editing programs expect.
 *
 * @param reference the file, with the range it has where that is known
 * @param firstFrame of the file by its own timecode, at its own rate; 0 where it has none
 */
record OtioMedia(JsonObject reference, long firstFrame) {

  /** The video a performer is asked for; nothing where no file is named. */
  static Optional<OtioMedia> video(FilmSheet sheet, Performer performer) {
    return performer.clip().isEmpty()
        ? Optional.empty()
        : Optional.of(
            received(sheet, performer)
                .map(facts -> known(performer, facts))
                .orElseGet(() -> new OtioMedia(file(performer, JsonNull.INSTANCE), 0)));
  }

  /** What the performer's file says of itself, where it has come. */
  static Optional<ClipFacts> received(FilmSheet sheet, Performer performer) {
    return sheet.clips().stream()
        .filter(clip -> clip.performer().name().equals(performer.name()))
        .findFirst()
        .flatMap(ReceivedClip::facts);
  }

  private static OtioMedia known(Performer performer, ClipFacts facts) {
    Optional<FrameRate> rate = performer.clipRate();
    if (facts.video().isEmpty() || rate.isEmpty()) {
      return new OtioMedia(file(performer, JsonNull.INSTANCE), 0);
    }
    long first = rate.get().nearestFrame(facts.sinceMidnight().orElse(Seconds.ZERO));
    long frames =
        facts.video().get().steady()
            ? facts.video().get().frames()
            : rate.get().nearestFrame(facts.video().get().length());
    JsonObject range = Otio.range(Otio.time(rate.get(), first), Otio.time(rate.get(), frames));
    return new OtioMedia(file(performer, range), first);
  }

  /** The file beside the timeline, or where it will be. */
  static JsonObject file(Performer performer, JsonElement available) {
    return Otio.file("clips/" + FileNames.ofClip(performer), available);
  }
}
