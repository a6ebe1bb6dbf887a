package org.barsheet.outside;

import java.io.IOException;
import java.math.BigInteger;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * A second reader of MIDI files: walks the bytes itself and counts in whole numbers, with none of
 * the main code. Time of a tick is {@code numerator / (division × 1,000,000)} seconds.
 */
final class SecondReader {

  /** Microseconds a quarter note from a tick on. */
  record Tempo(long tick, long microseconds) {}

  /** A time signature from a tick on. */
  record Signature(long tick, int numerator, int denominator) {}

  final int division;
  final List<Tempo> tempos = new ArrayList<>();
  final List<Signature> signatures = new ArrayList<>();
  final List<Long> onsets = new ArrayList<>();
  final List<Long> marks = new ArrayList<>();
  int tempoEvents;

  private final byte[] bytes;
  private int at;

  SecondReader(Path file) throws IOException {
    bytes = Files.readAllBytes(file);
    at = 4;
    int headerEnd = (int) number(4) + 8;
    number(2);
    int tracks = (int) number(2);
    division = (int) number(2);
    at = headerEnd;
    for (int track = 0; track < tracks; track++) {
      at += 4;
      int length = (int) number(4);
      readTrack(at + length);
    }
    tempos.sort(Comparator.comparingLong(Tempo::tick));
    signatures.sort(Comparator.comparingLong(Signature::tick));
    onsets.sort(Comparator.naturalOrder());
    marks.sort(Comparator.naturalOrder());
  }

  private void readTrack(int end) {
    long tick = 0;
    int status = 0;
    while (at < end) {
      tick += variable();
      int first = bytes[at] & 0xff;
      if (first >= 0x80) {
        status = first;
        at++;
      }
      if (status == 0xff) {
        readMeta(tick);
      } else if (status >= 0xf0) {
        at += (int) variable();
      } else {
        int kind = status & 0xf0;
        if (kind == 0x90 && bytes[at + 1] > 0) {
          onsets.add(tick);
        }
        at += kind == 0xc0 || kind == 0xd0 ? 1 : 2;
      }
    }
    at = end;
  }

  private void readMeta(long tick) {
    int type = bytes[at++] & 0xff;
    int length = (int) variable();
    int start = at;
    if (type == 0x51) {
      tempoEvents++;
      tempos.add(new Tempo(tick, number(3)));
    } else if (type == 0x58) {
      signatures.add(new Signature(tick, bytes[at], 1 << bytes[at + 1]));
    } else if (type == 0x06 || type == 0x07) {
      marks.add(tick);
    }
    at = start + length;
  }

  private long number(int count) {
    long value = 0;
    for (int i = 0; i < count; i++) {
      value = (value << 8) | (bytes[at++] & 0xff);
    }
    return value;
  }

  private long variable() {
    long value = 0;
    int next;
    do {
      next = bytes[at++] & 0xff;
      value = (value << 7) | (next & 0x7f);
    } while (next >= 0x80);
    return value;
  }

  /** Microseconds from tick 0 to a tick, times the division: a whole number. */
  BigInteger scaledMicroseconds(long tick) {
    BigInteger sum = BigInteger.ZERO;
    long from = 0;
    long tempo = 500_000;
    for (Tempo change : tempos) {
      if (change.tick() >= tick) {
        break;
      }
      sum = sum.add(BigInteger.valueOf(change.tick() - from).multiply(BigInteger.valueOf(tempo)));
      from = change.tick();
      tempo = change.microseconds();
    }
    return sum.add(BigInteger.valueOf(tick - from).multiply(BigInteger.valueOf(tempo)));
  }

  /** floor(seconds × rateNumerator / rateDenominator + ½), in whole numbers. */
  long frame(long tick, long rateNumerator, long rateDenominator) {
    BigInteger top = scaledMicroseconds(tick).multiply(BigInteger.valueOf(2 * rateNumerator));
    BigInteger bottom =
        BigInteger.valueOf(division)
            .multiply(BigInteger.valueOf(1_000_000))
            .multiply(BigInteger.valueOf(rateDenominator));
    return top.add(bottom).divide(bottom.shiftLeft(1)).longValueExact();
  }

  /**
   * The tick on which the bars begin, up to the last onset; a first bar shorter than 4/4 is kept.
   */
  List<Long> barStarts() {
    List<Long> starts = new ArrayList<>();
    long last = onsets.get(onsets.size() - 1);
    long tick = 0;
    while (tick <= last) {
      starts.add(tick);
      Signature now = new Signature(0, 4, 4);
      long nextChange = Long.MAX_VALUE;
      for (Signature signature : signatures) {
        if (signature.tick() <= tick) {
          now = signature;
        } else {
          nextChange = Math.min(nextChange, signature.tick());
        }
      }
      long full = tick + 4L * division * now.numerator() / now.denominator();
      tick = Math.min(full, nextChange);
    }
    return starts;
  }
}
