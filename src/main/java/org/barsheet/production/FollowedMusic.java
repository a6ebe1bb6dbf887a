package org.barsheet.production;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.barsheet.clock.Seconds;
import org.barsheet.follow.Difference;
import org.barsheet.follow.Followed;
import org.barsheet.follow.PlayedFollower;
import org.barsheet.follow.RecordingFollower;
import org.barsheet.input.InputException;
import org.barsheet.pulse.Music;
import org.barsheet.recording.SoundReader;
import org.barsheet.score.ScoreReader;

/**
 * A score and when it sounds in a recording, or in a played file.
 *
 * @param music the score
 * @param followed its times there
 */
public record FollowedMusic(Music music, Followed followed) {

  /**
   * Follows a score.
   *
   * @param performance a sound file, a video or a played MIDI file
   * @throws InputException if it can't be read or is of another piece
   */
  static FollowedMusic of(Music music, Path performance) {
    try {
      return new FollowedMusic(
          music,
          isMidi(performance)
              ? PlayedFollower.follow(music.score(), ScoreReader.read(performance))
              : RecordingFollower.follow(music.score(), SoundReader.read(performance)));
    } catch (InputException refused) {
      throw refused.inFile(performance.toString());
    }
  }

  private static boolean isMidi(Path file) {
    return file.toString().toLowerCase(Locale.ROOT).matches("(?s).*\\.(mid|midi|smf|kar)");
  }

  /** Where recording and score differ, in sentences with bars and seconds. */
  public List<String> differences() {
    List<String> sentences = new ArrayList<>();
    if (followed.semitones() != 0) {
      sentences.add(
          "the recording sounds "
              + Math.abs(followed.semitones())
              + (Math.abs(followed.semitones()) == 1 ? " semitone " : " semitones ")
              + (followed.semitones() > 0 ? "higher" : "lower")
              + " than the score");
    }
    followed.differences().forEach(one -> sentences.add(sentence(one)));
    return sentences;
  }

  private String sentence(Difference one) {
    String heard = String.format(Locale.ROOT, "%.1f to %.1f s", one.from(), one.to());
    return switch (one.kind()) {
      case LEFT_OUT ->
          "the recording leaves out music from bar "
              + bar(one.fromScore())
              + " to bar "
              + bar(one.toScore())
              + " ("
              + heard
              + ")";
      case ADDED ->
          "the recording has more music than the score at bar "
              + bar(one.fromScore())
              + " ("
              + heard
              + ")";
    };
  }

  private int bar(double scoreSecond) {
    return music
        .bars()
        .barAt(
            music
                .score()
                .tempo()
                .tickAt(Seconds.of(Math.round(scoreSecond * 1000), 1000))
                .longValue())
        .number();
  }
}
