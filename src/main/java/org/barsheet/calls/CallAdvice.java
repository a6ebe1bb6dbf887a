package org.barsheet.calls;

import java.nio.file.Path;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.barsheet.exposure.FileNames;
import org.barsheet.plan.Delivery;
import org.barsheet.plan.Performer;
import org.barsheet.plan.Plan;

/**
 * How one performer frames and records themselves, and what they send (common practice, no source).
 */
final class CallAdvice {

  private static final DateTimeFormatter DAY =
      DateTimeFormatter.ofPattern("EEEE, MMMM d, yyyy", Locale.US);

  private final Plan plan;
  private final Delivery delivery;
  private final Performer performer;

  CallAdvice(Plan plan, Performer performer) {
    this.plan = plan;
    this.delivery = plan.delivery();
    this.performer = performer;
  }

  List<String> frame(List<CallFraming> framings) {
    List<String> lines = new ArrayList<>(framings.stream().map(CallFraming::words).toList());
    if (!framings.isEmpty()) {
      lines.add(
          "The heavy box is the opening you're seen through. Head, hands and the whole instrument"
              + " stay inside it while you play; your head is about a "
              + (framings.get(0).headShare() > 0.3 ? "third" : "quarter")
              + " of its height.");
    }
    lines.add(
        "Put the camera on something firm, level with your eyes, and look into the lens unless the"
            + " director asks for something else.");
    lines.add(
        "Set exposure, white balance and focus by hand and leave them alone; " + rate() + ".");
    return lines;
  }

  /** The rate the performer said, for their clip is placed by it. */
  private String rate() {
    return performer
        .clipRate()
        .map(said -> "shoot at " + said + " fps, as you told us, never at a variable rate")
        .orElse(
            "shoot at "
                + plan.film().rate()
                + " fps if the camera has it, otherwise at the rate it has,"
                + " never at a variable rate");
  }

  List<String> sound() {
    List<String> lines = new ArrayList<>();
    lines.add(use());
    if (!performer.part().isEmpty()) {
      lines.add("Tune to the guide before you record: A is 440 Hz.");
    }
    if (delivery.soundUsed().orElse(true)) {
      lines.add(
          "Put the microphone about 1 m (3 ft) from the instrument, outside the box, away from"
              + " fans and street noise. Turn off noise reduction and automatic level; the loudest"
              + " note stays below full level.");
    }
    lines.add("Wear closed headphones, so that no click is heard in your recording.");
    return lines;
  }

  private String use() {
    return delivery
        .soundUsed()
        .map(
            used ->
                used
                    ? "Your sound is heard in the film: record it as well as you can."
                    : "Your sound isn't heard in the film, it only finds your clip's place: the"
                        + " camera's own microphone will do.")
        .orElse("Whether your sound is heard in the film isn't settled: record it as if it were.");
  }

  List<String> send() {
    String clip = performer.clip().isEmpty() ? performer.name() + ".mov" : performer.clip();
    String name = FileNames.withoutExtension(Path.of(FileNames.safe(clip)));
    String ending = FileNames.safe(clip).substring(name.length());
    List<String> lines = new ArrayList<>();
    lines.add(
        "One file named "
            + name
            + ending
            + ", as the camera recorded it: not trimmed, not converted, not through a messenger"
            + " that shrinks it. A second take is "
            + name
            + " take 2"
            + ending
            + ".");
    if (delivery.soundUsed().orElse(true)) {
      lines.add(
          "Sound recorded apart: "
              + name
              + ".wav, in one piece, 48000 samples per second, 24 bits.");
    }
    say(lines, "Send it to: ", delivery.to());
    say(lines, "By: ", delivery.deadline().map(CallAdvice::day).orElse(""));
    say(lines, "Questions: ", delivery.contact());
    return lines;
  }

  private static void say(List<String> lines, String what, String answer) {
    if (!answer.isEmpty()) {
      lines.add(what + answer);
    }
  }

  private static String day(LocalDate day) {
    return DAY.format(day);
  }

  /** What the plan doesn't say, to be written in by hand. */
  List<String> toFillIn() {
    List<String> missing = new ArrayList<>();
    if (delivery.to().isEmpty()) {
      missing.add("Send it to");
    }
    if (delivery.deadline().isEmpty()) {
      missing.add("By");
    }
    if (delivery.contact().isEmpty()) {
      missing.add("Questions");
    }
    return missing;
  }
}
