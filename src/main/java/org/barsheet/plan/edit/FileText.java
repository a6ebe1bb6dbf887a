package org.barsheet.plan.edit;

import java.nio.ByteBuffer;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import org.barsheet.plan.source.PlanFile;

/**
 * The text of a plan or table twice: as its bytes hold it, and as it is read, without byte order
 * mark and with line feeds as line ends.
 */
final class FileText {

  private final Charset charset;
  private final String raw;
  private final String read;
  private final int[] rawIndex;

  private FileText(Charset charset, String raw, String read) {
    this.charset = charset;
    this.raw = raw;
    this.read = read;
    this.rawIndex = new int[read.length() + 1];
    int at = raw.startsWith("\uFEFF") ? 1 : 0;
    for (int i = 0; i < read.length(); i++) {
      rawIndex[i] = at;
      at += raw.startsWith("\r\n", at) ? 2 : 1;
    }
    rawIndex[read.length()] = at;
  }

  /**
   * The text of a file's bytes.
   *
   * @throws org.barsheet.input.InputException if the bytes are no text
   */
  static FileText of(Path file, byte[] bytes) {
    String read = PlanFile.text(file, bytes);
    Charset charset = PlanFile.charset(bytes);
    if (charset.equals(StandardCharsets.UTF_16)) {
      // Named with its order of bytes, it keeps the mark as a character of the text.
      charset = bytes[0] == (byte) 0xFE ? StandardCharsets.UTF_16BE : StandardCharsets.UTF_16LE;
    }
    return new FileText(charset, charset.decode(ByteBuffer.wrap(bytes)).toString(), read);
  }

  /** How its lines end, as the first one does. */
  private String lineEnd() {
    int first = read.indexOf('\n');
    return first < 0 ? "\n" : raw.substring(rawIndex[first], rawIndex[first + 1]);
  }

  /** The text as it is read. */
  String read() {
    return read;
  }

  /** The bytes with stretches of the text as it is read replaced. */
  byte[] with(List<Splice> splices) {
    List<Splice> inRaw =
        splices.stream()
            .map(
                one ->
                    new Splice(
                        rawIndex[one.from()],
                        rawIndex[one.to()],
                        one.text().replace("\n", lineEnd())))
            .toList();
    return Splice.apply(raw, inRaw).getBytes(charset);
  }
}
