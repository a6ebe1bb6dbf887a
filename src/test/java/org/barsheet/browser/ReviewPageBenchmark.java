package org.barsheet.browser;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Random;
import javax.sound.midi.InvalidMidiDataException;
import javax.sound.midi.MetaMessage;
import javax.sound.midi.MidiEvent;
import javax.sound.midi.MidiSystem;
import javax.sound.midi.Sequence;
import javax.sound.midi.ShortMessage;
import javax.sound.midi.Track;
import org.barsheet.production.Extras;
import org.barsheet.production.Production;
import org.barsheet.production.Progress;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Prints how large the page of a long film is, and how soon and how smoothly it plays. */
@Tag("benchmark")
class ReviewPageBenchmark {

  private static final int PANELS = 200;
  private static final int BARS = 600;
  private static final int TICKS = 480;

  @Test
  void two_hundred_panels_and_twenty_minutes(@TempDir Path folder) throws Exception {
    Browser.required();
    writeScore(folder.resolve("long.mid"));
    writePlan(folder);
    Production.make(
        folder.resolve("long.yaml"), folder.resolve("out"), Extras.NONE, Progress.SILENT);
    Path page = folder.resolve("out/long.html");
    System.out.printf("page: %.2f MB%n", Files.size(page) / 1e6);
    try (Browser browser = Browser.start(folder)) {
      browser.width(1440, 900);
      for (int run = 0; run < 5; run++) {
        browser.open(page);
        System.out.println(
            "ready after " + browser.run("return document.body.dataset.ready") + " ms");
      }
      for (String key : List.of("2", "3", "4", "1", "f", "]", "ArrowDown", "PageDown")) {
        Object took =
            browser.run(
                "const from = performance.now(); document.body.dispatchEvent("
                    + "new KeyboardEvent('keydown', {key: arguments[0], bubbles: true}));"
                    + "document.body.offsetHeight; return Math.round(performance.now() - from)",
                key);
        System.out.println("key " + key + " answered after " + took + " ms");
      }
      browser.run("reviewPage.seek(14000); reviewPage.play();");
      Object frames =
          browser.later(
              "let n = 0; const from = performance.now(); const count = () => {"
                  + "n++; performance.now() - from < 4000 ? requestAnimationFrame(count)"
                  + " : arguments[0](n / 4); }; requestAnimationFrame(count);");
      System.out.println("while playing: " + frames + " screen photographs a second");
    }
  }

  /** Ten parts at 120 bpm in 4/4: half of them in quarters, half in eighths. */
  private static void writeScore(Path file) throws InvalidMidiDataException, IOException {
    Sequence sequence = new Sequence(Sequence.PPQ, TICKS);
    Random random = new Random(20);
    for (int part = 0; part < 10; part++) {
      Track track = sequence.createTrack();
      byte[] name = ("Part " + part).getBytes(java.nio.charset.StandardCharsets.US_ASCII);
      track.add(new MidiEvent(new MetaMessage(3, name, name.length), 0));
      int channel = part < 9 ? part : 10;
      track.add(
          new MidiEvent(
              new ShortMessage(ShortMessage.PROGRAM_CHANGE, channel, 8 * (part + 1), 0), 0));
      int length = part % 2 == 0 ? TICKS : TICKS / 2;
      for (long tick = 0; tick < 4L * TICKS * BARS; tick += length) {
        int pitch = 40 + 3 * part + random.nextInt(12);
        track.add(new MidiEvent(new ShortMessage(ShortMessage.NOTE_ON, channel, pitch, 80), tick));
        track.add(
            new MidiEvent(
                new ShortMessage(ShortMessage.NOTE_OFF, channel, pitch, 0), tick + length - 20));
      }
    }
    MidiSystem.write(sequence, 1, file.toFile());
  }

  private static void writePlan(Path folder) throws IOException {
    List<Path> drawings;
    try (var files = Files.list(Path.of("scores", "panels"))) {
      drawings = files.sorted().toList();
    }
    StringBuilder plan =
        new StringBuilder("title: Long\nscore: long.mid\nfilm: {frame-rate: 24}\n");
    plan.append("openings:\n");
    for (int i = 0; i < 20; i++) {
      plan.append(
          "  o"
              + i
              + ": {left: "
              + i
              + ", top: 2, width: 0.9, height: 2, hinge: left, to: 90 deg}\n");
    }
    plan.append("panels:\n");
    for (int i = 0; i < PANELS; i++) {
      Files.copy(drawings.get(i % drawings.size()), folder.resolve(i + ".png"));
      plan.append(
          "  - {panel: " + (i + 1) + ", action: Something happens here, cue: bar " + (1 + 3 * i));
      plan.append(
          ", drawing: " + i + ".png, field: {from: whole, to: {left: 3, top: 2, width: 12}}");
      plan.append(
          ", reveals: [{opening: o"
              + i % 20
              + ", photographs: 24, shown: on twos, lands-on: bar "
              + (3 + 3 * i));
      plan.append(i % 40 < 20 ? "}]}\n" : ", moves: closes}]}\n");
    }
    Files.writeString(folder.resolve("long.yaml"), plan);
  }
}
