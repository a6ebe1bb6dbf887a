package org.barsheet.motif;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.apache.commons.numbers.fraction.BigFraction;
import org.barsheet.score.ScoreReader;

/**
 * Arrangements in a folder: {@code arrangements/} of MIDI files, {@code arrangements-pieces.csv}
 * (piece, timing), {@code -motifs.csv} (piece, motif, onset_exact, dur_exact, pitch), {@code
 * -truth.csv} (piece, motif, form, onset_q, end_q, parts) and {@code -chance.csv} (piece, motif,
 * onset_q).
 */
final class ArrangementFolder {

  private final Path folder;

  ArrangementFolder(Path folder) {
    this.folder = folder;
  }

  List<Arrangement> arrangements() {
    return rows("pieces").stream().map(this::arrangement).toList();
  }

  private Arrangement arrangement(CSVRecord piece) {
    String name = piece.get("piece");
    return new Arrangement(
        name,
        piece.get("timing"),
        ScoreReader.read(folder.resolve("arrangements").resolve(name + ".mid")),
        motifs(name),
        rows("truth").stream()
            .filter(row -> row.get("piece").equals(name))
            .map(this::planted)
            .toList(),
        rows("chance").stream()
            .filter(row -> row.get("piece").equals(name))
            .map(row -> new Arrangement.Unsure(row.get("motif"), number(row, "onset_q")))
            .toList());
  }

  private Arrangement.Planted planted(CSVRecord row) {
    return new Arrangement.Planted(
        row.get("motif"),
        row.get("form"),
        number(row, "onset_q"),
        number(row, "end_q"),
        row.get("parts").split("\\+", -1)[0]);
  }

  private Map<String, List<MotifNote>> motifs(String name) {
    Map<String, List<MotifNote>> motifs = new LinkedHashMap<>();
    for (CSVRecord row : rows("motifs")) {
      if (row.get("piece").equals(name)) {
        motifs
            .computeIfAbsent(row.get("motif"), motif -> new ArrayList<>())
            .add(
                new MotifNote(
                    fraction(row.get("onset_exact")),
                    fraction(row.get("dur_exact")),
                    Integer.parseInt(row.get("pitch"))));
      }
    }
    return motifs;
  }

  private static BigFraction fraction(String text) {
    return BigFraction.parse(text);
  }

  private static double number(CSVRecord row, String column) {
    return Double.parseDouble(row.get(column));
  }

  private List<CSVRecord> rows(String table) {
    CSVFormat format = CSVFormat.DEFAULT.builder().setHeader().setSkipHeaderRecord(true).get();
    Path file = folder.resolve("arrangements-" + table + ".csv");
    try (CSVParser parser = format.parse(Files.newBufferedReader(file))) {
      return parser.getRecords();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
