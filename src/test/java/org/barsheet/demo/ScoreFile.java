package org.barsheet.demo;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.Comparator;
import java.util.List;
import javax.sound.midi.InvalidMidiDataException;
import javax.sound.midi.MetaMessage;
import javax.sound.midi.MidiEvent;
import javax.sound.midi.MidiSystem;
import javax.sound.midi.Sequence;
import javax.sound.midi.ShortMessage;
import javax.sound.midi.Track;
import org.barsheet.demo.Music.Controller;
import org.barsheet.demo.Music.Meter;
import org.barsheet.demo.Music.Note;
import org.barsheet.demo.Music.Tempo;
import org.barsheet.demo.Music.Text;

/** Turns {@link Music} into the bytes of a Standard MIDI File, format 1: the same bytes always. */
final class ScoreFile {

  static final int TICKS_PER_QUARTER = 480;

  private static final int TRACK_NAME = 0x03;
  private static final int TEMPO = 0x51;
  private static final int METER = 0x58;
  private static final int VOLUME = 7;
  private static final int PAN = 10;
  private static final int REVERB = 91;

  private ScoreFile() {}

  static byte[] bytes(Music music) throws IOException {
    try {
      Sequence sequence = new Sequence(Sequence.PPQ, TICKS_PER_QUARTER);
      conductor(music, sequence.createTrack());
      for (Player player : Player.values()) {
        part(music, player, sequence.createTrack());
      }
      ByteArrayOutputStream bytes = new ByteArrayOutputStream();
      MidiSystem.write(sequence, 1, bytes);
      return bytes.toByteArray();
    } catch (InvalidMidiDataException e) {
      throw new IllegalStateException("the score does not fit a MIDI file", e);
    }
  }

  private static void conductor(Music music, Track track) throws InvalidMidiDataException {
    text(track, new Text(0, TRACK_NAME, Music.TITLE));
    for (Meter meter : music.meters()) {
      int denominator = Integer.numberOfTrailingZeros(meter.unit());
      meta(
          track,
          meter.tick(),
          METER,
          (byte) meter.beats(),
          (byte) denominator,
          (byte) 24,
          (byte) 8);
    }
    for (Tempo tempo : music.tempos()) {
      int micros = tempo.microsPerQuarter();
      meta(track, tempo.tick(), TEMPO, (byte) (micros >> 16), (byte) (micros >> 8), (byte) micros);
    }
    for (Text mark : music.texts()) {
      text(track, mark);
    }
  }

  private static void part(Music music, Player player, Track track)
      throws InvalidMidiDataException {
    text(track, new Text(0, TRACK_NAME, player.title));
    send(track, 0, ShortMessage.PROGRAM_CHANGE, player, player.program, 0);
    send(track, 0, ShortMessage.CONTROL_CHANGE, player, VOLUME, 100);
    send(track, 0, ShortMessage.CONTROL_CHANGE, player, PAN, player.pan);
    send(track, 0, ShortMessage.CONTROL_CHANGE, player, REVERB, 64);
    for (Controller change : music.controllers(player)) {
      send(
          track,
          change.tick(),
          ShortMessage.CONTROL_CHANGE,
          player,
          Controller.EXPRESSION,
          change.value());
    }
    List<Note> notes = music.notes(player);
    for (Note note : notes.stream().sorted(Comparator.comparingLong(Note::end)).toList()) {
      send(track, note.end(), ShortMessage.NOTE_OFF, player, note.key(), 0);
    }
    // A track keeps events of one tick in the order they came: ends before beginnings.
    for (Note note : notes) {
      send(track, note.start(), ShortMessage.NOTE_ON, player, note.key(), note.velocity());
    }
  }

  private static void send(Track track, long tick, int command, Player player, int data1, int data2)
      throws InvalidMidiDataException {
    track.add(new MidiEvent(new ShortMessage(command, player.channel, data1, data2), tick));
  }

  private static void text(Track track, Text text) throws InvalidMidiDataException {
    meta(track, text.tick(), text.type(), text.text().getBytes(StandardCharsets.UTF_8));
  }

  private static void meta(Track track, long tick, int type, byte... data)
      throws InvalidMidiDataException {
    track.add(new MidiEvent(new MetaMessage(type, data, data.length), tick));
  }
}
