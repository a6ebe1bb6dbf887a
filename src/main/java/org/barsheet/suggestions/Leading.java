package org.barsheet.suggestions;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;
import org.barsheet.score.Note;
import org.barsheet.score.Part;
import org.barsheet.score.Score;

/**
 * How much each note of the melody lines is in the lead: the highest that begins or has just begun,
 * in a part that is called a melody, and louder than what sounds about it.
 */
final class Leading {

  /** A note held longer than this many quarter notes leads no more. */
  private static final int HELD = 1;

  private static final Pattern MELODIES =
      Pattern.compile("melod|lead|vocal|voice|voc\\b|sing|solo|theme|tune|soprano|cantus|right");

  private static final Pattern ACCOMPANIMENTS =
      Pattern.compile("bass|pad|chord|arp|accomp|comp\\b|rhythm|harmony|backing|drone|left");

  private final Score score;
  private final long[] onsets;
  private final int[] highest;
  private final double[] loudness;
  private final double[] named;

  Leading(Score score) {
    this.score = score;
    List<Note> notes = score.notes();
    this.onsets = notes.stream().mapToLong(Note::onTick).distinct().toArray();
    this.highest = new int[onsets.length];
    this.loudness = new double[score.parts().size()];
    this.named = score.parts().stream().mapToDouble(Leading::named).toArray();
    findHighest();
    findLoudness();
  }

  private void findHighest() {
    Arrays.fill(highest, -1);
    for (Note note : score.notes()) {
      if (!score.parts().get(note.part()).drums()) {
        long off = Math.min(note.offTick(), note.onTick() + (long) HELD * score.ticksPerQuarter());
        for (int at = index(note.onTick()); at < onsets.length && isHeard(at, note, off); at++) {
          highest[at] = Math.max(highest[at], note.pitch());
        }
      }
    }
  }

  private boolean isHeard(int at, Note note, long off) {
    return onsets[at] == note.onTick() || onsets[at] < off;
  }

  private int index(long tick) {
    int at = Arrays.binarySearch(onsets, tick);
    return at < 0 ? -at - 1 : at;
  }

  /** How much louder than the mean of all parts each part is played on average, as a share. */
  private void findLoudness() {
    double all = 0;
    int parts = 0;
    List<List<Note>> byPart = score.notesByPart();
    for (Part part : score.parts()) {
      List<Note> own = byPart.get(part.index());
      if (!part.drums() && !own.isEmpty()) {
        loudness[part.index()] = own.stream().mapToInt(Note::velocity).average().orElseThrow();
        all += loudness[part.index()];
        parts++;
      }
    }
    double mean = all / Math.max(1, parts);
    for (int part = 0; part < loudness.length; part++) {
      loudness[part] = mean > 0 ? Math.max(-0.3, Math.min(0.3, loudness[part] / mean - 1)) : 0;
    }
  }

  private static double named(Part part) {
    String name = part.name().toLowerCase(Locale.ROOT);
    return MELODIES.matcher(name).find() ? 2 : ACCOMPANIMENTS.matcher(name).find() ? 0.5 : 1;
  }

  /** Whether nothing above a note begins with it or has just begun. */
  boolean isOnTop(Note note) {
    return note.pitch() >= highest[index(note.onTick())];
  }

  /** How much a part is one to lead, 1 for one that nothing is known of. */
  double part(int part) {
    return named[part] * (1 + loudness[part]);
  }
}
