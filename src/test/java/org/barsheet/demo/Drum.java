package org.barsheet.demo;

/** The percussion of the demo score, by its key in the General MIDI percussion map. */
enum Drum {
  BASS_DRUM("C2"),
  SNARE("D2"),
  CRASH("C#3"),
  RIDE("D#3"),
  RIDE_BELL("F3"),
  MARACAS("Bb4"),
  TRIANGLE("A5");

  /** The key in scientific pitch. */
  final String pitch;

  Drum(String pitch) {
    this.pitch = pitch;
  }
}
