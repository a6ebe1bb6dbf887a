package org.barsheet.clock;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.apache.commons.numbers.fraction.BigFraction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.aggregator.ArgumentsAccessor;
import org.junit.jupiter.params.provider.CsvSource;

class FramesPerBeatTest {

  private static Seconds beatOf(String beatsPerMinute) {
    return new Seconds(Seconds.of(60).dividedBy(Seconds.parse(beatsPerMinute)));
  }

  private static String text(BigFraction number, int places) {
    return new Seconds(number).toDecimal(places).toPlainString();
  }

  /** Bpm of 6-0 to 36-7 frames per beat at 24 fps: 1440 / frames. */
  @ParameterizedTest
  @CsvSource({
    "6, 240.000, 235.102, 230.400, 225.882, 221.538, 217.358, 213.333, 209.455",
    "7, 205.714, 202.105, 198.621, 195.254, 192.000, 188.852, 185.806, 182.857",
    "8, 180.000, 177.231, 174.545, 171.940, 169.412, 166.957, 164.571, 162.254",
    "9, 160.000, 157.808, 155.676, 153.600, 151.579, 149.610, 147.692, 145.823",
    "10, 144.000, 142.222, 140.488, 138.795, 137.143, 135.529, 133.953, 132.414",
    "11, 130.909, 129.438, 128.000, 126.593, 125.217, 123.871, 122.553, 121.263",
    "12, 120.000, 118.763, 117.551, 116.364, 115.200, 114.059, 112.941, 111.845",
    "13, 110.769, 109.714, 108.679, 107.664, 106.667, 105.688, 104.727, 103.784",
    "14, 102.857, 101.947, 101.053, 100.174, 99.310, 98.462, 97.627, 96.807",
    "15, 96.000, 95.207, 94.426, 93.659, 92.903, 92.160, 91.429, 90.709",
    "16, 90.000, 89.302, 88.615, 87.939, 87.273, 86.617, 85.970, 85.333",
    "17, 84.706, 84.088, 83.478, 82.878, 82.286, 81.702, 81.127, 80.559",
    "18, 80.000, 79.448, 78.904, 78.367, 77.838, 77.315, 76.800, 76.291",
    "19, 75.789, 75.294, 74.805, 74.323, 73.846, 73.376, 72.911, 72.453",
    "20, 72.000, 71.553, 71.111, 70.675, 70.244, 69.818, 69.398, 68.982",
    "21, 68.571, 68.166, 67.765, 67.368, 66.977, 66.590, 66.207, 65.829",
    "22, 65.455, 65.085, 64.719, 64.358, 64.000, 63.646, 63.297, 62.951",
    "23, 62.609, 62.270, 61.935, 61.604, 61.277, 60.952, 60.632, 60.314",
    "24, 60.000, 59.689, 59.381, 59.077, 58.776, 58.477, 58.182, 57.889",
    "25, 57.600, 57.313, 57.030, 56.749, 56.471, 56.195, 55.922, 55.652",
    "26, 55.385, 55.120, 54.857, 54.597, 54.340, 54.085, 53.832, 53.581",
    "27, 53.333, 53.088, 52.844, 52.603, 52.364, 52.127, 51.892, 51.659",
    "28, 51.429, 51.200, 50.973, 50.749, 50.526, 50.306, 50.087, 49.870",
    "29, 49.655, 49.442, 49.231, 49.021, 48.814, 48.608, 48.403, 48.201",
    "30, 48.000, 47.801, 47.603, 47.407, 47.213, 47.020, 46.829, 46.640",
    "31, 46.452, 46.265, 46.080, 45.896, 45.714, 45.534, 45.354, 45.176",
    "32, 45.000, 44.825, 44.651, 44.479, 44.308, 44.138, 43.969, 43.802",
    "33, 43.636, 43.472, 43.308, 43.146, 42.985, 42.825, 42.667, 42.509",
    "34, 42.353, 42.198, 42.044, 41.891, 41.739, 41.588, 41.439, 41.290",
    "35, 41.143, 40.996, 40.851, 40.707, 40.563, 40.421, 40.280, 40.139",
    "36, 40.000, 39.862, 39.724, 39.588, 39.452, 39.317, 39.184, 39.051"
  })
  void the_click_table_at_24(ArgumentsAccessor row) {
    for (int eighths = 0; eighths < 8; eighths++) {
      FramesPerBeat click = new FramesPerBeat(8L * row.getInteger(0) + eighths);
      assertThat(text(click.beatsPerMinute(FrameRate.FPS_24), 3))
          .isEqualTo(row.getString(eighths + 1));
      assertThat(click).hasToString(row.getInteger(0) + "-" + eighths);
      assertThat(FramesPerBeat.nearest(FrameRate.FPS_24, click.beat(FrameRate.FPS_24)))
          .isEqualTo(click);
    }
  }

  /** Whole bpm as listed on mayersononanimation.blogspot.com, 2006/08. */
  @ParameterizedTest
  @CsvSource({
    "24, 60", "22, 65", "20, 72", "18, 80", "16, 90", "14, 103", "12, 120", "10, 144", "8, 180",
    "6, 240"
  })
  void a_published_list_of_frames_and_metronome_figures(long frames, String beatsPerMinute) {
    assertThat(text(new FramesPerBeat(8 * frames).beatsPerMinute(FrameRate.FPS_24), 0))
        .isEqualTo(beatsPerMinute);
  }

  /** Nearest click of a tempo at 24, and how far it is off after 100 beats (arithmetic). */
  @ParameterizedTest
  @CsvSource({
    "100, 14-3, -2.5", "104, 13-7, 2.9", "108, 13-3, 4.2", "110, 13-1, 3.4", "126, 11-3, -5.4",
    "132, 10-7, -3.4", "140, 10-2, -3.6", "150, 9-5, 2.5", "60, 24-0, 0.0", "72, 20-0, 0.0",
    "80, 18-0, 0.0", "90, 16-0, 0.0", "96, 15-0, 0.0", "120, 12-0, 0.0", "128, 11-2, 0.0",
    "144, 10-0, 0.0", "160, 9-0, 0.0", "180, 8-0, 0.0", "192, 7-4, 0.0", "240, 6-0, 0.0"
  })
  void a_tempo_has_its_nearest_click(String beatsPerMinute, String click, String offBy) {
    FrameRate rate = FrameRate.FPS_24;
    Seconds beat = beatOf(beatsPerMinute);
    FramesPerBeat nearest = FramesPerBeat.nearest(rate, beat);
    assertThat(nearest).hasToString(click);
    BigFraction error =
        nearest.beat(rate).minus(beat).times(100).value().multiply(rate.framesPerSecond());
    assertThat(text(error, 1)).isEqualTo(offBy);
  }

  /** Frames a beat lasts: rate times 60 over bpm. */
  @ParameterizedTest
  @CsvSource({
    "60, 23.9760, 24.0000, 25.0000, 29.9700, 30.0000",
    "72, 19.9800, 20.0000, 20.8333, 24.9750, 25.0000",
    "90, 15.9840, 16.0000, 16.6667, 19.9800, 20.0000",
    "100, 14.3856, 14.4000, 15.0000, 17.9820, 18.0000",
    "112, 12.8443, 12.8571, 13.3929, 16.0554, 16.0714",
    "120, 11.9880, 12.0000, 12.5000, 14.9850, 15.0000",
    "128, 11.2388, 11.2500, 11.7188, 14.0485, 14.0625",
    "144, 9.9900, 10.0000, 10.4167, 12.4875, 12.5000",
    "150, 9.5904, 9.6000, 10.0000, 11.9880, 12.0000",
    "180, 7.9920, 8.0000, 8.3333, 9.9900, 10.0000"
  })
  void frames_per_beat_at_other_rates(ArgumentsAccessor row) {
    List<FrameRate> rates =
        List.of(
            FrameRate.FPS_23_976,
            FrameRate.FPS_24,
            FrameRate.FPS_25,
            FrameRate.FPS_29_97,
            FrameRate.FPS_30);
    for (int i = 0; i < rates.size(); i++) {
      BigFraction frames =
          beatOf(row.getString(0)).value().multiply(rates.get(i).framesPerSecond());
      assertThat(text(frames, 4)).isEqualTo(row.getString(i + 1));
    }
  }

  /** Beats 0 to 8 from frame 0: each rounded once, from its exact time. */
  @ParameterizedTest
  @CsvSource({
    "100, 24, 0 14 29 43 58 72 86 101 115",
    "100, 25, 0 15 30 45 60 75 90 105 120",
    "128, 24, 0 11 23 34 45 56 68 79 90",
    "128, 25, 0 12 23 35 47 59 70 82 94",
    "128, 30, 0 14 28 42 56 70 84 98 113"
  })
  void beats_fall_on_their_nearest_frames(String beatsPerMinute, String rate, String frames) {
    List<Long> found = new ArrayList<>();
    for (int beat = 0; beat <= 8; beat++) {
      found.add(FrameRate.parse(rate).nearestFrame(beatOf(beatsPerMinute).times(beat)));
    }
    assertThat(found.stream().map(String::valueOf).collect(Collectors.joining(" ")))
        .isEqualTo(frames);
  }

  /** Sixty-four rounded beats of 11 frames would end on frame 704. */
  @Test
  void beats_are_multiplied_and_never_added_up() {
    assertThat(FrameRate.FPS_24.nearestFrame(beatOf("128").times(64))).isEqualTo(720);
  }

  @Test
  void a_beat_lasts_an_eighth_of_a_frame_at_least() {
    assertThat(FramesPerBeat.nearest(FrameRate.FPS_24, Seconds.of(1, 10_000)).eighths()).isOne();
    assertThatThrownBy(() -> new FramesPerBeat(0)).isInstanceOf(IllegalArgumentException.class);
  }
}
