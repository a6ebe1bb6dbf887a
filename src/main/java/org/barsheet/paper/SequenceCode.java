package org.barsheet.paper;

import com.google.gson.Gson;
import com.google.gson.GsonBuilder;
import com.google.zxing.BarcodeFormat;
import com.google.zxing.EncodeHintType;
import com.google.zxing.WriterException;
import com.google.zxing.common.BitMatrix;
import com.google.zxing.qrcode.QRCodeWriter;
import com.google.zxing.qrcode.decoder.ErrorCorrectionLevel;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * The sequence of photographs that follows a slate, as a QR code (ISO/IEC 18004) that holds JSON.
 *
 * @param film title of the film
 * @param setup as cards call it: "6a"
 * @param sequence the photographs
 * @param plan the plan's version: the first digits of its SHA-256
 */
record SequenceCode(String film, String setup, Sequence sequence, String plan) {

  private static final Gson GSON = new GsonBuilder().disableHtmlEscaping().create();

  /** White around the code, in modules (ISO/IEC 18004, 5.3.8). */
  private static final int QUIET = 4;

  /** A title longer than this is cut off: a code has room for so much. */
  private static final int MOST_LETTERS = 120;

  /** What is read from it. */
  String text() {
    Map<String, String> fields = new LinkedHashMap<>();
    fields.put("film", shortened(film));
    fields.put("setup", setup);
    fields.put("sequence", shortened(sequence.name()));
    fields.put("first", shortened(sequence.first()));
    fields.put("last", shortened(sequence.last()));
    fields.put("plan", plan);
    return GSON.toJson(fields);
  }

  private static String shortened(String text) {
    int letters = text.codePointCount(0, text.length());
    return letters <= MOST_LETTERS
        ? text
        : text.substring(0, text.offsetByCodePoints(0, MOST_LETTERS));
  }

  /**
   * Drawn with its white edge in a square, each row of black modules in as few boxes as it takes.
   */
  List<Ink> drawn(double left, double top, double side) {
    BitMatrix modules = modules();
    double module = side / modules.getWidth();
    List<Ink> inks = new ArrayList<>();
    for (int row = 0; row < modules.getHeight(); row++) {
      int begin = -1;
      for (int column = 0; column <= modules.getWidth(); column++) {
        boolean black = column < modules.getWidth() && modules.get(column, row);
        if (black && begin < 0) {
          begin = column;
        } else if (!black && begin >= 0) {
          double width = (column - begin) * module;
          inks.add(
              new Ink.Patch("000000", left + begin * module, top + row * module, width, module));
          begin = -1;
        }
      }
    }
    return inks;
  }

  private BitMatrix modules() {
    Map<EncodeHintType, Object> hints =
        Map.of(
            EncodeHintType.CHARACTER_SET,
            "UTF-8",
            EncodeHintType.ERROR_CORRECTION,
            ErrorCorrectionLevel.M,
            EncodeHintType.MARGIN,
            QUIET);
    try {
      return new QRCodeWriter().encode(text(), BarcodeFormat.QR_CODE, 0, 0, hints);
    } catch (WriterException tooLong) {
      throw new IllegalStateException("a slate's code has room for its text", tooLong);
    }
  }
}
