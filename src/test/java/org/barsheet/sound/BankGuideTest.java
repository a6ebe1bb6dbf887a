package org.barsheet.sound;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import org.assertj.core.data.Offset;
import org.barsheet.clock.FrameRate;
import org.barsheet.clock.Seconds;
import org.barsheet.film.FilmPlanner;
import org.barsheet.film.FilmSheet;
import org.barsheet.handoff.SampleFilm;
import org.barsheet.input.InputException;
import org.barsheet.outside.RegistryScores;
import org.barsheet.score.Note;
import org.barsheet.sound.SoundFontBytes.Preset;
import org.barsheet.timing.MusicBuilder;
import org.barsheet.timing.PlanBuilder;
import org.barsheet.timing.SoundLayout;
import org.barsheet.timing.TimingSheet;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The guide played with a bank of the user's: here one tone, made for the test. */
class BankGuideTest {

  private static final Preset CELESTA = new Preset(8, 0, "Tone of celesta");
  private static final Preset CELLO = new Preset(42, 0, "Tone of cello");

  /**
   * As measured: 2 to 3 samples, in which the tone's envelope rises, whatever the place of the note
   * between the blocks of 320 samples that the synthesizer works in.
   */
  private static final double SAMPLES_OFF = 4;

  @TempDir private Path folder;

  /** {@code mvn} opens the JDK's synthesizer to the tests, as the jar's manifest does to users. */
  @BeforeAll
  static void theSynthesizerIsOpen() {
    try {
      OfflineSynthesizer.open().close();
    } catch (InputException closed) {
      RegistryScores.missing("the tests were started without --add-exports (see pom.xml)");
    }
  }

  private SoundBank bank(Preset... presets) {
    return SoundBank.read(file("tone.sf2", SoundFontBytes.of(List.of(presets))));
  }

  private Path file(String name, byte[] bytes) {
    try {
      return Files.write(folder.resolve(name), bytes);
    } catch (IOException full) {
      throw new UncheckedIOException(full);
    }
  }

  private static byte[] written(BankGuide guide) {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try {
      SoundFiles.writeGuide(guide, bytes);
    } catch (IOException broken) {
      throw new UncheckedIOException(broken);
    }
    return bytes.toByteArray();
  }

  /**
   * Short notes on every beat, at a tempo whose beats are no whole samples and then at another, and
   * at a rate whose frames are none.
   */
  private static FilmSheet staccato() {
    return staccato(new MusicBuilder().tempo(97).bars(4).tempo(61).bars(4), 8);
  }

  private static FilmSheet staccato(MusicBuilder music, int bars) {
    for (int bar = 1; bar <= bars; bar++) {
      for (int beat = 1; beat <= 4; beat++) {
        music.note(beat % 2, 69, bar, beat, 0.125);
      }
    }
    PlanBuilder plan =
        new PlanBuilder(music).rate(FrameRate.FPS_23_976).musicStarts(Seconds.of(2)).panel("", "");
    return FilmPlanner.complete(plan.time(), List.of());
  }

  /** Where a tone begins: a sample far stronger than anything in the 5 ms before it. */
  private static List<Integer> onsets(short[] samples, int from) {
    List<Integer> onsets = new ArrayList<>();
    for (int i = from; i < samples.length; i++) {
      int before = 0;
      for (int k = i - 240; k < i; k++) {
        before = Math.max(before, Math.abs(samples[k]));
      }
      if (Math.abs(samples[i]) > 4_000 && before < 2_000) {
        onsets.add(i);
      }
    }
    return onsets;
  }

  @Test
  void every_note_sounds_at_its_own_time_in_the_film() {
    FilmSheet sheet = staccato();
    TimingSheet timing = sheet.timing();
    SoundLayout layout = SoundLayout.of(sheet.timing());
    byte[] guide = written(BankGuide.of(sheet, bank(CELESTA, CELLO)));
    short[] samples = new RiffWalker(guide).samples(2);
    List<Note> notes = timing.music().score().notes();
    List<Integer> heard = onsets(samples, (int) layout.sampleAt(Seconds.of(2)) - 4_000);
    assertThat(heard).hasSameSizeAs(notes);
    for (int i = 0; i < notes.size(); i++) {
      Seconds inMusic = timing.music().tempo().secondsAt(notes.get(i).onTick());
      Seconds inFile = timing.clock().filmTime(inMusic).plus(Seconds.of(layout.headSeconds()));
      double exact = inFile.toDouble() * SoundLayout.SAMPLE_RATE;
      assertThat((double) heard.get(i)).isCloseTo(exact, Offset.offset(SAMPLES_OFF));
    }
  }

  @Test
  void the_same_film_gives_the_same_bytes() {
    byte[] once = written(BankGuide.of(staccato(), bank(CELESTA, CELLO)));
    assertThat(written(BankGuide.of(staccato(), bank(CELESTA, CELLO)))).isEqualTo(once);
  }

  /** Chunks, length, count-in and pop are those of the guide with sounds of our own. */
  @Test
  void the_layout_is_the_same_as_without_a_bank() throws IOException {
    FilmSheet sheet = SampleFilm.at(FrameRate.FPS_29_97_DF).sheet();
    ByteArrayOutputStream own = new ByteArrayOutputStream();
    SoundFiles.writeGuide(sheet, own);
    RiffWalker ours = new RiffWalker(own.toByteArray());
    RiffWalker banks = new RiffWalker(written(BankGuide.of(sheet, bank(CELESTA))));
    assertThat(banks.cues()).isEqualTo(ours.cues());
    for (String chunk : List.of("bext", "fmt ")) {
      assertThat(banks.chunk(chunk)).isEqualTo(ours.chunk(chunk));
    }
    short[] before = ours.samples(2);
    short[] with = banks.samples(2);
    assertThat(with).hasSameSizeAs(before);
    int music = (int) SoundLayout.of(sheet.timing()).sampleAt(Seconds.of(2)) - 480;
    assertThat(Arrays.copyOf(with, music)).isEqualTo(Arrays.copyOf(before, music));
  }

  @Test
  void its_strongest_sample_has_the_strength_that_is_told() {
    BankGuide guide = BankGuide.of(staccato(), bank(CELESTA, CELLO));
    short[] samples = new RiffWalker(written(guide)).samples(2);
    int music = (int) SoundLayout.of(staccato().timing()).sampleAt(Seconds.of(2)) - 480;
    int peak = 0;
    for (int i = music; i < samples.length; i++) {
      peak = Math.max(peak, Math.abs(samples[i]));
    }
    assertThat(peak / 32_767.0).isCloseTo(BankGuide.PEAK, Offset.offset(0.001));
    assertThat(guide.notes())
        .singleElement()
        .asString()
        .startsWith("the guide is played with tone.sf2, its peak at -0.9 dBFS" + " (turned ");
  }

  @Test
  void the_readme_states_the_strength_and_the_exactness_that_are_kept() throws IOException {
    String readme = Files.readString(Path.of("README.md"), StandardCharsets.UTF_8);
    String below = String.format(Locale.ROOT, "%.1f", -20 * Math.log10(BankGuide.PEAK));
    assertThat(readme)
        .contains("lies " + below + " dB below full scale")
        .contains("within " + Math.round(SAMPLES_OFF) + " samples");
  }

  @Test
  void a_program_the_bank_lacks_is_named_with_what_plays_instead() {
    List<String> notes = BankGuide.of(staccato(), bank(CELLO)).notes();
    assertThat(notes.get(0))
        .isEqualTo("tone.sf2 has no program 9 (Celesta): Celesta plays with its 'Tone of cello'");
    Preset drums = new Preset(0, SoundFontBytes.DRUMS, "Tone of drums");
    assertThat(BankGuide.of(staccato(), bank(drums)).notes())
        .containsExactly(
            "tone.sf2 has no program 9 (Celesta): Celesta is silent",
            "tone.sf2 has no program 43 (Cello): Cello is silent",
            "tone.sf2 has no sound for any note of the score: the guide is only clicks");
  }

  @Test
  void what_is_no_bank_is_told_with_what_to_do() {
    assertRefused(folder.resolve("none.sf2"), "there is no such file");
    assertRefused(folder, "this is a folder, not a sound bank");
    assertRefused(
        file("a.sf2", "dear editor".getBytes(StandardCharsets.UTF_8)), "not a sound bank");
    ByteArrayOutputStream click = new ByteArrayOutputStream();
    assertThatCode(() -> SoundFiles.writeClick(staccato(), click)).doesNotThrowAnyException();
    assertRefused(file("click.sf2", click.toByteArray()), "this is not a sound bank");
    byte[] whole = SoundFontBytes.of(List.of(CELESTA));
    assertRefused(file("cut.sf2", Arrays.copyOf(whole, whole.length / 2)), "sound bank");
    assertRefused(
        file("empty.sf2", SoundFontBytes.of(List.of())), "this sound bank has no instruments");
  }

  private static void assertRefused(Path file, String sentence) {
    assertThatThrownBy(() -> SoundBank.read(file))
        .isInstanceOf(InputException.class)
        .hasMessageContaining(file.toString())
        .hasMessageContaining(sentence);
  }

  /** Lengths and numbers that lie: told in words, or played, and never worse. */
  @Test
  void damaged_banks_are_told_or_played() {
    byte[] whole = SoundFontBytes.of(List.of(CELESTA, CELLO));
    FilmSheet oneBar = staccato(new MusicBuilder().tempo(240).bars(1), 1);
    Random random = new Random(11);
    int told = 0;
    for (int trial = 0; trial < 300; trial++) {
      byte[] damaged = whole.clone();
      for (int i = 0; i <= random.nextInt(4); i++) {
        int at =
            random.nextBoolean() ? random.nextInt(120) : whole.length - 1 - random.nextInt(500);
        damaged[at] = (byte) (random.nextBoolean() ? 0xFF : random.nextInt(256));
      }
      try {
        BankGuide.of(oneBar, SoundBank.read(file("damaged.sf2", damaged)));
      } catch (InputException inWords) {
        told++;
      }
    }
    assertThat(told).isBetween(20, 299);
  }
}
