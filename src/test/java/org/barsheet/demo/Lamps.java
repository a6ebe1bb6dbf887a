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
 * Bars 25 to 36 at 96: harp and celesta turn like clockwork while lamp follows lamp, by thirds from
 * D to F and back through B flat and C; then three lamps at once, in stretto.
 *
 * <p>{@code Dmaj7 Em7/G | D | F Gm7/Bb | F | Bb | C | Dmaj7 Em7/G | D Bm7 | D Em7/G | Bm7 A7 | D G
 * | A7sus4 A7}
 */
final class Lamps {

  private Lamps() {}

  static void write(Music music) {
    music.mark(25, "C");
    music.word(25, 1, "Lamp after lamp");
    glimmers(music);
    stretto(music);
    clockwork(music);
    upperStrings(music);
    lowStrings(music);
    music.play(HORN, 29, "D4/1 | E4/1 | F#4/2 E4/2 | D4/1", P, MF);
    music.play(HORN, 35, "r/2 B3/2 | D4/2 C#4/2", MP, MF);
    percussion(music);
  }

  private static void glimmers(Music music) {
    music.plant(Motif.GLIMMER, Form.AS_GIVEN, 25, Motif.GLIMMER.notes(), F, CELESTA.asWritten());
    music.plant(
        Motif.GLIMMER,
        Form.TRANSPOSED,
        27,
        "C5/16 F5/16 E5/8 C5/4 D5/8 G4/8 Bb4/4 | A4/2",
        F,
        CLARINET.asWritten());
    music.plant(
        Motif.GLIMMER,
        Form.ORNAMENTED,
        31,
        "A5/16 D6/16 C#6/16 D6/32 C#6/32 A5/8 B5/16 A5/16"
            + " B5/8 E5/16 F#5/16 G5/8 A5/16 G5/16 | F#5/2",
        F,
        FLUTE.asWritten());
  }

  private static void stretto(Music music) {
    music.plant(Motif.GLIMMER, Form.TRANSPOSED, 33, Motif.GLIMMER.notes(), F, VIOLINS.octaveDown());
    music.plant(
        Motif.GLIMMER,
        Form.TONAL,
        33,
        "r/2 E4/16 A4/16 G4/8 E4/4 | F#4/8 B3/8 D4/4 C#4/2",
        F,
        CLARINET.asWritten());
    music.plant(Motif.GLIMMER, Form.AS_GIVEN, 34, Motif.GLIMMER.notes(), F, FLUTE.asWritten());
    music.play(VIOLINS, 34, "r/2 C#5/4 E5/4 | D5/2 B4/2 | E5/4 D5/4 C#5/2", MF, F);
    music.play(CLARINET, 35, "D4/2 B3/2 | E4/2 G4/2", MP, MF);
    music.play(FLUTE, 36, "r/4 A5/4 G5/4 E5/4", MF);
  }

  private static void clockwork(Music music) {
    music.play(
        HARP,
        25,
        Textures.turn(
            "D3 A3 D4 F#4 ; E3 B3 D4 G4 | D3 A3 D4 F#4 | F3 A3 C4 F4 ; G3 Bb3 D4 F4 |"
                + " F3 A3 C4 F4 | Bb2 F3 Bb3 D4 | C3 G3 C4 E4 | D3 A3 D4 F#4 ; E3 B3 D4 G4 |"
                + " D3 A3 D4 F#4 ; B2 F#3 A3 D4 | D3 A3 D4 F#4 ; E3 B3 D4 G4 |"
                + " B2 F#3 A3 D4 ; A2 E3 G3 C#4 | D3 A3 D4 F#4 ; G2 D3 G3 B3 |"
                + " A2 E3 A3 D4 ; A2 E3 G3 C#4"),
        P,
        MP);
    music.play(
        CELESTA,
        27,
        Textures.ripple(
            "A5 C6 F5 C6 ; Bb5 D6 G5 D6 | A5 C6 F5 C6 ; A5 C6 F5 C6 | D6 F6 Bb5 F6 ; D6 F6 Bb5 F6 |"
                + " E6 G6 C6 G6 ; E6 G6 C6 G6 | F#5 A5 D5 A5 ; G5 B5 E5 B5 |"
                + " F#5 A5 D5 A5 ; F#5 A5 D5 A5"),
        PP);
  }

  private static void upperStrings(Music music) {
    music.play(
        VIOLINS,
        28,
        "r/2 A4/4 C5/4 | D5/4+8 E5/8 F5/4 A5/4 | G5/4+8 A5/8 C6/4 E6/4 | D6/2 B5/2 |"
            + " F#5/2 A5/4 r/4",
        MP,
        F);
    music.play(
        VIOLAS,
        25,
        "F#4/2 E4/2 | F#4/1 | F4/1 | F4/1 | F4/1 | E4/2 G4/2 | F#4/2 E4/2 | F#4/1 |"
            + " D4/1 | D4/2 C#4/2 | D4/2 B3/2 | E4/1",
        P,
        MP);
  }

  private static void lowStrings(Music music) {
    music.play(
        CELLO,
        25,
        "A3/2 G3/2 | A3/1 | C4/2 D4/2 | C4/1 | Bb3/2 F3/2 | G3/2 E3/2 | A3/2 G3/2 |"
            + " A3/1 | F#3/2 E3/2 | D3/2 E3/2 | F#3/2 B3/2 | A3/2 G3/2",
        P,
        MF);
    music.play(
        CONTRABASS,
        25,
        "D2/8 r/4+8 G1/8 r/4+8 | D2/8 r/4+8 A1/8 r/4+8 | F2/8 r/4+8 Bb1/8 r/4+8 |"
            + " F2/8 r/4+8 C2/8 r/4+8 | Bb1/8 r/4+8 F2/8 r/4+8 | C2/8 r/4+8 G1/8 r/4+8 |"
            + " D2/8 r/4+8 G1/8 r/4+8 | D2/8 r/4+8 B1/8 r/4+8 | D2/8 r/4+8 G1/8 r/4+8 |"
            + " B1/8 r/4+8 A1/8 r/4+8 | D2/8 r/4+8 G1/8 r/4+8 | A1/2 A1/2",
        MP,
        MF);
    music.swell(35, 37, 84, 120, VIOLINS, VIOLAS, CELLO, CONTRABASS, HORN);
  }

  private static void percussion(Music music) {
    music.strike(Drum.MARACAS, 25, Textures.repeat(11, "x/8 x/8 x/8 x/8 x/8 x/8 x/8 x/8"), PPP, P);
    for (int landing : new int[] {26, 28, 32, 34, 35}) {
      music.strike(Drum.TRIANGLE, landing, "x/2", P);
    }
    music.strike(Drum.BASS_DRUM, 31, Textures.repeat(5, "x/2 x/2"), PP, P);
    music.strike(
        Drum.CRASH,
        36,
        "x/16 x/16 x/16 x/16 x/16 x/16 x/16 x/16 x/16 x/16 x/16 x/16 x/16 x/16 x/16 x/16",
        PPP,
        MP);
  }
}
