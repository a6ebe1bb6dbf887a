package org.barsheet.production;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.barsheet.clips.ClipReader;
import org.barsheet.clips.UnreadableClipException;
import org.barsheet.exposure.FileNames;
import org.barsheet.input.InputException;
import org.barsheet.plan.Performer;
import org.barsheet.plan.Plan;
import org.barsheet.plan.SentClip;
import org.barsheet.plan.read.PlanReader;
import org.barsheet.received.ReceivedClip;

/** Looks for the performers' clips where the plan says they are. */
final class Clips {

  /** What recordings are called. */
  private static final String RECORDINGS =
      "(?i).+\\.(mov|mp4|m4v|m4a|3gp|avi|mkv|webm|mxf|mts|wav|aiff?|flac|mp3|aac|ogg|opus)";

  private Clips() {}

  /**
   * One a performer whose clip has a name, in the plan's order, each followed by the sound they
   * recorded apart; none where the plan names neither a folder nor a table of clips.
   */
  static List<ReceivedClip> of(Plan plan) {
    List<ReceivedClip> clips = new ArrayList<>();
    for (Performer performer : plan.performers()) {
      Optional<SentClip> came = plan.clips().of(performer.name());
      if (came.isPresent()) {
        clips.add(told(plan, came.get(), performer.with(came.get())));
      } else if (plan.clips().areExpected() && !performer.clip().isEmpty()) {
        clips.add(look(plan, performer));
        soundApart(plan, performer).ifPresent(clips::add);
      }
    }
    return List.copyOf(clips);
  }

  private static ReceivedClip told(Plan plan, SentClip came, Performer performer) {
    return Files.isRegularFile(came.file())
        ? read(came.file(), performer)
        : ReceivedClip.lost(
            performer,
            "is missing: " + asTyped(plan, came.file()) + " is not a file",
            "put it there, or correct its file under clips");
  }

  /** A file as seen from the plan's folder, so that sheets do not depend on where that is. */
  private static String asTyped(Plan plan, Path file) {
    Optional<Path> folder = Optional.ofNullable(plan.text().file().getParent());
    return folder
        .filter(file::startsWith)
        .map(parent -> parent.relativize(file))
        .orElse(file)
        .toString()
        .replace('\\', '/');
  }

  /** Every file that a performer's clip may come as, there or not; none of a wrong plan. */
  static Set<Path> filesOf(Path planFile) {
    try {
      return filesOf(PlanReader.read(planFile));
    } catch (InputException wrong) {
      // Told where the plan is read in earnest; here it only means that fewer files are known.
      return Set.of();
    }
  }

  static Set<Path> filesOf(Plan plan) {
    Set<Path> files = new LinkedHashSet<>();
    plan.clips().told().forEach(came -> files.add(came.file()));
    plan.performers().forEach(performer -> places(plan, performer).forEach(files::add));
    return files;
  }

  /** Where a clip that has come lies. */
  static Optional<Path> fileOf(Plan plan, ReceivedClip clip) {
    Performer performer = clip.performer();
    return clip.state() == ReceivedClip.State.RECEIVED
        ? plan.clips()
            .of(performer.name())
            .map(SentClip::file)
            .or(() -> places(plan, performer).filter(Files::isRegularFile).findFirst())
        : Optional.empty();
  }

  /** The files of those with moving images, by performer. */
  static Map<String, Path> moving(Plan plan, List<ReceivedClip> clips) {
    Map<String, Path> moving = new HashMap<>();
    for (ReceivedClip clip : clips) {
      if (clip.video().isPresent()) {
        fileOf(plan, clip).ifPresent(file -> moving.putIfAbsent(clip.performer().name(), file));
      }
    }
    return moving;
  }

  /** The plan with the rates and sizes that the clips themselves have. */
  static Plan known(Plan plan, List<ReceivedClip> clips) {
    Map<String, Performer> received = new HashMap<>();
    clips.forEach(clip -> received.putIfAbsent(clip.performer().name(), clip.asReceived()));
    return plan.with(
        plan.performers().stream().map(p -> received.getOrDefault(p.name(), p)).toList());
  }

  private static ReceivedClip look(Plan plan, Performer performer) {
    Optional<Path> file = places(plan, performer).filter(Files::isRegularFile).findFirst();
    return file.map(found -> read(found, performer)).orElse(ReceivedClip.missing(performer));
  }

  /** {@code cello.wav} beside {@code cello.mov}, as call sheets ask for it. */
  private static Optional<ReceivedClip> soundApart(Plan plan, Performer performer) {
    Performer recorded = performer.withSoundApart(apart(performer));
    return recorded.clip().equals(performer.clip())
        ? Optional.empty()
        : Optional.of(look(plan, recorded))
            .filter(clip -> clip.state() != ReceivedClip.State.MISSING);
  }

  private static String apart(Performer performer) {
    return FileNames.withoutExtension(Path.of(FileNames.safe(performer.clip()))) + ".wav";
  }

  /** Files in the folder of clips that nobody was asked for, in order of name. */
  static List<Path> unasked(Plan plan) {
    Set<Path> asked = new LinkedHashSet<>();
    for (Performer performer : plan.performers()) {
      places(plan, performer).forEach(asked::add);
      if (!performer.clip().isEmpty()) {
        places(plan, performer.withSoundApart(apart(performer))).forEach(asked::add);
      }
    }
    List<Path> unasked = new ArrayList<>();
    plan.clips()
        .folder()
        .map(folder -> folder.toAbsolutePath().normalize())
        .ifPresent(
            folder -> {
              try (Stream<Path> files = Files.list(folder)) {
                files
                    .filter(file -> Files.isRegularFile(file) && !asked.contains(file))
                    .filter(file -> file.getFileName().toString().matches(RECORDINGS))
                    .sorted()
                    .forEach(unasked::add);
              } catch (IOException noFolder) {
                // Told where each clip is looked for.
              }
            });
    return unasked;
  }

  private static ReceivedClip read(Path file, Performer performer) {
    try {
      return ReceivedClip.received(performer, ClipReader.read(file));
    } catch (UnreadableClipException damaged) {
      return ReceivedClip.unreadable(performer, damaged.reason(), damaged.remedy());
    } catch (IOException unreadable) {
      return ReceivedClip.unreadable(
          performer, "cannot be read from the disk", "check its permissions, or ask for it again");
    }
  }

  /** Where a performer's clip may lie in the plan's folder of clips. */
  private static Stream<Path> places(Plan plan, Performer performer) {
    return plan.clips().folder().stream()
        .flatMap(
            folder ->
                Stream.of(performer.clip(), FileNames.ofClip(performer))
                    .filter(name -> !name.isEmpty())
                    .flatMap(name -> inside(folder, name).stream()));
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
