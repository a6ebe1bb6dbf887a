package org.barsheet.clips;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.channels.SeekableByteChannel;
import java.nio.charset.StandardCharsets;

/** A file read in small pieces at known places; a piece outside the file is refused. */
final class ClipBytes {

  /** No header field or table row is longer. */
  private static final int LARGEST_PIECE = 1 << 16;

  private final SeekableByteChannel file;
  private final ByteOrder order;

  ClipBytes(SeekableByteChannel file, ByteOrder order) {
    this.file = file;
    this.order = order;
  }

  long length() throws IOException {
    return file.size();
  }

  /** So many bytes from a place, in the order of the format. */
  ByteBuffer at(long place, int count) throws IOException, UnreadableClipException {
    if (count > LARGEST_PIECE || place < 0 || place > file.size() - count) {
      throw new UnreadableClipException("is cut short");
    }
    ByteBuffer piece = ByteBuffer.allocate(count).order(order);
    file.position(place);
    while (piece.hasRemaining() && file.read(piece) >= 0) {
      // until all of it is there
    }
    if (piece.hasRemaining()) {
      throw new UnreadableClipException("is cut short");
    }
    return piece.flip();
  }

  /** Four letters that name a part. */
  String fourLetters(long place) throws IOException, UnreadableClipException {
    return StandardCharsets.ISO_8859_1.decode(at(place, 4)).toString();
  }

  long unsigned32(long place) throws IOException, UnreadableClipException {
    return Integer.toUnsignedLong(at(place, 4).getInt());
  }

  int unsigned16(long place) throws IOException, UnreadableClipException {
    return Short.toUnsignedInt(at(place, 2).getShort());
  }

  /** A length or a time of 64 bits; one past 2⁶³ is refused. */
  long positive64(long place) throws IOException, UnreadableClipException {
    long value = at(place, 8).getLong();
    if (value < 0) {
      throw new UnreadableClipException("has impossible lengths in it");
    }
    return value;
  }
}
