package org.barsheet.demo;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/**
 * Accompaniment figures spelled out from chords. Bars are separated by {@code |}, the chords within
 * a bar by {@code ;}, tones by spaces.
 */
final class Textures {

  private Textures() {}

  /**
   * Eighths that run up a chord's tones and back: eight over the five tones of a whole bar, four up
   * the tones of half a bar.
   */
  static String ripple(String chords) {
    return spell(chords, bar -> bar.size() == 1 ? "0 1 2 3 4 3 2 1" : "0 1 2 3", 8, 1);
  }

  /** Sixteenths that turn on four tones, once a beat. */
  static String turn(String chords) {
    return spell(chords, bar -> "0 2 1 3", 16, 4);
  }

  /** A wave in 3/4: six eighths up four tones and back. */
  static String wave(String chords) {
    return spell(chords, bar -> "0 1 2 3 2 1", 8, 1);
  }

  /** A waltz: a low note, then its chord twice; each bar reads {@code low chord}. */
  static String waltz(String bars) {
    List<String> written = new ArrayList<>();
    for (String bar : bars.split("\\|", -1)) {
      String[] tones = bar.trim().split(" ", -1);
      String low = tones[0];
      String chord = tones[1];
      written.add(low + "/4 " + chord + "/4 " + chord + "/4");
    }
    return String.join(" | ", written);
  }

  /** Repeated eighths, eight a bar, shared equally among the bar's chords. */
  static String pulse(String bars) {
    List<String> written = new ArrayList<>();
    for (String bar : bars.split("\\|", -1)) {
      String[] chords = bar.trim().split(" ", -1);
      List<String> beats = new ArrayList<>();
      for (int eighth = 0; eighth < 8; eighth++) {
        beats.add(chords[eighth * chords.length / 8] + "/8");
      }
      written.add(String.join(" ", beats));
    }
    return String.join(" | ", written);
  }

  /** A phrase with its bar repeated. */
  static String repeat(int times, String bar) {
    return String.join(" | ", Collections.nCopies(times, bar));
  }

  private interface Figure {
    String over(List<String> chordsOfBar);
  }

  private static String spell(String text, Figure figure, int value, int timesPerBar) {
    List<String> bars = new ArrayList<>();
    for (String bar : text.split("\\|", -1)) {
      List<String> chords = List.of(bar.trim().split("\\s*;\\s*", -1));
      List<String> notes = new ArrayList<>();
      for (String chord : chords) {
        String[] tones = chord.split(" ", -1);
        for (int time = 0; time < Math.max(1, timesPerBar / chords.size()); time++) {
          for (String index : figure.over(chords).split(" ", -1)) {
            notes.add(tones[Integer.parseInt(index)] + "/" + value);
          }
        }
      }
      bars.add(String.join(" ", notes));
    }
    return String.join(" | ", bars);
  }
}
