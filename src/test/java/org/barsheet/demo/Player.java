package org.barsheet.demo;

/**
 * Who plays in the demo score. Pitches are sounding MIDI keys (60 is middle C). The ranges are
 * those of a professional player (common practice, no source).
 */
enum Player {
  FLUTE("Flute", 73, 0, 60, 96, 52),
  CLARINET("Clarinet", 71, 1, 50, 94, 74),
  HORN("Horn", 60, 2, 41, 77, 40),
  CELESTA("Celesta", 8, 3, 60, 108, 84),
  HARP("Harp", 46, 4, 24, 103, 24),
  VIOLINS("Violins", 48, 5, 55, 100, 34),
  VIOLAS("Violas", 48, 6, 48, 88, 78),
  CELLO("Cello", 42, 7, 36, 76, 90),
  CONTRABASS("Contrabass", 43, 8, 24, 60, 98),
  PERCUSSION("Percussion", 0, 9, 35, 81, 64);

  /** The track name. */
  final String title;

  /** The General MIDI program, counted from 0. */
  final int program;

  /** The MIDI channel, counted from 0. */
  final int channel;

  final int lowestKey;
  final int highestKey;

  /** The seat in the stereo image: 0 left, 64 middle, 127 right. */
  final int pan;

  Player(String title, int program, int channel, int lowestKey, int highestKey, int pan) {
    this.title = title;
    this.program = program;
    this.channel = channel;
    this.lowestKey = lowestKey;
    this.highestKey = highestKey;
    this.pan = pan;
  }

  Doubling asWritten() {
    return new Doubling(this, 0);
  }

  Doubling octaveUp() {
    return new Doubling(this, 1);
  }

  Doubling octaveDown() {
    return new Doubling(this, -1);
  }

  /**
   * A player joining in a line at some octave.
   *
   * @param octaves how many octaves above what is written
   */
  record Doubling(Player player, int octaves) {}
}
