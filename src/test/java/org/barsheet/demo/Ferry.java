package org.barsheet.demo;

import static org.barsheet.demo.Dynamic.F;
import static org.barsheet.demo.Dynamic.MF;
import static org.barsheet.demo.Dynamic.MP;
import static org.barsheet.demo.Dynamic.P;
import static org.barsheet.demo.Dynamic.PP;
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
 * Bars 37 to 56, a waltz at 108 in B flat with a lydian fourth: the ferry comes in on the swell;
 * its wake ebbs into G minor and to the edge of D minor.
 *
 * <p>{@code Bb | Bb | F/A | Gm7 | Ebmaj7 | C7/E | F7sus4 | F7 | Bb Cm7/Eb | Bb | Eb | Ebmaj7/D |
 * Fm7 | Cm7 | Gm | Gm/F | Ebmaj7 | Bb/D | Em7b5 | A7}
 */
final class Ferry {

  private Ferry() {}

  static void write(Music music) {
    music.tempo(37, 1, 108);
    music.mark(37, "D");
    music.word(37, 1, "The ferry");
    music.cuePoint(37, 2, "Ferry horn");
    returns(music);
    winds(music);
    violins(music);
    swell(music);
    harp(music);
    percussion(music);
  }

  private static void returns(Music music) {
    music.plant(
        Motif.TIDE,
        Form.TONAL,
        37,
        "r/4 Bb3/2 | F4/4+8 Eb4/8 D4/4 | C4/4 A3/2",
        F,
        HORN.asWritten());
    music.plant(
        Motif.GLIMMER,
        Form.TRANSPOSED,
        44,
        "r/2 F5/16 Bb5/16 A5/8 | F5/4 G5/8 C5/8 Eb5/4 | D5/2",
        F,
        FLUTE.asWritten());
    music.plant(
        Motif.GLIMMER,
        Form.AUGMENTED,
        47,
        "r/4 Bb5/8 Eb6/8 D6/4 | Bb5/2 C6/4 | F5/4 Ab5/2 | G5/1",
        F,
        VIOLINS.asWritten());
  }

  private static void winds(Music music) {
    music.play(HORN, 40, "Bb3/2+4 | Bb3/2+4 | C4/2+4 | Bb3/2+4 | A3/2 r/4", MF, P);
    music.play(HORN, 47, "G3/2+4 | G3/2+4 | Ab3/2+4 | G3/2+4", P, MP);
    music.play(HORN, 53, "Bb3/2+4 | Bb3/2+4 | Bb3/2+4 | A3/2+4", MP, P);
    music.play(CLARINET, 41, "Bb4/2+4 | Bb4/2 C5/4 | Bb4/2 C5/4 | C5/2 A4/4", P, MP);
    music.play(
        CLARINET,
        46,
        "D4/4 F4/4 Bb4/4 | Bb4/2 G4/4 | G4/2+4 | Ab4/2 F4/4 | G4/2 Eb4/4 | D4/2 r/4",
        MP,
        P);
    music.play(CLARINET, 53, "D5/2 Bb4/4 | Bb4/2 F4/4 | Bb4/2 D5/4 | C#5/2 E5/4", P, MP);
    for (String splash :
        new String[] {
          "38 r/4 D6/8 F6/8 Bb6/4",
          "40 r/4 Bb5/8 D6/8 G6/4",
          "42 r/4 C6/8 E6/8 G6/4",
          "46 r/4 F6/8 Bb6/8 D7/4",
          "52 r/4 D6/8 G6/8 Bb6/4"
        }) {
      music.play(CELESTA, Integer.parseInt(splash.substring(0, 2)), splash.substring(3), P, MP);
    }
  }

  private static void violins(Music music) {
    music.play(VIOLINS, 37, "F5/2+4+2+4 | C5/2+4", MP, MF);
    music.play(
        VIOLINS,
        40,
        "r/4 D5/4 F5/4 | G5/4+8 F5/8 D5/4 | E5/4 G5/4 Bb5/4 | Bb5/2 F5/4 | A5/2 r/4",
        MF,
        F);
    music.play(
        VIOLINS,
        51,
        "r/4 A5/4 Bb5/4 | D6/2 C6/4 | Bb5/2 G5/4 | F5/2 D5/4 | G5/4 E5/4 Bb4/4 | A4/2+4",
        F,
        MP);
  }

  /** The sea itself: waves in the cello, long notes around them. */
  private static void swell(Music music) {
    music.play(
        VIOLAS,
        37,
        "D4/2+4 | D4/2+4 | C4/2+4 | Bb3/2+4 | Bb3/2+4 | C4/2+4 | Bb3/2+4 | A3/2+4 | Bb3/2+4 |"
            + " Bb3/2+4 | Bb3/2+4 | Bb3/2+4 | C4/2+4 | Bb3/2+4 | Bb3/2+4 | D4/2+4 | D4/2+4 |"
            + " D4/2+4 | D4/2+4 | C#4/2+4",
        MP);
    String first =
        Textures.wave(
            "Bb2 F3 Bb3 D4 | Bb2 F3 Bb3 D4 | A2 F3 A3 C4 | G2 D3 G3 Bb3 | Eb2 Bb2 Eb3 G3 |"
                + " E2 C3 G3 Bb3 | F2 C3 F3 Bb3 | F2 C3 F3 A3");
    String second =
        Textures.wave(
            "Bb2 F3 Bb3 D4 | Eb3 G3 Bb3 Eb4 | D3 G3 Bb3 D4 | F2 C3 Eb3 Ab3 | C3 G3 Bb3 Eb4 |"
                + " G2 D3 G3 Bb3 | F2 D3 G3 Bb3 | Eb2 Bb2 D3 G3 | D2 Bb2 F3 Bb3 | E2 Bb2 D3 G3 |"
                + " A2 E3 G3 C#4");
    music.play(CELLO, 37, first + " | Bb2/8 F3/8 Eb3/8 G3/8 Bb3/8 G3/8 | ", MF);
    music.play(CELLO, 46, second, MP, P);
    music.play(
        CONTRABASS,
        37,
        "Bb1/2+4 | Bb1/2+4 | A1/2+4 | G1/2+4 | Eb2/2+4 | E2/2+4 | F2/2+4 | F1/2+4 | Bb1/4 Eb2/2 |"
            + " Bb1/2+4 | Eb2/2+4 | D2/2+4 | F1/2+4 | C2/2+4 | G1/2+4 | F1/2+4 | Eb2/2+4 |"
            + " D2/2+4 | E2/2+4 | A1/2+4",
        F,
        MP);
    for (int crest = 37; crest < 53; crest += 4) {
      music.swell(crest, crest + 2, 84, 118, CELLO, VIOLAS, CONTRABASS);
      music.swell(crest + 2, crest + 4, 118, 84, CELLO, VIOLAS, CONTRABASS);
    }
  }

  private static void harp(Music music) {
    music.play(
        HARP,
        37,
        Textures.waltz(
            "Bb2 F3,Bb3,D4 | F2 F3,Bb3,D4 | A2 F3,A3,C4 | G2 F3,Bb3,D4 | Eb3 G3,Bb3,D4 |"
                + " E3 G3,Bb3,C4 | F2 Eb3,Bb3,C4 | F2 Eb3,A3,C4 | Bb2 G3,Bb3,Eb4 | Bb2 F3,Bb3,D4 |"
                + " Eb3 G3,Bb3,Eb4 | D3 G3,Bb3,D4 | F2 Ab3,C4,Eb4 | C3 G3,Bb3,Eb4 |"
                + " G2 G3,Bb3,D4 | F2 G3,Bb3,D4 | Eb3 G3,Bb3,D4 | D3 F3,Bb3,D4 | E3 G3,Bb3,D4 |"
                + " A2 G3,A3,C#4"),
        MP,
        P);
  }

  private static void percussion(Music music) {
    music.strike(Drum.CRASH, 37, "x/2+4", MF);
    music.strike(Drum.RIDE_BELL, 37, "r/4 x/2", P);
    music.strike(Drum.BASS_DRUM, 37, Textures.repeat(16, "x/4 r/2"), MP, PP);
    music.strike(Drum.RIDE, 38, Textures.repeat(15, "r/4 x/4 x/4"), PP);
    music.strike(Drum.TRIANGLE, 46, "x/2", P);
    music.strike(Drum.TRIANGLE, 50, "x/2", P);
  }
}
