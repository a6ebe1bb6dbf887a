package org.barsheet.sound;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import javax.sound.midi.Instrument;
import javax.sound.midi.InvalidMidiDataException;
import javax.sound.midi.MidiSystem;
import javax.sound.midi.Soundbank;
import org.barsheet.input.GivenFile;
import org.barsheet.input.InputException;
import org.barsheet.input.Limit;
import org.barsheet.input.Problem;

/**
 * A file of instruments that the guide is played with: SoundFont 2 (RIFF {@code sfbk}, SoundFont
 * Technical Specification 2.04) or Downloadable Sounds (RIFF {@code DLS }, MIDI Manufacturers
 * Association), as the JDK reads them.
 */
public final class SoundBank {

  private static final int HEAD = 12;

  /** What a MIDI message can ask for; a damaged file may say more. */
  private static final int PROGRAMS = 128;

  private static final int BANKS = 1 << 14;

  /** Programs of General MIDI that make a family of instruments. */
  private static final int FAMILY = 8;

  private final Path file;
  private final List<Sound> sounds;

  /**
   * An instrument of the bank.
   *
   * @param program from 0
   * @param bank from 0, as 14 bits of bank select; other banks than 0 hold variations
   * @param drums whether its keys are drums
   */
  record Sound(int program, int bank, boolean drums, Instrument instrument) {

    String name() {
      return instrument.getName().strip();
    }
  }

  private SoundBank(Path file, List<Sound> sounds) {
    this.file = file;
    this.sounds = sounds;
  }

  /**
   * Reads a bank.
   *
   * @throws InputException if there is no such file, or it is no bank, or one without instruments,
   *     or this Java cannot play one
   */
  public static SoundBank read(Path file) {
    checkHead(file);
    OfflineSynthesizer.open().close();
    List<Sound> sounds =
        Arrays.stream(bank(file).getInstruments())
            .map(SoundBank::sound)
            .filter(sound -> sound.program() < PROGRAMS && sound.bank() < BANKS)
            .toList();
    if (sounds.isEmpty()) {
      throw refused(file, "this sound bank has no instruments", Limit.SOUND_BANK.wanted());
    }
    return new SoundBank(file, sounds);
  }

  private static InputException refused(Path file, String sentence, String remedy) {
    return new InputException(Problem.ofFile(file.toString(), sentence, remedy));
  }

  /** The JDK would make a bank of any sound file, and of a program in a jar. */
  private static void checkHead(Path file) {
    GivenFile.check(file, Limit.SOUND_BANK);
    byte[] start = GivenFile.start(file, Limit.SOUND_BANK, HEAD);
    String head = new String(start, StandardCharsets.ISO_8859_1);
    if (!head.matches("(?s)RIFF....(sfbk|DLS )")) {
      throw refused(file, "this is not a sound bank", Limit.SOUND_BANK.wanted());
    }
  }

  private static Soundbank bank(Path file) {
    try {
      return MidiSystem.getSoundbank(file.toFile());
    } catch (InvalidMidiDataException | IOException | RuntimeException damaged) {
      // The JDK's reader trusts the lengths and numbers in a file and trips over wrong ones.
      throw damaged(file);
    }
  }

  private static InputException damaged(Path file) {
    return refused(file, "this sound bank is incomplete or damaged", "copy it again");
  }

  /** What a person is told where its sounds turn out to be damaged as they are played. */
  InputException damaged() {
    return damaged(file);
  }

  private static Sound sound(Instrument instrument) {
    return new Sound(
        instrument.getPatch().getProgram(),
        instrument.getPatch().getBank(),
        // The JDK's patches know of drums; only their description says so in public.
        instrument.toString().startsWith("Drumkit"),
        instrument);
  }

  /** The file's name, for messages. */
  String name() {
    return String.valueOf(file.getFileName());
  }

  /** The sound of a program, where the bank has it. */
  Optional<Sound> program(int program) {
    return sounds.stream()
        .filter(sound -> !sound.drums() && sound.program() == program && sound.bank() == 0)
        .findFirst();
  }

  /** What a program that the bank lacks is played with: one of its family, else any. */
  Optional<Sound> instead(int program) {
    return sounds.stream()
        .filter(sound -> !sound.drums() && sound.program() / FAMILY == program / FAMILY)
        .findFirst()
        .or(() -> sounds.stream().filter(sound -> !sound.drums()).findFirst());
  }

  /** The bank's drum kit of the lowest program: the standard kit, in General MIDI. */
  Optional<Sound> drums() {
    return sounds.stream().filter(Sound::drums).min(Comparator.comparingInt(Sound::program));
  }
}
