package org.barsheet.cli;

import java.util.Locale;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** How a result is printed. */
enum As {
  TEXT,
  CSV,
  JSON;

  @Override
  public String toString() {
    return name().toLowerCase(Locale.ROOT);
  }

  /** Reads the lower-case words used on the command line. */
  static final class Converter implements ITypeConverter<As> {
    @Override
    public As convert(String value) {
      for (As as : values()) {
        if (as.toString().equals(value)) {
          return as;
        }
      }
      throw new TypeConversionException("'" + value + "' is not one of text, csv, json");
    }
  }
}
