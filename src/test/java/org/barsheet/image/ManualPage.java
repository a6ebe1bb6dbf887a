package org.barsheet.image;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import picocli.CommandLine;
import picocli.CommandLine.Help;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.Model.PositionalParamSpec;
import picocli.CommandLine.Model.UsageMessageSpec;

/**
 * A command's help as a manual page, in the man macros of man(7).
 *
 * @param name {@code barsheet-make}
 * @param text in roff
 */
record ManualPage(String name, String text) {

  /** The page of the program and one for each of its commands. */
  static List<ManualPage> all(CommandLine program, String version) {
    List<ManualPage> pages = new ArrayList<>();
    pages.add(of(program.getCommandSpec(), version));
    for (CommandLine command : program.getSubcommands().values()) {
      if (!command.getCommandSpec().helpCommand()) {
        pages.add(of(command.getCommandSpec(), version));
      }
    }
    return pages;
  }

  private static ManualPage of(CommandSpec command, String version) {
    String name = command.qualifiedName("-");
    UsageMessageSpec usage = command.usageMessage();
    StringBuilder text = new StringBuilder();
    text.append(".TH ").append(name.toUpperCase(Locale.ROOT)).append(" 1 \"\" \"barsheet ");
    text.append(version).append("\"\n.SH NAME\n").append(roff(name)).append(" \\- ");
    text.append(roff(String.join(" ", usage.header()))).append("\n.SH SYNOPSIS\n");
    text.append(roff(synopsis(command))).append('\n');
    lines(text, "DESCRIPTION", usage.description());
    text.append(".SH OPTIONS\n");
    command.positionalParameters().forEach(each -> parameter(text, each));
    command.options().forEach(each -> option(text, each));
    commands(text, command);
    lines(text, "NOTES", usage.footer());
    return new ManualPage(name, text.toString());
  }

  private static String synopsis(CommandSpec command) {
    Help help = new Help(command, Help.defaultColorScheme(Help.Ansi.OFF));
    return help.synopsis(0).strip().replaceAll("\\s+", " ");
  }

  private static void lines(StringBuilder text, String title, String[] lines) {
    if (String.join("", lines).isBlank()) {
      return;
    }
    text.append(".SH ").append(title).append("\n.nf\n");
    for (String line : lines) {
      text.append(roff(line)).append('\n');
    }
    text.append(".fi\n");
  }

  private static void parameter(StringBuilder text, PositionalParamSpec parameter) {
    text.append(".TP\n.I ").append(roff(parameter.paramLabel())).append('\n');
    text.append(roff(String.join(" ", parameter.description()))).append('\n');
  }

  private static void option(StringBuilder text, OptionSpec option) {
    String label = option.arity().max() == 0 ? "" : " " + option.paramLabel();
    text.append(".TP\n.B ").append(roff(String.join(", ", option.names()) + label)).append('\n');
    text.append(roff(String.join(" ", option.description()))).append('\n');
  }

  private static void commands(StringBuilder text, CommandSpec command) {
    if (!command.subcommands().isEmpty()) {
      text.append(".SH COMMANDS\n");
    }
    command
        .subcommands()
        .forEach(
            (name, sub) -> {
              String header = String.join(" ", sub.getCommandSpec().usageMessage().header());
              text.append(".TP\n.B ").append(roff(name)).append('\n');
              text.append(roff(header)).append('\n');
            });
  }

  /** Plain text: nothing in it is an escape or a request. */
  private static String roff(String text) {
    String escaped = text.replace("\\", "\\e").replace("-", "\\-").replace("%n", " ");
    return escaped.startsWith(".") || escaped.startsWith("'") ? "\\&" + escaped : escaped;
  }
}
