package org.barsheet.photographs;

import com.google.gson.Gson;
import com.google.gson.GsonBuilder;
import com.google.gson.JsonParseException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.barsheet.exposure.FileNames;
import org.barsheet.input.GivenFile;
import org.barsheet.input.InputException;
import org.barsheet.input.Limit;
import org.barsheet.input.Problem;
import org.jspecify.annotations.Nullable;

/**
 * What is known of the photographs of a sequence, kept beside them as JSON.
 *
 * @param sequence name of the movement or the plate
 * @param photographs in the order of the plan
 * @param missing permanent names of planned ones that were never taken
 * @param faults what is wrong with them
 * @param cleanup what has to be painted out, in sentences
 */
public record SequenceReport(
    String sequence,
    List<Photo> photographs,
    List<String> missing,
    List<Wrong> faults,
    List<String> cleanup) {

  private static final Gson GSON =
      new GsonBuilder().setPrettyPrinting().disableHtmlEscaping().create();

  public SequenceReport {
    photographs = List.copyOf(photographs);
    missing = List.copyOf(missing);
    faults = List.copyOf(faults);
    cleanup = List.copyOf(cleanup);
  }

  /**
   * A photograph. Pixels are its own, stops and pixels count from the first photograph.
   *
   * @param name permanent
   * @param file its file in the folder
   * @param source the file it was copied from
   * @param bytes of its file
   * @param width in pixels as it is seen
   * @param height in pixels as it is seen
   * @param right pixels that still things lie further to the right
   * @param down pixels that they lie further down
   * @param turned degrees that they are turned clockwise
   * @param scale how many times larger they are
   * @param brighter stops
   * @param redder stops by which red changed more than green
   * @param bluer stops by which blue changed more than green
   * @param detail 1 as much as in the first photograph
   * @param uncovered share of the hole, 0 to 1, or null where it could not be measured
   * @param planned share of the hole that is planned, or null
   * @param marks words for what is wrong with it
   */
  public record Photo(
      String name,
      String file,
      String source,
      long bytes,
      int width,
      int height,
      double right,
      double down,
      double turned,
      double scale,
      double brighter,
      double redder,
      double bluer,
      double detail,
      @Nullable Double uncovered,
      @Nullable Double planned,
      List<String> marks) {

    public Photo {
      marks = List.copyOf(marks);
    }

    /** Whether it has to be taken again. */
    public boolean isToTakeAgain() {
      for (FaultKind kind : FaultKind.values()) {
        if (kind.again() && marks.contains(kind.word())) {
          return true;
        }
      }
      return false;
    }
  }

  /**
   * Something wrong.
   *
   * @param kind a word for it
   * @param photographs permanent names
   * @param sentence what is so
   * @param remedy what to do
   */
  public record Wrong(String kind, List<String> photographs, String sentence, String remedy) {

    public Wrong {
      photographs = List.copyOf(photographs);
    }
  }

  /** The file it is kept in, within the folder of the photographs. */
  public static String fileName(String sequence) {
    return FileNames.safe(sequence) + ".json";
  }

  /** The small copy of a photograph, within the folder of the photographs. */
  public static String smallName(String photograph) {
    return "small/" + FileNames.ofPhotograph(photograph) + ".jpg";
  }

  /**
   * What was found out now.
   *
   * @param bytes of each photograph's file, in their order
   */
  public static SequenceReport of(CheckedSequence checked, List<Long> bytes) {
    List<Photo> photographs = new ArrayList<>();
    for (int i = 0; i < checked.photographs().size(); i++) {
      photographs.add(photo(checked.photographs().get(i), bytes.get(i)));
    }
    return new SequenceReport(
        checked.name(),
        photographs,
        checked.missing(),
        checked.faults().stream()
            .map(
                fault ->
                    new Wrong(
                        fault.kind().word(), fault.photographs(), fault.sentence(), fault.remedy()))
            .toList(),
        checked.cleanup());
  }

  private static Photo photo(CheckedPhotograph one, long bytes) {
    PhotoFacts facts = one.taken().facts();
    int every = PhotographReader.every(facts);
    return new Photo(
        one.planned().name(),
        one.planned().fileName() + one.taken().ending(),
        one.taken().name(),
        bytes,
        facts.width(),
        facts.height(),
        rounded(every * one.move().across(), 3),
        rounded(every * one.move().down(), 3),
        rounded(one.move().turn(), 4),
        rounded(one.move().scale(), 6),
        rounded(one.light().stops(), 4),
        rounded(one.light().redder(), 4),
        rounded(one.light().bluer(), 4),
        rounded(one.sharpness(), 3),
        one.uncovered().isPresent() ? rounded(one.uncovered().getAsDouble(), 5) : null,
        one.plannedUncovered().isPresent()
            ? rounded(one.plannedUncovered().getAsDouble(), 5)
            : null,
        one.marks().stream().map(FaultKind::word).toList());
  }

  private static double rounded(double number, int places) {
    double factor = Math.pow(10, places);
    return Math.rint(number * factor) / factor;
  }

  /** The earlier report with what was taken again in the place of what it had. */
  public SequenceReport with(SequenceReport retakes) {
    Map<String, Photo> all = new LinkedHashMap<>();
    photographs.forEach(one -> all.put(one.name(), one));
    retakes.photographs.forEach(one -> all.put(one.name(), one));
    Set<String> again = new HashSet<>();
    retakes.photographs.forEach(one -> again.add(one.name()));
    List<Wrong> wrong = new ArrayList<>();
    for (Wrong fault : faults) {
      List<String> left =
          fault.photographs().stream().filter(name -> !again.contains(name)).toList();
      if (left.size() == fault.photographs().size()) {
        wrong.add(fault);
      } else if (!left.isEmpty()) {
        wrong.add(new Wrong(fault.kind(), left, fault.sentence(), fault.remedy()));
      }
    }
    wrong.addAll(retakes.faults);
    Set<String> absent = new java.util.LinkedHashSet<>(missing);
    absent.addAll(retakes.missing);
    absent.removeAll(all.keySet());
    Set<String> paint = new java.util.LinkedHashSet<>(cleanup);
    paint.addAll(retakes.cleanup);
    List<Photo> inOrder =
        all.values().stream()
            .sorted(java.util.Comparator.comparing(Photo::name, new NaturalOrder()))
            .toList();
    return new SequenceReport(sequence, inOrder, List.copyOf(absent), wrong, List.copyOf(paint));
  }

  /** Its file's bytes. */
  public byte[] json() {
    return (GSON.toJson(this) + "\n").getBytes(StandardCharsets.UTF_8);
  }

  /**
   * Reads one.
   *
   * @throws InputException if it is damaged
   */
  public static SequenceReport read(Path file) {
    String text = new String(GivenFile.bytes(file, Limit.REPORT), StandardCharsets.UTF_8);
    try {
      SequenceReport report = GSON.fromJson(text, SequenceReport.class);
      if (report != null) {
        return report;
      }
    } catch (JsonParseException | NullPointerException damaged) {
      // Told below.
    }
    throw new InputException(
        Problem.ofFile(
            file.toString(),
            "this report on photographs is damaged",
            "move it away, and run barsheet photographs again"));
  }
}
