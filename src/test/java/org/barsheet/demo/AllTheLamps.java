package org.barsheet.demo;

import static org.barsheet.demo.Dynamic.F;
import static org.barsheet.demo.Dynamic.FF;
import static org.barsheet.demo.Dynamic.MF;
import static org.barsheet.demo.Dynamic.MP;
import static org.barsheet.demo.Dynamic.P;
import static org.barsheet.demo.Player.CELESTA;
import static org.barsheet.demo.Player.CELLO;
import static org.barsheet.demo.Player.CLARINET;
import static org.barsheet.demo.Player.CONTRABASS;
import static org.barsheet.demo.Player.FLUTE;
import static org.barsheet.demo.Player.HARP;
import static org.barsheet.demo.Player.HORN;
import static org.barsheet.demo.Player.VIOLAS;
import static org.barsheet.demo.Player.VIOLINS;

import org.barsheet.demo.Player.Doubling;

/**
 * Bars 68 to 79, D major, a tempo, tutti: the whole quay lights.
 *
 * <p>{@code Dmaj7 Em7/G | D Bm7 | Gmaj7 | Bm7 | F Gm7/Bb | F C/E | Bbmaj7 | C | Dmaj7 Em7/G | Bm7
 * Gmaj7 | D/A A7 | D}
 */
final class AllTheLamps {

  private static final Doubling[] TUTTI = {
    CELESTA.asWritten(),
    CELESTA.octaveUp(),
    FLUTE.asWritten(),
    VIOLINS.asWritten(),
    VIOLINS.octaveDown(),
    CLARINET.octaveDown()
  };

  private AllTheLamps() {}

  static void write(Music music) {
    music.tempo(68, 1, 96);
    music.mark(68, "F");
    music.word(68, 1, "a tempo");
    music.cuePoint(68, 1, "All the lamps");
    returns(music);
    melody(music);
    winds(music);
    lowStrings(music);
    harp(music);
    percussion(music);
  }

  private static void returns(Music music) {
    music.plant(Motif.GLIMMER, Form.AS_GIVEN, 68, Motif.GLIMMER.notes(), FF, TUTTI);
    music.plant(
        Motif.TIDE,
        Form.TONAL,
        70,
        "G3/2 D4/4+8 C#4/8 | B3/4 A3/4 F#3/2",
        FF,
        HORN.asWritten(),
        CELLO.octaveDown());
    music.plant(
        Motif.GLIMMER,
        Form.TRANSPOSED,
        72,
        "C6/16 F6/16 E6/8 C6/4 D6/8 G5/8 Bb5/4 | A5/2",
        FF,
        FLUTE.asWritten(),
        VIOLINS.asWritten(),
        VIOLINS.octaveDown(),
        CLARINET.octaveDown());
    music.plant(Motif.GLIMMER, Form.AS_GIVEN, 76, Motif.GLIMMER.notes(), FF, TUTTI);
  }

  private static void melody(Music music) {
    String afterFirst = "r/2 D5/4 F#5/4 | B5/4+8 A5/8 F#5/4 D5/4 | F#5/2 E5/4 D5/4";
    String afterSecond = "r/2 G5/4 C6/4 | D6/2 A5/4 F5/4 | E6/2 C6/4 G5/4";
    String afterThird = "r/2 B5/4 D6/4 | D6/2 C#6/2 | D6/1";
    music.play(VIOLINS, 69, afterFirst, FF, F);
    music.play(VIOLINS, 69, "r/2 D4/4 F#4/4 | B4/4+8 A4/8 F#4/4 D4/4 | F#4/2 E4/4 D4/4", FF, F);
    music.play(VIOLINS, 73, afterSecond, FF);
    music.play(VIOLINS, 73, "r/2 G4/4 C5/4 | D5/2 A4/4 F4/4 | E5/2 C5/4 G4/4", FF);
    music.play(VIOLINS, 77, afterThird, FF, F);
    music.play(VIOLINS, 77, "r/2 B4/4 D5/4 | D5/2 C#5/2 | D5/1", FF, F);
    music.play(FLUTE, 69, "r/2 D6/4 F#6/4 | B6/4+8 A6/8 F#6/4 D6/4 | F#6/2 E6/4 D6/4", FF, F);
    music.play(FLUTE, 73, afterSecond, FF);
    music.play(FLUTE, 77, afterThird, FF, F);
  }

  private static void winds(Music music) {
    music.play(CLARINET, 69, "r/2 F#4/4 A4/4 | D5/1 | D5/1", F);
    music.play(CLARINET, 73, "r/2 G4/2 | F5/1 | E5/1", F);
    music.play(CLARINET, 77, "r/2 B4/2 | A4/2 G4/2 | F#4/1", F, MF);
    music.play(HORN, 68, "F#4/2 E4/2 | F#4/2 D4/2", F);
    music.play(
        HORN,
        72,
        "F4/2 D4/2 | F4/2 G4/2 | F4/2 D4/2 | E4/2 G4/2 | F#4/2 E4/2 | D4/2 B3/2 | D4/2 C#4/2 | D4/1",
        F,
        MF);
    music.play(
        CELESTA,
        70,
        Textures.ripple(
            "B5 D6 F#6 D6 ; B5 D6 F#6 D6 | B5 D6 A5 D6 ; B5 D6 A5 D6 |"
                + " A5 C6 F5 C6 ; Bb5 D6 G5 D6 | A5 C6 F5 C6 ; G5 C6 E5 C6 |"
                + " D6 F6 Bb5 F6 ; D6 F6 A5 F6 | E6 G6 C6 G6 ; E6 G6 C6 G6"),
        MF);
  }

  private static void lowStrings(Music music) {
    music.play(
        VIOLAS,
        68,
        Textures.pulse(
            "D4,F#4 B3,E4 | D4,F#4 | D4,F#4 | D4,F#4 | C4,F4 D4,F4 | C4,F4 C4,G4 | D4,F4 |"
                + " C4,E4 E4,G4 | D4,F#4 B3,E4 | D4,F#4 D4,G4 | D4,F#4 C#4,G4"),
        F);
    music.play(VIOLAS, 79, "D4,F#4/1", F);
    music.play(CELLO, 68, "F#3/2 G3/2 | A3/2 D3/2", F);
    music.play(
        CELLO,
        72,
        "A3/2 F3/2 | C4/2 G3/2 | F3/2 D3/2 | G3/2 E3/2 | F#3/2 G3/2 | D3/2 B2/2 | A2/2 G3/2 |"
            + " F#3/1",
        F);
    music.play(
        CONTRABASS,
        68,
        "D2/2 G1/2 | D2/2 B1/2 | G1/1 | B1/1 | F2/2 Bb1/2 | F2/2 E2/2 | Bb1/1 | C2/1 | D2/2 G1/2 |"
            + " B1/2 G1/2 | A1/1 | D2/1",
        F);
    music.swell(79, 80, 118, 70, VIOLINS, VIOLAS, CELLO, CONTRABASS, HORN, FLUTE, CLARINET);
  }

  private static void harp(Music music) {
    music.play(
        HARP,
        68,
        Textures.turn(
            "D3 A3 D4 F#4 ; E3 B3 D4 G4 | D3 A3 D4 F#4 ; B2 F#3 A3 D4 | G2 D3 F#3 B3 |"
                + " B2 F#3 A3 D4 | F3 A3 C4 F4 ; G3 Bb3 D4 F4 | F3 A3 C4 F4 ; E3 G3 C4 E4 |"
                + " Bb2 F3 A3 D4 | C3 G3 C4 E4 | D3 A3 D4 F#4 ; E3 B3 D4 G4 |"
                + " B2 F#3 A3 D4 ; G2 D3 F#3 B3 | A2 D3 F#3 A3 ; A2 E3 G3 C#4"),
        F);
    music.play(HARP, 79, "D2,A2,D3,F#3,A3,D4/1", F);
  }

  private static void percussion(Music music) {
    for (int crash : new int[] {68, 72, 76, 79}) {
      music.strike(Drum.CRASH, crash, "x/1", F);
    }
    music.strike(Drum.BASS_DRUM, 68, Textures.repeat(11, "x/2 x/2"), F, MF);
    music.strike(Drum.TRIANGLE, 68, Textures.repeat(11, "x/8 x/8 x/8 x/8 x/8 x/8 x/8 x/8"), P, MP);
    music.strike(Drum.SNARE, 74, "r/2 x/8 x/16 x/16 x/4 | r/2 x/16 x/16 x/16 x/16 x/8 x/8", MP, F);
    music.strike(Drum.BASS_DRUM, 79, "x/1", F);
  }
}
