package org.barsheet.sound;

import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import org.barsheet.film.FilmSheet;
import org.barsheet.timing.SoundLayout;

/**
 * How a film's guide is played with the sounds of a bank: once through to find its strongest
 * sample, so that it can be written with that one at a known strength and nothing cut off.
 *
 * @param sheet the film
 * @param parts the sounds of its parts
 * @param strength what the sound is multiplied by
 * @param notes what a person is told of it, in sentences
 */
public record BankGuide(FilmSheet sheet, BankParts parts, float strength, List<String> notes) {

  /** The strongest sample of the guide, as a share of full scale. */
  static final float PEAK = 0.9f;

  public BankGuide {
    notes = List.copyOf(notes);
  }

  /**
   * Plays the film's score once through.
   *
   * @throws org.barsheet.input.InputException if the bank is damaged, so that it cannot be played
   */
  public static BankGuide of(FilmSheet sheet, SoundBank bank) {
    BankParts parts = BankParts.of(sheet.timing().music().score().parts(), bank);
    float peak;
    try {
      peak = peak(sheet, parts);
    } catch (UncheckedIOException damaged) {
      throw bank.damaged();
    }
    List<String> notes = new ArrayList<>(parts.lacking());
    notes.add(
        peak == 0
            ? bank.name() + " has no sound for any note of the score: the guide is only clicks"
            : "the guide is played with "
                + bank.name()
                + ", its peak at "
                + decibels(PEAK)
                + " dBFS (turned "
                + (peak > PEAK ? "down" : "up")
                + " by "
                + decibels(Math.max(PEAK / peak, peak / PEAK))
                + " dB)");
    return new BankGuide(sheet, parts, peak == 0 ? 1 : PEAK / peak, notes);
  }

  private static String decibels(float share) {
    return String.format(Locale.ROOT, "%.1f", 20 * Math.log10(share));
  }

  private static float peak(FilmSheet sheet, BankParts parts) {
    SoundLayout layout = SoundLayout.of(sheet.timing());
    float[] left = new float[WaveFile.BLOCK];
    float[] right = new float[WaveFile.BLOCK];
    float peak = 0;
    try (BankOrchestra orchestra = new BankOrchestra(sheet, layout, parts.sounds(), 1)) {
      for (long from = 0; from < layout.lengthSamples(); from += WaveFile.BLOCK) {
        Arrays.fill(left, 0);
        Arrays.fill(right, 0);
        orchestra.addTo(left, right, from, WaveFile.BLOCK);
        for (int i = 0; i < WaveFile.BLOCK; i++) {
          peak = Math.max(peak, Math.max(Math.abs(left[i]), Math.abs(right[i])));
        }
      }
    }
    return peak;
  }

  BankOrchestra orchestra(SoundLayout layout) {
    return new BankOrchestra(sheet, layout, parts.sounds(), strength);
  }
}
