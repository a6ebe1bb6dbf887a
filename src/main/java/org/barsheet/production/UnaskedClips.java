package org.barsheet.production;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalLong;
import org.barsheet.film.FilmSheet;
import org.barsheet.plan.Performer;
import org.barsheet.plan.Plan;
import org.barsheet.timing.Finding;
import org.barsheet.timing.Finding.Concerns;
import org.barsheet.timing.Finding.Severity;

/** Recordings in the folder of clips that nobody was asked for, and what they may be. */
final class UnaskedClips {

  private UnaskedClips() {}

  /** The same film, with a remark on each of them after all others. */
  static FilmSheet addedTo(FilmSheet film, Plan plan) {
    List<Path> unasked = Clips.unasked(plan);
    if (unasked.isEmpty()) {
      return film;
    }
    List<Finding> all = new ArrayList<>(film.findings());
    unasked.forEach(file -> all.add(finding(file, plan)));
    return film.withFindings(all);
  }

  private static Finding finding(Path file, Plan plan) {
    String name = String.valueOf(file.getFileName());
    Optional<Performer> from = sender(name, plan);
    return new Finding(
        Severity.REMARK,
        Concerns.EDITOR,
        "",
        "",
        OptionalLong.empty(),
        "nobody was asked for "
            + name
            + from.map(one -> ": it may be another take of " + one.name()).orElse(""),
        from.map(one -> "to use it, write clips: {" + one.name() + ": {file: …}}")
            .orElse("ask who sent it, or take it out of the folder"));
  }

  /** Whose name, clip or part its name begins with; the longest wins. */
  private static Optional<Performer> sender(String file, Plan plan) {
    Optional<Performer> sender = Optional.empty();
    int longest = 0;
    for (Performer performer : plan.performers()) {
      for (String begins : List.of(performer.name(), performer.part(), stem(performer.clip()))) {
        if (begins.length() > longest && plain(file).startsWith(plain(begins))) {
          sender = Optional.of(performer);
          longest = begins.length();
        }
      }
    }
    return sender;
  }

  private static String stem(String clip) {
    int dot = clip.lastIndexOf('.');
    return dot > 0 ? clip.substring(0, dot) : clip;
  }

  private static String plain(String name) {
    return name.toLowerCase(Locale.ROOT);
  }
}
