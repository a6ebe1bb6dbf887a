package org.barsheet.score;

import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;

/** Text of a MIDI file, whose encoding the standard leaves open. */
final class MidiText {

  private static final int MOST_CHARACTERS = 200;

  private MidiText() {}

  /**
   * The text as UTF-8, else as Latin-1; control and direction characters taken out, blanks
   * collapsed, cut after 200 characters.
   */
  static String decode(byte[] bytes) {
    StringBuilder text = new StringBuilder();
    decodeAll(bytes)
        .codePoints()
        .filter(MidiText::isWanted)
        .limit(MOST_CHARACTERS)
        .map(character -> Character.isWhitespace(character) ? ' ' : character)
        .forEach(text::appendCodePoint);
    return text.toString().replaceAll(" {2,}", " ").strip();
  }

  private static String decodeAll(byte[] bytes) {
    try {
      return StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(bytes)).toString();
    } catch (CharacterCodingException notUtf8) {
      return new String(bytes, StandardCharsets.ISO_8859_1);
    }
  }

  private static boolean isWanted(int character) {
    if (character == '\t' || character == '\n') {
      return true;
    }
    return switch (Character.getType(character)) {
      case Character.CONTROL,
          Character.FORMAT,
          Character.UNASSIGNED,
          Character.LINE_SEPARATOR,
          Character.PARAGRAPH_SEPARATOR ->
          false;
      default -> true;
    };
  }
}
