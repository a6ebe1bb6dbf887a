package org.barsheet.plan.read;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import org.barsheet.input.GivenFile;
import org.barsheet.input.InputException;
import org.barsheet.input.Limit;
import org.barsheet.input.Problem;
import org.barsheet.input.SyntaxException;
import org.barsheet.plan.source.Entry;
import org.barsheet.plan.source.PlanFile;
import org.barsheet.plan.source.PlanReading;
import org.barsheet.plan.source.Texts;
import org.barsheet.plan.source.YamlSource;
import org.barsheet.plan.table.BookSource;
import org.barsheet.plan.table.CsvTable;

/** Makes entries of a plan's files. */
public final class PlanSource {

  /** How a zip archive begins, so an {@code .xlsx} workbook too. */
  private static final byte[] ZIP = {'P', 'K', 3, 4};

  /** How a compound file begins: an {@code .xls} workbook, or an encrypted one. */
  private static final byte[] COMPOUND_FILE = {(byte) 0xD0, (byte) 0xCF, 0x11, (byte) 0xE0};

  private PlanSource() {}

  /**
   * The plan as typed.
   *
   * @throws InputException if the file cannot be read as what it is
   */
  public static Entry.Keyed read(PlanReading reading) {
    Path file = reading.file();
    byte[] start =
        reading
            .held(file)
            .map(bytes -> Arrays.copyOf(bytes, 4))
            .orElseGet(() -> GivenFile.start(file, Limit.PLAN, 4));
    if (Arrays.equals(start, ZIP)) {
      return new BookSource(reading).read();
    }
    if (Arrays.equals(start, COMPOUND_FILE)) {
      throw new InputException(
          Problem.ofFile(
              file.toString(),
              "this is an .xls workbook, or one with a password",
              "save it as .xlsx without a password"));
    }
    byte[] bytes = reading.bytes(file, Limit.PLAN);
    Entry.Keyed plan = new YamlSource(reading).read(PlanFile.text(file, bytes));
    return withTable(plan, reading);
  }

  /** The plan with its panels read from the table it names, if it names one. */
  private static Entry.Keyed withTable(Entry.Keyed plan, PlanReading reading) {
    List<Entry.Member> members = new ArrayList<>();
    for (Entry.Member member : plan.members()) {
      if (member.key().equals("panels")
          && member.value() instanceof Entry.Text named
          && !named.isBlank()) {
        Entry panels = table(named, reading);
        members.add(new Entry.Member(member.key(), member.where(), panels));
      } else {
        members.add(member);
      }
    }
    return new Entry.Keyed(members, plan.where());
  }

  private static Entry table(Entry.Text named, PlanReading reading) {
    String ending = named.text().strip().toLowerCase(Locale.ROOT).replaceAll(".*\\.", "");
    try {
      Path file = reading.resolveTable(Texts.file(named.text()));
      switch (ending) {
        case "csv", "tsv", "txt" -> {
          return BookSource.panels(CsvTable.read(file, reading), reading);
        }
        case "xlsx", "xlsm" -> {
          return BookSource.panels(file, reading);
        }
        default ->
            reading
                .problems()
                .add(
                    named.where(),
                    "'panels' takes a list, or the name of a .csv or .xlsx table",
                    "begin each panel with '- panel: 1'");
      }
    } catch (SyntaxException wrong) {
      reading.problems().add(named.where(), "panels", wrong);
    } catch (InputException wrong) {
      reading.problems().addAll(named.where(), wrong);
    }
    return new Entry.Items(List.of(), named.where());
  }
}
