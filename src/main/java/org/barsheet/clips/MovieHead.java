package org.barsheet.clips;

import java.io.IOException;
import java.util.Optional;
import org.barsheet.clips.ClipFacts.Video;
import org.barsheet.clock.Seconds;

/** The movie box of an MP4 or MOV file, wherever it stands. */
final class MovieHead {

  private static final int MOST_TRACKS = 100;

  private final ClipBytes bytes;
  private final Box movie;

  private MovieHead(ClipBytes bytes, Box movie) {
    this.bytes = bytes;
    this.movie = movie;
  }

  static ClipFacts read(ClipBytes bytes) throws IOException, UnreadableClipException {
    return of(bytes).facts();
  }

  /** Finds the movie box. */
  static MovieHead of(ClipBytes bytes) throws IOException, UnreadableClipException {
    boolean known = false;
    long place = 0;
    int boxes = 0;
    // Box by box, so that a file cut short after its movie box is still read.
    while (place + 8 <= bytes.length()) {
      known |= bytes.fourLetters(place + 4).matches("ftyp|moov|mdat|wide|free|skip|pnot");
      if (!known) {
        break;
      }
      if (++boxes > Box.MOST_BOXES) {
        throw new UnreadableClipException("has too many parts before its index");
      }
      Box box = Box.first(bytes, place, bytes.length());
      if (box.name().equals("moov")) {
        return new MovieHead(bytes, box);
      }
      place = box.end();
    }
    throw new UnreadableClipException(
        known
            ? "wasn't finished by the camera: its index is missing"
            : "isn't a WAV, MP4 or MOV file");
  }

  /** Whether one of its tracks sounds. */
  boolean hasSound() throws IOException, UnreadableClipException {
    int tracks = 0;
    for (Box box : Box.between(bytes, movie.body(), movie.end())) {
      if (box.name().equals("trak") && tracks++ < MOST_TRACKS) {
        if (MovieTrack.of(bytes, box).isSound()) {
          return true;
        }
      }
    }
    return false;
  }

  private ClipFacts facts() throws IOException, UnreadableClipException {
    Optional<Video> video = Optional.empty();
    Seconds length = Seconds.ZERO;
    Optional<Seconds> sinceMidnight = Optional.empty();
    boolean sounding = false;
    int tracks = 0;
    for (Box box : Box.between(bytes, movie.body(), movie.end())) {
      if (box.name().equals("trak") && tracks++ < MOST_TRACKS) {
        MovieTrack track = MovieTrack.of(bytes, box);
        if (track.isTimecode() && sinceMidnight.isEmpty()) {
          sinceMidnight = TimecodeSample.sinceMidnight(bytes, box);
        } else if (track.isVideo() && video.isEmpty()) {
          video = Optional.of(track.video());
          length = longer(length, track.length());
        } else if (track.isSound()) {
          sounding = true;
          length = longer(length, track.length());
        }
      }
    }
    if (length.signum() == 0) {
      throw new UnreadableClipException("has neither video nor sound in its index");
    }
    return new ClipFacts(length, video, Optional.empty(), sounding, sinceMidnight);
  }

  private static Seconds longer(Seconds one, Seconds other) {
    return one.compareTo(other) >= 0 ? one : other;
  }
}
