package org.barsheet.demo;

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
 * Bars 80 to 87, D major dying away: glimmer broad in a solo cello, once more in the celesta, and
 * the tide going out under a last ritardando.
 *
 * <p>{@code D | Em7/D | D | Gmaj7#11 Em7/G | D | D/F# A | D | D}
 */
final class Night {

  private Night() {}

  static void write(Music music) {
    music.mark(80, "G");
    music.word(80, 1, "Night");
    music.word(84, 1, "rit.");
    music.tempos(84, 92, 88, 84, 80);
    music.tempos(85, 76, 72, 68, 64);
    music.tempo(86, 1, 60);
    returns(music);
    winds(music);
    strings(music);
    music.play(
        HARP,
        80,
        Textures.ripple("D3 A3 D4 F#4 A4 | D3 B3 D4 E4 G4 | D3 A3 D4 F#4 A4")
            + " | G2,D3,B3/1 | D2,A2,F#3,D4/1 | r/1 | D2,A2,F#3,D4/1 | D2/1",
        P,
        PP);
    music.strike(Drum.TRIANGLE, 82, "x/1", PP);
    music.strike(Drum.TRIANGLE, 84, "x/1", PP);
    music.strike(Drum.RIDE_BELL, 86, "r/2 x/2", PPP);
  }

  private static void returns(Music music) {
    music.plant(
        Motif.GLIMMER,
        Form.AUGMENTED,
        80,
        "A3/8 D4/8 C#4/4 A3/2 | B3/4 E3/4 G3/2 | F#3/1",
        MF,
        CELLO.asWritten());
    music.plant(Motif.GLIMMER, Form.AS_GIVEN, 83, Motif.GLIMMER.notes(), MP, CELESTA.asWritten());
    music.plant(
        Motif.TIDE, Form.TONAL, 84, "D3/2 A3/4+8 G3/8 | F#3/4 E3/4 C#3/2", P, HORN.asWritten());
  }

  private static void winds(Music music) {
    music.play(CLARINET, 82, "r/2 A4/4 D5/4 | B4/1 | A4/1", P, PP);
    music.play(HORN, 86, "D3/1+1", P);
    music.play(FLUTE, 85, "r/2 E5/2 | A5/1+1", PP);
    music.play(CELESTA, 86, "r/2 D6/4 A6/4 | F#6/1", PP, PPP);
  }

  private static void strings(Music music) {
    music.play(VIOLINS, 80, "F#4/1 | E4/1 | F#4/1 | D5/1 | F#4/1 | F#4/2 E4/2 | F#4/1+1", P, PPP);
    music.play(VIOLINS, 86, "E5/1+1", PPP);
    music.play(VIOLAS, 80, "A3/1 | B3/1 | A3/1 | D4/1 | D4/1 | D4/2 C#4/2 | A3/1+1", P, PPP);
    music.play(CELLO, 83, "G3/1 | A2/1 | A2/1 | D3/1+1", P, PP);
    music.play(CONTRABASS, 80, "D2/1+1+1 | G1/1 | D2/1 | F#1/2 A1/2 | D2/1+1", P, PP);
    music.swell(86, 88, 100, 20, VIOLINS, VIOLAS, CELLO, CONTRABASS, HORN, FLUTE);
  }
}
