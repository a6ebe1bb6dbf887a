package org.barsheet.production;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.barsheet.clips.ClipReader;
import org.barsheet.clips.UnreadableClipException;
import org.barsheet.exposure.ReceivedClip;
import org.barsheet.handoff.Handoff;
import org.barsheet.plan.Performer;
import org.barsheet.plan.Plan;

/** Looks for the performers' clips in the folder that the plan names. */
final class Clips {

  private Clips() {}

  /** One a performer whose clip has a name, in the plan's order; none without a folder. */
  static List<ReceivedClip> of(Plan plan) {
    List<ReceivedClip> clips = new ArrayList<>();
    for (Performer performer : plan.performers()) {
      if (plan.clips().isPresent() && !performer.clip().isEmpty()) {
        clips.add(look(plan.clips().get(), performer));
      }
    }
    return List.copyOf(clips);
  }

  /** The plan with the rates and sizes that the clips themselves have. */
  static Plan known(Plan plan, List<ReceivedClip> clips) {
    Map<String, Performer> received = new HashMap<>();
    clips.forEach(clip -> received.put(clip.performer().name(), clip.asReceived()));
    return plan.with(
        plan.performers().stream().map(p -> received.getOrDefault(p.name(), p)).toList());
  }

  private static ReceivedClip look(Path folder, Performer performer) {
    Optional<Path> file =
        Stream.of(performer.clip(), Handoff.clipFile(performer))
            .flatMap(name -> inside(folder, name).stream())
            .filter(Files::isRegularFile)
            .findFirst();
    return file.map(found -> read(found, performer)).orElse(ReceivedClip.missing(performer));
  }

  private static ReceivedClip read(Path file, Performer performer) {
    try {
      return ReceivedClip.received(performer, ClipReader.read(file));
    } catch (UnreadableClipException damaged) {
      return ReceivedClip.unreadable(performer, damaged.reason());
    } catch (IOException unreadable) {
      return ReceivedClip.unreadable(performer, "cannot be read from the disk");
    }
  }

  /** The file of a name, unless the name leads out of the folder. */
  private static Optional<Path> inside(Path folder, String name) {
    try {
      Path root = folder.toAbsolutePath().normalize();
      Path file = root.resolve(name).normalize();
      return file.startsWith(root) ? Optional.of(file) : Optional.empty();
    } catch (InvalidPathException noName) {
      return Optional.empty();
    }
  }
}
