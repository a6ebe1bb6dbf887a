package org.barsheet.clock;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FootageTest {

  /**
   * Sixteen four-perforation frames to the foot, 90 feet a minute at 24
   * (liquisearch.com/35_mm_film/technical_specifications); 100 minutes are 9000 feet
   * (de.zxc.wiki/wiki/Filmfuß).
   */
  @ParameterizedTest
  @CsvSource({
    "0, 0+00",
    "9, 0+09",
    "10, 0+10",
    "15, 0+15",
    "16, 1+00",
    "24, 1+08",
    "40, 2+08",
    "100, 6+04",
    "240, 15+00",
    "720, 45+00",
    "1440, 90+00",
    "14400, 900+00",
    "86400, 5400+00",
    "144000, 9000+00"
  })
  void frames_are_counted_in_feet(long frames, String footage) {
    assertThat(Footage.ofFrames(frames)).hasToString(footage);
    assertThat(Footage.ofFrames(frames).count()).isEqualTo(frames);
  }

  @Test
  void there_is_no_film_before_the_first_frame() {
    assertThatThrownBy(() -> Footage.ofFrames(-1)).isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> new Footage(0, 16)).isInstanceOf(IllegalArgumentException.class);
  }
}
