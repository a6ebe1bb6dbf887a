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
 * Bars 9 to 24, D major with a mixolydian seventh, at 96: the first lamp, and the dusk theme.
 *
 * <p>{@code Dmaj7 Em7/D | D | Bm7 | G A | Gmaj7 Am7/C | Em7 | Cmaj7 | A7sus4 A | D | D/F# A/C# | Bm
 * C#m7b5 | Gmaj7 A7 | Gmaj7#11 Em7/G | D | Em9 | A7sus4 A}
 */
final class Dusk {

  private Dusk() {}

  static void write(Music music) {
    music.tempo(9, 1, 96);
    music.mark(9, "B");
    music.word(9, 1, "Dusk");
    glimmers(music);
    winds(music);
    upperStrings(music);
    lowStrings(music);
    harp(music);
    for (int landing : new int[] {10, 14, 20, 22}) {
      music.strike(Drum.TRIANGLE, landing, "x/2", PP);
    }
  }

  private static void glimmers(Music music) {
    music.plant(Motif.GLIMMER, Form.AS_GIVEN, 9, Motif.GLIMMER.notes(), MF, CELESTA.asWritten());
    music.plant(
        Motif.GLIMMER,
        Form.TRANSPOSED,
        13,
        "D6/16 G6/16 F#6/8 D6/4 E6/8 A5/8 C6/4 | B5/2",
        MF,
        FLUTE.asWritten());
    music.plant(
        Motif.GLIMMER,
        Form.TONAL,
        19,
        "F#4/16 B4/16 A4/8 F#4/4 G4/8 C#4/8 E4/4 | D4/2",
        MF,
        VIOLAS.asWritten());
    music.plant(Motif.GLIMMER, Form.TRANSPOSED, 21, Motif.GLIMMER.notes(), F, VIOLINS.octaveDown());
  }

  private static void winds(Music music) {
    music.play(
        CLARINET, 10, "r/2 F#4/8 A4/8 D5/4 | D5/4+8 C#5/8 B4/4 F#4/4 | D5/4 B4/4 C#5/2", MP, P);
    music.play(CLARINET, 15, "E4/4 G4/4 B4/4+8 A4/8 | A4/4 D5/4 C#5/2", P, MP);
    music.play(HORN, 20, "r/2 A3/2 | B3/1 | F#3/1 | B3/1 | A3/1", P, MP);
    music.play(FLUTE, 24, "r/4 E5/8 A5/8 G5/4 E5/4", P, MP);
    music.play(CELESTA, 16, "r/2 E6/8 C#6/8 A5/4", PP);
  }

  private static void upperStrings(Music music) {
    music.play(
        VIOLINS, 9, "A4/1 | A4/1 | A4/1 | B4/2 A4/2 | B4/2 A4/2 | G4/1 | G4/1 | G4/1", PPP, P);
    music.play(
        VIOLINS,
        17,
        "A4/4+8 B4/8 D5/4 F#5/4 | E5/4+8 D5/8 C#5/4 A4/4 | D5/2 E5/2 | F#5/2 E5/4 C#5/4",
        MP,
        MF);
    music.play(VIOLINS, 22, "r/2+4 A4/4 | B4/4 D5/4 F#5/4+8 E5/8 | D5/2 C#5/2", MF, MP);
    music.play(
        VIOLAS,
        9,
        "D4/1 | D4/1 | D4/1 | D4/2 C#4/2 | D4/2 C4/2 | B3/1 | B3/1 | D4/2 C#4/2 |"
            + " F#4/1 | F#4/2 E4/2",
        PPP,
        P);
    music.play(VIOLAS, 20, "r/2 C#4/2 | D4/1 | D4/1 | D4/1 | E4/1", P);
  }

  private static void lowStrings(Music music) {
    music.play(
        CELLO,
        10,
        "F#3/1 | F#3/1 | G3/2 E3/2 | F#3/2 E3/2 | D3/1 | E3/1 | E3/1 |"
            + " D3/4 A3/4 D4/4 A3/4 | A3/2 E3/2 | D3/2 G3/2 | B3/2 G3/2 |"
            + " D3/1 | A3/2 D4/2 | G3/1 | G3/1",
        P,
        MP);
    music.play(
        CONTRABASS,
        10,
        "D2/1 | B1/1 | G1/2 A1/2 | G1/2 C2/2 | E2/1 | C2/1 | A1/1 | D2/1 | F#2/2 C#2/2 |"
            + " B1/2 C#2/2 | G1/2 A1/2 | G1/1 | D2/1 | E1/1 | A1/1",
        P,
        MP);
  }

  private static void harp(Music music) {
    music.play(
        HARP,
        10,
        Textures.ripple("D3 A3 D4 F#4 A4 | B2 F#3 A3 D4 F#4 | G2 D3 G3 B3 ; A2 E3 A3 C#4"),
        PP,
        P);
    music.play(
        HARP,
        14,
        Textures.ripple(
            "E3 G3 B3 D4 G4 | C3 G3 B3 E4 G4 | A2 E3 G3 D4 ; A2 E3 G3 C#4 | D3 A3 D4 F#4 A4 |"
                + " F#2 D3 A3 D4 ; C#3 E3 A3 C#4 | B2 F#3 B3 D4 ; C#3 G3 B3 E4 |"
                + " G2 D3 F#3 B3 ; A2 E3 G3 C#4 | G2 D3 F#3 A3 ; G2 E3 B3 D4 |"
                + " D2 A2 D3 A3 D4 | E2 B2 F#3 G3 B3 | A2 E3 G3 D4 ; A2 E3 G3 C#4"),
        P);
  }
}
