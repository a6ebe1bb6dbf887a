package org.barsheet.recording;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/** Invented music of several players, as samples: tones with partials, an attack and a decay. */
final class Ensemble {

  static final int RATE = 24_000;

  /**
   * One tone.
   *
   * @param player who plays it
   * @param at seconds
   */
  record Tone(int player, int pitch, double at, double length) {}

  private final List<Tone> tones = new ArrayList<>();

  /** Music of some length in seconds: each player strikes now and then on eighths of a pulse. */
  Ensemble(Random random, double seconds, int players) {
    double eighth = 0.2 + 0.1 * random.nextDouble();
    for (int player = 0; player < players; player++) {
      int pitch = 48 + 5 * player;
      for (double at = 0; at < seconds; ) {
        int eighths = 1 + random.nextInt(4);
        tones.add(new Tone(player, pitch, at, 0.9 * eighths * eighth));
        pitch = Math.max(40, Math.min(88, pitch + random.nextInt(9) - 4));
        at += eighths * eighth;
      }
    }
  }

  /** All players, from a second of the music on. */
  Sound mix(double from, double seconds) {
    return render(tones, from, seconds, 0, 0, new Random((long) (1000 * from) + tones.size()));
  }

  /**
   * One player at home.
   *
   * @param drift in millionths, above 0 where the recorder's clock runs slow
   * @param loose standard deviation of the playing, in seconds
   */
  Sound alone(int player, double from, double seconds, double drift, double loose, Random random) {
    List<Tone> own = tones.stream().filter(tone -> tone.player() == player).toList();
    return render(own, from, seconds, drift, loose, random);
  }

  private static Sound render(
      List<Tone> tones, double from, double seconds, double drift, double loose, Random random) {
    float[] samples = new float[(int) (seconds * RATE)];
    for (Tone tone : tones) {
      double at = (tone.at() + loose * random.nextGaussian() - from) / (1 + drift / 1e6);
      add(samples, tone, at);
    }
    for (int i = 0; i < samples.length; i++) {
      samples[i] += (float) (0.0005 * random.nextGaussian());
    }
    return new Sound(samples, RATE);
  }

  private static void add(float[] samples, Tone tone, double at) {
    double hertz = 440 * Math.pow(2, (tone.pitch() - 69) / 12.0);
    double attack = 0.004 + 0.008 * (tone.player() % 4);
    int first = (int) Math.max(0, Math.ceil(at * RATE));
    int last = (int) Math.min(samples.length, (at + tone.length()) * RATE);
    for (int i = first; i < last; i++) {
      double t = (double) i / RATE - at;
      double strength = 0.1 * Math.min(1, t / attack) * Math.exp(-2 * t);
      double end = Math.min(1, (at + tone.length() - (double) i / RATE) / 0.01);
      for (int k = 1; k <= 4; k++) {
        samples[i] += (float) (strength * end * Math.sin(2 * Math.PI * hertz * k * t) / k);
      }
    }
  }
}
