package org.barsheet.score;

/**
 * One player's line: the notes of one channel in one track.
 *
 * @param index place in {@link Score#parts}, from 0
 * @param name readable and unique in its score: the track's name, else its instrument, else "part
 *     3"
 * @param instrument General MIDI instrument name of its first program ("Celesta"), "Drums" on
 *     channel 10, or "" where the file names none
 * @param track track in the file, from 0
 * @param channel MIDI channel as musicians count it, 1 to 16
 * @param drums whether its pitches mean drums, not notes
 */
public record Part(
    int index, String name, String instrument, int track, int channel, boolean drums) {

  public Part {
    if (channel < 1 || channel > 16) {
      throw new IllegalArgumentException("no MIDI channel: " + channel);
    }
  }
}
