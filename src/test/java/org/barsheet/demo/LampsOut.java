package org.barsheet.demo;

import static org.barsheet.demo.Dynamic.F;
import static org.barsheet.demo.Dynamic.MF;
import static org.barsheet.demo.Dynamic.MP;
import static org.barsheet.demo.Dynamic.P;
import static org.barsheet.demo.Dynamic.PP;
import static org.barsheet.demo.Dynamic.PPP;
import static org.barsheet.demo.Player.CELESTA;
import static org.barsheet.demo.Player.CELLO;
import static org.barsheet.demo.Player.CLARINET;
import static org.barsheet.demo.Player.CONTRABASS;
import static org.barsheet.demo.Player.FLUTE;
import static org.barsheet.demo.Player.HARP;
import static org.barsheet.demo.Player.HORN;
import static org.barsheet.demo.Player.VIOLAS;
import static org.barsheet.demo.Player.VIOLINS;

/**
 * Bars 57 to 67, D minor at 84: the wind puts the lamps out; glimmer in the minor, then upside down
 * into F; the tide rises, and the music broadens to a held breath.
 *
 * <p>{@code Dm Em7b5 | Dm | Bbmaj7 | Gm A7 | Dm C7/E | F/A | Dm | Dm Am/C | Gm Am7b5 | Bbmaj7 Em7b5
 * | A7}
 */
final class LampsOut {

  private LampsOut() {}

  static void write(Music music) {
    music.tempo(57, 1, 84);
    music.mark(57, "E");
    music.word(57, 1, "The lamps go out");
    music.cuePoint(57, 1, "Wind");
    music.word(65, 1, "rit.");
    music.tempos(65, 84, 82, 80, 78);
    music.tempos(66, 75, 72, 69, 66);
    music.tempos(67, 62, 58);
    returns(music);
    winds(music);
    upperStrings(music);
    lowStrings(music);
    harp(music);
    percussion(music);
  }

  private static void returns(Music music) {
    music.plant(
        Motif.GLIMMER,
        Form.TONAL,
        57,
        "A5/16 D6/16 C6/8 A5/4 Bb5/8 E5/8 G5/4 | F5/2",
        MP,
        CELESTA.asWritten());
    music.plant(
        Motif.GLIMMER,
        Form.INVERTED,
        61,
        "D5/16 A4/16 Bb4/8 D5/4 C5/8 G5/8 E5/4 | F5/2",
        MF,
        CLARINET.asWritten());
    music.plant(
        Motif.TIDE,
        Form.AS_GIVEN,
        63,
        Motif.TIDE.notes(),
        MF,
        CELLO.asWritten(),
        CONTRABASS.octaveDown());
    music.plant(
        Motif.GLIMMER,
        Form.TONAL,
        65,
        "D4/16 G4/16 F4/8 D4/4 Eb4/8 A3/8 C4/4 | Bb3/2",
        MF,
        VIOLAS.asWritten());
  }

  private static void winds(Music music) {
    music.play(FLUTE, 59, "r/4 D5/4 F5/4 A5/4 | Bb5/4+8 A5/8 G5/4 E5/4", P, PP);
    music.play(HORN, 64, "r/2 E4/2 | D4/2 C4/2 | D4/2 E4/2 | E4/2", P, MF);
    music.play(CLARINET, 66, "r/2 G4/8 Bb4/8 D5/8 E5/8 | G5/8 E5/8 A5/4", P, F);
    music.play(FLUTE, 67, "A5/16 C#6/16 E6/16 G6/16 A6/4", MF, F);
  }

  private static void upperStrings(Music music) {
    music.play(VIOLINS, 57, "F4/2 E4/2 | F4/1 | A4/1 | Bb4/2 A4/2 | A4/2 Bb4/2 | A4/1", PP, P);
    music.play(
        VIOLINS,
        63,
        "F5/1 | D5/2 E5/2 | G4/4 Bb4/4 C5/4 Eb5/4 | D5/4 F5/4 G5/4 Bb5/4 | A5/4 C#6/4",
        PP,
        F);
    music.play(
        VIOLAS, 57, "D4/1 | D4/1 | D4/1 | D4/2 C#4/2 | F4/2 C4/2 | C4/1 | A4/1 | A4/1", PP, P);
    music.play(VIOLAS, 66, "r/2 D4/2 | C#4/2", MP, MF);
    music.swell(57, 59, 66, 90, VIOLINS, VIOLAS, CELLO);
    music.swell(65, 68, 76, 124, VIOLINS, VIOLAS, CELLO, CONTRABASS, HORN);
  }

  private static void lowStrings(Music music) {
    music.play(CELLO, 57, "A3/2 G3/2 | F3/1 | F3/1 | G3/2 E3/2 | F3/2 G3/2 | F3/1", PP, P);
    music.play(CELLO, 65, "G3/2 Eb3/2 | F3/2 G3/2 | G3/2", P, MF);
    music.play(CONTRABASS, 58, "D2/1 | Bb1/1 | G1/2 A1/2 | D2/2 E2/2 | A1/1", PP, P);
    music.play(CONTRABASS, 65, "G1/2 A1/2 | Bb1/2 E2/2 | A1/2", P, MF);
  }

  private static void harp(Music music) {
    music.play(
        HARP,
        58,
        "D3,A3,F4/1 | Bb2,F3,D4/1 | G2,D3,Bb3/2 A2,E3,C#4/2 | r/1 | F2,C3,A3/1 | D2,A2/1",
        PP,
        P);
    music.play(HARP, 67, "A3/16 C#4/16 E4/16 G4/16 A4/16 C#5/16 E5/16 G5/16", MP, F);
  }

  private static void percussion(Music music) {
    music.strike(Drum.RIDE_BELL, 58, "r/2 x/2", PPP);
    music.strike(Drum.RIDE_BELL, 62, "r/2 x/2", PPP);
    music.strike(Drum.BASS_DRUM, 63, "x/1 | r/2 x/2", PP);
    music.strike(
        Drum.SNARE,
        66,
        "r/2 x/16 x/16 x/16 x/16 x/16 x/16 x/16 x/16 | x/16 x/16 x/16 x/16 x/16 x/16 x/16 x/16",
        PPP,
        MF);
    music.strike(Drum.CRASH, 67, "x/16 x/16 x/16 x/16 x/16 x/16 x/16 x/16", PP, MP);
  }
}
