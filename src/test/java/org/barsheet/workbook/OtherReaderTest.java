package org.barsheet.workbook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.io.Reader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.LongStream;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.barsheet.cues.Cue;
import org.barsheet.film.FilmSheet;
import org.barsheet.timing.Shot;
import org.barsheet.workbook.exposure.ExposureColumns;
import org.barsheet.workbook.pen.SheetFrame;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * The workbook as another program reads it: LibreOffice, started once, writes every sheet as CSV
 * (filter options of help.libreoffice.org, "Filter Options for CSV"; token −1 asks for all sheets).
 */
class OtherReaderTest {

  private static final FilmSheet FILM = SampleFilm.harbour().make();
  private static final String ALL_SHEETS_AS_CSV =
      "csv:Text - txt - csv (StarCalc):44,34,76,1,,0,false,true,false,false,false,-1";

  @TempDir private static Path folder;

  @BeforeAll
  static void convert() throws IOException, InterruptedException {
    Path workbook = folder.resolve("quay.xlsx");
    Files.write(workbook, WorkbookWriter.bytes(FILM));
    Process office;
    try {
      office =
          new ProcessBuilder(
                  "soffice",
                  "-env:UserInstallation=" + folder.resolve("profile").toUri(),
                  "--headless",
                  "--convert-to",
                  ALL_SHEETS_AS_CSV,
                  "--outdir",
                  folder.toString(),
                  workbook.toString())
              .redirectErrorStream(true)
              .redirectOutput(ProcessBuilder.Redirect.DISCARD)
              .start();
    } catch (IOException missing) {
      assumeTrue(false, "LibreOffice (soffice) is not installed, so no second reader is asked");
      return;
    }
    assertThat(office.waitFor(120, TimeUnit.SECONDS)).isTrue();
  }

  private static List<CSVRecord> sheet(String name) throws IOException {
    try (Reader text = Files.newBufferedReader(folder.resolve("quay-" + name + ".csv"));
        CSVParser rows = CSVFormat.RFC4180.parse(text)) {
      List<CSVRecord> all = rows.getRecords();
      return all.subList(SheetFrame.FIRST_ROW, all.size());
    }
  }

  @Test
  void it_reads_every_frame_with_its_timecode() throws IOException {
    List<CSVRecord> frames =
        sheet("Exposure").stream()
            .filter(row -> row.get(ExposureColumns.FILM_FRAME).matches("\\s*[0-9]+\\s*"))
            .toList();
    assertThat(frames)
        .extracting(row -> Long.parseLong(row.get(ExposureColumns.FILM_FRAME).strip()))
        .isEqualTo(LongStream.range(0, FILM.timing().lengthFrames()).boxed().toList());
    assertThat(frames)
        .extracting(row -> row.get(ExposureColumns.TIMECODE))
        .isEqualTo(
            LongStream.range(0, FILM.timing().lengthFrames())
                .mapToObj(frame -> FILM.plan().film().timecode(frame).toString())
                .toList());
  }

  @Test
  void it_reads_every_panel_with_its_length() throws IOException {
    List<CSVRecord> rows =
        sheet("Timeline").stream().filter(row -> row.get(6).contains("frame")).toList();
    assertThat(rows).hasSameSizeAs(FILM.timing().shots());
    for (Shot shot : FILM.timing().shots()) {
      CSVRecord row = rows.get(shot.index());
      assertThat(row.get(0).strip()).isEqualTo(shot.panel().name());
      assertThat(row.get(6)).startsWith(shot.frames().length() + " frame");
    }
  }

  @Test
  void it_reads_every_cue_on_its_frame() throws IOException {
    List<CSVRecord> rows = sheet("Cues");
    List<Cue> cues = FILM.timing().cues();
    for (int index = 0; index < cues.size(); index++) {
      assertThat(rows.get(index).get(1)).isEqualTo(cues.get(index).title());
      assertThat(rows.get(index).get(7).strip()).isEqualTo(Long.toString(cues.get(index).frame()));
    }
  }
}
