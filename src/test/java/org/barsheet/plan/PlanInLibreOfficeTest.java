package org.barsheet.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assumptions.assumeThat;

import java.io.File;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import java.util.concurrent.TimeUnit;
import org.barsheet.plan.begin.BookWriter;
import org.barsheet.plan.read.PlanReader;
import org.barsheet.plan.read.PlanSource;
import org.barsheet.plan.source.Entry;
import org.barsheet.plan.source.PlanReading;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

/** A plan saved by another spreadsheet program is the same plan; skipped where it is missing. */
@Timeout(value = 120, unit = TimeUnit.SECONDS)
class PlanInLibreOfficeTest {

  private static boolean isInstalled() {
    String path = Objects.requireNonNullElse(System.getenv("PATH"), "");
    for (String folder : path.split(File.pathSeparator, -1)) {
      if (Files.isExecutable(Path.of(folder, "soffice"))) {
        return true;
      }
    }
    return false;
  }

  @Test
  void a_plan_saved_by_libreoffice_means_the_same(@TempDir Path folder)
      throws IOException, InterruptedException {
    assumeThat(isInstalled()).as("LibreOffice is installed").isTrue();
    Path yaml = folder.resolve("plan.yaml");
    try (InputStream in = PlanInLibreOfficeTest.class.getResourceAsStream("whole-schema.yaml")) {
      Files.write(yaml, Objects.requireNonNull(in).readAllBytes());
    }
    Entry.Keyed tree = PlanSource.read(new PlanReading(yaml));
    Files.write(folder.resolve("written.xlsx"), new BookWriter(tree, List.of()).bytes());
    saveAgain(folder);
    Files.move(folder.resolve("saved/written.xlsx"), folder.resolve("saved.xlsx"));
    assertThat(PlanReader.read(folder.resolve("saved.xlsx")))
        .usingRecursiveComparison()
        .ignoringFields("text")
        .ignoringFieldsOfTypes(Where.class)
        .isEqualTo(PlanReader.read(yaml));
  }

  private static void saveAgain(Path folder) throws IOException, InterruptedException {
    Process office =
        new ProcessBuilder(
                "soffice",
                "--headless",
                "-env:UserInstallation=" + folder.resolve("profile").toUri(),
                "--convert-to",
                "xlsx",
                "--outdir",
                folder.resolve("saved").toString(),
                folder.resolve("written.xlsx").toString())
            .redirectErrorStream(true)
            .redirectOutput(folder.resolve("office.log").toFile())
            .start();
    assertThat(office.waitFor()).as("soffice").isZero();
  }
}
