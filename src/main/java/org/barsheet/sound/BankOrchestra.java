package org.barsheet.sound;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import javax.sound.midi.ShortMessage;
import org.barsheet.clock.Seconds;
import org.barsheet.film.FilmSheet;
import org.barsheet.score.Note;
import org.barsheet.sound.SoundBank.Sound;
import org.barsheet.timing.SoundLayout;
import org.barsheet.timing.TimingSheet;

/**
 * Plays the score with the sounds of a bank: every part on a channel of its own, from left to right
 * in the order of the parts, every note at its own time in the film, whatever the tempo does. Notes
 * have their strength; pedals and swells, which a score does not keep, they have not.
 */
final class BankOrchestra implements SampleSource, AutoCloseable {

  /** Decimal places of a second in microseconds. */
  private static final int MICROSECOND_PLACES = 6;

  /** A note that ends as it begins would never end: it lasts so long at least. */
  private static final long SHORTEST_MICROSECONDS = 1_000;

  private static final int BANK_SELECT = 0;
  private static final int BANK_SELECT_FINE = 32;
  private static final int PAN = 10;

  private final TimingSheet timing;
  private final SoundLayout layout;
  private final List<Optional<Sound>> sounds;
  private final float strength;

  /** Parts play on one synthesizer as long as it has channels, then on the next. */
  private final List<OfflineSynthesizer> synthesizers = new ArrayList<>();

  private final List<Channel> channels = new ArrayList<>();
  private int nextChannel;

  /** Where a part plays. */
  private record Channel(OfflineSynthesizer synthesizer, int number) {}

  /** Something to happen at a microsecond of the file; what ends comes before what begins. */
  private record Event(long at, boolean begins, Note note) {}

  /**
   * Sets up an orchestra.
   *
   * @param strength what its sound is multiplied by
   * @throws UncheckedIOException if a sound is damaged, here or while it plays
   */
  BankOrchestra(FilmSheet sheet, SoundLayout layout, List<Optional<Sound>> sounds, float strength) {
    this.timing = sheet.timing();
    this.layout = layout;
    this.sounds = sounds;
    this.strength = strength;
    for (int part = 0; part < sounds.size(); part++) {
      channels.add(channel(sounds.get(part), part));
    }
    events().forEach(this::send);
  }

  private Channel channel(Optional<Sound> sound, int part) {
    if (synthesizers.isEmpty() || nextChannel == OfflineSynthesizer.CHANNELS) {
      synthesizers.add(OfflineSynthesizer.open());
      nextChannel = 0;
    }
    OfflineSynthesizer synthesizer = synthesizers.get(synthesizers.size() - 1);
    if (sound.isEmpty()) {
      return new Channel(synthesizer, OfflineSynthesizer.DRUMS);
    }
    Channel channel = new Channel(synthesizer, number(sound.get()));
    load(synthesizer, sound.get());
    int bank = sound.get().bank();
    control(channel, BANK_SELECT, bank >> 7);
    control(channel, BANK_SELECT_FINE, bank & 0x7F);
    synthesizer.send(ShortMessage.PROGRAM_CHANGE, channel.number(), sound.get().program(), 0, 0);
    if (!sound.get().drums()) {
      control(channel, PAN, (int) Math.round(63.5 + 63.5 * Orchestra.pan(part, sounds.size())));
    }
    return channel;
  }

  private static void load(OfflineSynthesizer synthesizer, Sound sound) {
    try {
      synthesizer.load(sound.instrument());
    } catch (IOException damaged) {
      throw new UncheckedIOException(damaged);
    }
  }

  private int number(Sound sound) {
    if (sound.drums()) {
      return OfflineSynthesizer.DRUMS;
    }
    int number = nextChannel++;
    nextChannel += nextChannel == OfflineSynthesizer.DRUMS ? 1 : 0;
    return number;
  }

  private static void control(Channel channel, int controller, int value) {
    channel.synthesizer().send(ShortMessage.CONTROL_CHANGE, channel.number(), controller, value, 0);
  }

  private List<Event> events() {
    List<Event> events = new ArrayList<>();
    for (Note note : timing.music().score().notes()) {
      if (sounds.get(note.part()).isPresent()) {
        long on = microsecondOf(note.onTick());
        long off = Math.max(microsecondOf(note.offTick()), on + SHORTEST_MICROSECONDS);
        events.add(new Event(on, true, note));
        events.add(new Event(off, false, note));
      }
    }
    events.sort(Comparator.comparingLong(Event::at).thenComparing(Event::begins));
    return events;
  }

  private long microsecondOf(long tick) {
    Seconds inFilm = timing.clock().filmTime(timing.music().tempo().secondsAt(tick));
    Seconds inFile = inFilm.plus(Seconds.of(layout.headSeconds()));
    return Math.max(0, inFile.toDecimal(MICROSECOND_PLACES).unscaledValue().longValueExact());
  }

  private void send(Event event) {
    Channel channel = channels.get(event.note().part());
    channel
        .synthesizer()
        .send(
            event.begins() ? ShortMessage.NOTE_ON : ShortMessage.NOTE_OFF,
            channel.number(),
            event.note().pitch(),
            event.begins() ? event.note().velocity() : 0,
            event.at());
  }

  @Override
  public void addTo(float[] left, float[] right, long from, int length) {
    try {
      for (OfflineSynthesizer synthesizer : synthesizers) {
        synthesizer.addTo(left, right, length, strength);
      }
    } catch (IOException broken) {
      throw new UncheckedIOException(broken);
    }
  }

  @Override
  public void close() {
    synthesizers.forEach(OfflineSynthesizer::close);
  }
}
