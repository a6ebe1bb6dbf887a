package org.barsheet.score;

/** Meta events of the Standard MIDI File that a score is read from. */
final class MetaType {

  static final int TRACK_NAME = 0x03;
  static final int INSTRUMENT_NAME = 0x04;
  static final int MARKER = 0x06;
  static final int CUE_POINT = 0x07;
  static final int TEMPO = 0x51;
  static final int TIME_SIGNATURE = 0x58;

  private MetaType() {}
}
