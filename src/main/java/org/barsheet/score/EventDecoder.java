package org.barsheet.score;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.List;
import javax.sound.midi.InvalidMidiDataException;
import javax.sound.midi.MetaMessage;
import javax.sound.midi.MidiEvent;
import javax.sound.midi.MidiMessage;
import javax.sound.midi.MidiSystem;
import javax.sound.midi.Sequence;
import javax.sound.midi.ShortMessage;

/**
 * Turns normalized tracks into the events of a score through {@code javax.sound.midi}. Only its
 * ticks are used: its own lengths and positions are rounded, and wrong after 36 minutes.
 */
final class EventDecoder {

  private static final int NORMALIZED_FORMAT = 1;

  /** Lowest value of the damper pedal's controller that means down (MIDI 1.0). */
  private static final int PEDAL_DOWN = 64;

  private final int ticksFactor;
  private final ScoreEvents events;

  private EventDecoder(int ticksFactor, ScoreEvents events) {
    this.ticksFactor = ticksFactor;
    this.events = events;
  }

  /**
   * Decodes all tracks.
   *
   * @param rawDivision the division as the header spells it
   * @param ticksFactor what the file's ticks are multiplied with
   */
  static void decode(
      ScoreFile file,
      int rawDivision,
      List<TrackNormalizer.Track> tracks,
      int ticksFactor,
      ScoreEvents events) {
    try {
      byte[] bytes = join(rawDivision, tracks);
      Sequence sequence = MidiSystem.getSequence(new ByteArrayInputStream(bytes));
      EventDecoder decoder = new EventDecoder(ticksFactor, events);
      javax.sound.midi.Track[] decoded = sequence.getTracks();
      for (TrackNormalizer.Track track : tracks) {
        decoder.decode(track, decoded[track.number()]);
      }
    } catch (InvalidMidiDataException | IOException unreadable) {
      throw file.refused(
          0, "the events cannot be read (" + unreadable.getMessage() + ")", "export it again");
    }
  }

  private static byte[] join(int rawDivision, List<TrackNormalizer.Track> tracks) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    ByteBuffer header = ByteBuffer.allocate(14);
    header.put("MThd".getBytes(StandardCharsets.US_ASCII)).putInt(6);
    header.putShort((short) NORMALIZED_FORMAT).putShort((short) tracks.size());
    header.putShort((short) rawDivision);
    out.writeBytes(header.array());
    for (TrackNormalizer.Track track : tracks) {
      out.writeBytes("MTrk".getBytes(StandardCharsets.US_ASCII));
      out.writeBytes(ByteBuffer.allocate(4).putInt(track.bytes().length).array());
      out.writeBytes(track.bytes());
    }
    return out.toByteArray();
  }

  private void decode(TrackNormalizer.Track track, javax.sound.midi.Track decoded) {
    NotePairer pairer = new NotePairer(track.number(), events);
    for (int i = 0; i < decoded.size(); i++) {
      MidiEvent event = decoded.get(i);
      long tick = Math.multiplyExact(event.getTick(), ticksFactor);
      long offset = track.offsets()[i];
      MidiMessage message = event.getMessage();
      if (message instanceof MetaMessage meta) {
        events.addMeta(track.number(), meta.getType(), meta.getData(), tick, offset);
      } else if (message instanceof ShortMessage channelMessage) {
        addChannelMessage(track.number(), channelMessage, tick, offset, pairer);
      }
    }
    pairer.end(Math.multiplyExact(decoded.ticks(), ticksFactor));
  }

  private void addChannelMessage(
      int track, ShortMessage message, long tick, long offset, NotePairer pairer) {
    int channel = message.getChannel();
    int data = message.getData1();
    switch (message.getCommand()) {
      case ShortMessage.NOTE_ON -> {
        if (message.getData2() == 0) {
          pairer.off(channel, data, tick);
        } else {
          pairer.on(channel, data, message.getData2(), tick, offset);
        }
      }
      case ShortMessage.NOTE_OFF -> pairer.off(channel, data, tick);
      case ShortMessage.PROGRAM_CHANGE -> events.addProgram(track, channel, data);
      case ShortMessage.CONTROL_CHANGE -> {
        if (data == TrackNormalizer.DAMPER_PEDAL) {
          events.addPedal(track, channel, message.getData2() >= PEDAL_DOWN, tick);
        }
      }
      default -> {}
    }
  }
}
