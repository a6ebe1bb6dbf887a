package org.barsheet.score;

import java.util.List;
import java.util.OptionalInt;

/** Instrument names of General MIDI System Level 1 (MIDI Manufacturers Association, RP-003). */
public final class GeneralMidi {

  /** The channel of drums as musicians count channels. */
  static final int DRUM_CHANNEL = 10;

  private static final List<String> NAMES =
      List.of(
          """
          Acoustic Grand Piano,Bright Acoustic Piano,Electric Grand Piano,Honky-tonk Piano
          Electric Piano 1,Electric Piano 2,Harpsichord,Clavi
          Celesta,Glockenspiel,Music Box,Vibraphone
          Marimba,Xylophone,Tubular Bells,Dulcimer
          Drawbar Organ,Percussive Organ,Rock Organ,Church Organ
          Reed Organ,Accordion,Harmonica,Tango Accordion
          Acoustic Guitar (nylon),Acoustic Guitar (steel),Electric Guitar (jazz),Electric Guitar (clean)
          Electric Guitar (muted),Overdriven Guitar,Distortion Guitar,Guitar Harmonics
          Acoustic Bass,Electric Bass (finger),Electric Bass (pick),Fretless Bass
          Slap Bass 1,Slap Bass 2,Synth Bass 1,Synth Bass 2
          Violin,Viola,Cello,Contrabass
          Tremolo Strings,Pizzicato Strings,Orchestral Harp,Timpani
          String Ensemble 1,String Ensemble 2,SynthStrings 1,SynthStrings 2
          Choir Aahs,Voice Oohs,Synth Voice,Orchestra Hit
          Trumpet,Trombone,Tuba,Muted Trumpet
          French Horn,Brass Section,SynthBrass 1,SynthBrass 2
          Soprano Sax,Alto Sax,Tenor Sax,Baritone Sax
          Oboe,English Horn,Bassoon,Clarinet
          Piccolo,Flute,Recorder,Pan Flute
          Blown Bottle,Shakuhachi,Whistle,Ocarina
          Lead 1 (square),Lead 2 (sawtooth),Lead 3 (calliope),Lead 4 (chiff)
          Lead 5 (charang),Lead 6 (voice),Lead 7 (fifths),Lead 8 (bass + lead)
          Pad 1 (new age),Pad 2 (warm),Pad 3 (polysynth),Pad 4 (choir)
          Pad 5 (bowed),Pad 6 (metallic),Pad 7 (halo),Pad 8 (sweep)
          FX 1 (rain),FX 2 (soundtrack),FX 3 (crystal),FX 4 (atmosphere)
          FX 5 (brightness),FX 6 (goblins),FX 7 (echoes),FX 8 (sci-fi)
          Sitar,Banjo,Shamisen,Koto
          Kalimba,Bag pipe,Fiddle,Shanai
          Tinkle Bell,Agogo,Steel Drums,Woodblock
          Taiko Drum,Melodic Tom,Synth Drum,Reverse Cymbal
          Guitar Fret Noise,Breath Noise,Seashore,Bird Tweet
          Telephone Ring,Helicopter,Applause,Gunshot
          """
              .split("[,\n]"));

  private GeneralMidi() {}

  /**
   * The instrument of a program.
   *
   * @param program as the file counts, 0 to 127
   */
  public static String instrument(int program) {
    return NAMES.get(program);
  }

  /** The program, from 0, of an instrument by its General MIDI name; empty for any other name. */
  public static OptionalInt programOf(String instrument) {
    int program = NAMES.indexOf(instrument);
    return program < 0 ? OptionalInt.empty() : OptionalInt.of(program);
  }
}
