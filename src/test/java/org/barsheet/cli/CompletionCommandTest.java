package org.barsheet.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.PrintWriter;
import java.io.StringWriter;
import org.junit.jupiter.api.Test;
import picocli.CommandLine;

class CompletionCommandTest {

  @Test
  void the_script_knows_every_command_and_its_options() {
    StringWriter out = new StringWriter();
    assertThat(
            Barsheet.run(new PrintWriter(out), new PrintWriter(new StringWriter()), "completion"))
        .isEqualTo(ExitStatus.DONE);
    String script = out.toString();
    assertThat(script).startsWith("#!/usr/bin/env bash").contains("complete -F");
    new CommandLine(new Barsheet())
        .getSubcommands()
        .forEach(
            (name, command) -> {
              assertThat(script).contains("function _picocli_barsheet_" + name + "()");
              command
                  .getCommandSpec()
                  .options()
                  .forEach(option -> assertThat(script).contains(option.longestName()));
            });
  }

  @Test
  void the_script_is_the_same_every_time() {
    StringWriter one = new StringWriter();
    StringWriter two = new StringWriter();
    Barsheet.run(new PrintWriter(one), new PrintWriter(one), "completion");
    Barsheet.run(new PrintWriter(two), new PrintWriter(two), "completion");
    assertThat(one).hasToString(two.toString());
  }
}
