package org.barsheet.cli;

import picocli.CommandLine.Option;

/** The option every command that prints a result understands. */
final class FormatOption {

  @Option(
      names = "--format",
      paramLabel = "FORM",
      defaultValue = "text",
      converter = As.Converter.class,
      description = "How to print it: text (default), csv or json.")
  As as = As.TEXT;
}
