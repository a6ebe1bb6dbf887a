package org.barsheet.demo;

import static org.barsheet.demo.Dynamic.MP;
import static org.barsheet.demo.Dynamic.P;
import static org.barsheet.demo.Dynamic.PP;
import static org.barsheet.demo.Dynamic.PPP;
import static org.barsheet.demo.Player.CELLO;
import static org.barsheet.demo.Player.CLARINET;
import static org.barsheet.demo.Player.CONTRABASS;
import static org.barsheet.demo.Player.FLUTE;
import static org.barsheet.demo.Player.HARP;
import static org.barsheet.demo.Player.HORN;
import static org.barsheet.demo.Player.VIOLAS;
import static org.barsheet.demo.Player.VIOLINS;

/**
 * Bars 0 to 8, D dorian at 72: open fifths with no third until the tide turns, a buoy bell, a gull.
 *
 * <p>{@code Dsus2 | Dm Am/C | G/B | Am7 | Fmaj7 | C/E G/D Em7/C | A7sus4 | A}
 */
final class Fog {

  private Fog() {}

  static void write(Music music) {
    music.tempo(0, 1, 72);
    music.mark(1, "A");
    music.word(1, 1, "Fog");
    winds(music);
    strings(music);
    music.play(
        HARP,
        1,
        "D2,A2/1 | r/1 | G2,D3/1 | r/1 | F2,C3/1 | r/1 | A2,E3/1 |"
            + " A3/8 C#4/8 E4/8 A4/8 C#5/8 E5/8 r/4",
        PP,
        P);
    music.strike(Drum.RIDE_BELL, 2, "r/2 x/2 | r/1 | r/4 x/2+4 | r/1 | r/2 x/2", PPP, PP);
  }

  private static void winds(Music music) {
    music.play(HORN, 0, "A3/4 | D4/1 | A3/2 r/2", P, PP);
    music.play(CLARINET, 3, "r/4 D4/8 G4/8 B4/4 A4/4 | G4/2+4 E4/4 | C4/2 r/2", P, PP);
    music.plant(
        Motif.TIDE, Form.TRANSPOSED, 5, "A3/2 E4/4+8 D4/8 | C4/4 B3/4 G3/2", MP, HORN.asWritten());
    music.play(HORN, 7, "A3/1", P);
    music.play(FLUTE, 7, "r/4 E5/8 G5/8 A5/2+1 |", PP, P);
  }

  private static void strings(Music music) {
    music.play(VIOLINS, 1, "E5/1+1 | D5/1 | C5/1 | C5/1 | C5/4 D5/4 E5/2 | D5/1 | C#5/1", PP, P);
    music.play(VIOLINS, 1, "A4/1+1 | B4/1 | G4/1 | A4/1 | G4/1 | G4/1 | A4/1", PP, P);
    music.play(
        VIOLAS, 1, "D4/1 | D4/2 E4/2 | D4/1 | E4/1 | E4/1 | E4/4 B3/4 B3/2 | E4/1 | E4/1", PP);
    music.plant(Motif.TIDE, Form.AS_GIVEN, 1, Motif.TIDE.notes(), MP, CELLO.asWritten());
    music.play(CELLO, 3, "B2/1 | A2/2 E3/2 | F3/1 | G3/2 E3/2 | E3/1 | E3/2 r/2", P, PP);
    music.play(
        CONTRABASS, 1, "D2/1+2 C2/2 | B1/1 | A1/1 | F2/1 | E2/4 D2/4 C2/2 | A1/1 | A1/2 r/2", PP);
    music.swell(1, 3, 60, 100, VIOLINS, VIOLAS);
    music.swell(7, 9, 105, 55, VIOLINS, VIOLAS, CONTRABASS);
  }
}
