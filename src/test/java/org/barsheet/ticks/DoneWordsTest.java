package org.barsheet.ticks;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What people write under <i>done</i>. */
class DoneWordsTest {

  private static final List<String> LAMP =
      IntStream.rangeClosed(1, 30).mapToObj("lamp %03d"::formatted).toList();

  private static String marks(String text) {
    return DoneWords.read(text, LAMP).map(marks -> DoneWords.of(marks, LAMP)).orElse("unread");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "x | √",
        "√ | √",
        "1-30 | √",
        "again | again",
        "1-17 | 1-17",
        "001–017 | 1-17",
        "1 to 17 | 1-17",
        "7 | 7",
        "1-17, again 12-14 | 1-11, 15-17, again 12-14",
        "1-5; 9 | 1-5, 9",
        "retake 3 | again 3",
        "3 again | again 3",
        "again 3, 5 | again 3, again 5",
        "3 again, 5 | 5, again 3",
        "x (older) | ''",
      })
  void a_box_says_which_photographs_are_taken(String text, String marks) {
    assertThat(marks(text)).isEqualTo(marks);
  }

  @ParameterizedTest
  @ValueSource(strings = {"maybe", "31", "1-40", "17-12", "1-", "-", "0", "1..3"})
  void what_names_no_photograph_of_the_row_is_not_guessed_at(String text) {
    assertThat(marks(text)).isEqualTo("unread");
  }

  @Test
  void what_we_write_reads_back_as_the_same() {
    Random random = new Random(3);
    for (int round = 0; round < 500; round++) {
      Map<String, Mark> marks = new LinkedHashMap<>();
      for (String name : LAMP) {
        int said = random.nextInt(4);
        if (said > 1) {
          marks.put(name, said == 2 ? Mark.TAKEN : Mark.AGAIN);
        }
      }
      assertThat(DoneWords.read(DoneWords.of(marks, LAMP), LAMP)).contains(marks);
    }
  }
}
