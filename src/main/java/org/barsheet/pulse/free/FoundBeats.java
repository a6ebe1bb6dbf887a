package org.barsheet.pulse.free;

import java.util.Arrays;
import java.util.List;

/**
 * Beats found in playing.
 *
 * @param beats in order of time
 * @param beatsInBar how many beats a bar was to have
 * @param total how well all of them fit; comparable between searches of one playing
 */
public record FoundBeats(List<FoundBeat> beats, int beatsInBar, double total) {

  /**
   * One beat.
   *
   * @param seconds when it sounds
   * @param place place in the bar, from 0
   */
  public record FoundBeat(double seconds, int place) {}

  public FoundBeats {
    beats = List.copyOf(beats);
  }

  public List<Double> seconds() {
    return beats.stream().map(FoundBeat::seconds).toList();
  }

  /** The beat length in the middle of all lengths in order of size. */
  public double medianLength() {
    double[] lengths = new double[Math.max(1, beats.size() - 1)];
    for (int i = 1; i < beats.size(); i++) {
      lengths[i - 1] = beats.get(i).seconds() - beats.get(i - 1).seconds();
    }
    Arrays.sort(lengths);
    return lengths[lengths.length / 2];
  }
}
