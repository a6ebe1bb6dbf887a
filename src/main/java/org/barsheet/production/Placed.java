package org.barsheet.production;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.barsheet.handoff.HandoffFile;
import org.barsheet.handoff.Placeholders;
import org.barsheet.production.publish.OutputFolder;

/**
 * Placeholders put among photographs.
 *
 * @param drawn placeholders written, in the order written
 * @param photographs files that stand in the place of a drawing already and stay
 */
public record Placed(List<Path> drawn, List<Path> photographs) {

  public static final Placed NONE = new Placed(List.of(), List.of());

  public Placed {
    drawn = List.copyOf(drawn);
    photographs = List.copyOf(photographs);
  }

  /** Writes a placeholder wherever there is no photograph yet. */
  static Placed into(OutputFolder out, List<HandoffFile> placeholders) {
    List<Path> drawn = new ArrayList<>();
    List<Path> photographs = new ArrayList<>();
    for (HandoffFile file : placeholders) {
      Path target = out.folder().resolve(file.path());
      if (Placeholders.mayStandAt(target)) {
        out.write(file.path(), file.content(), Placeholders::mayStandAt);
        drawn.add(target);
      } else {
        photographs.add(target);
      }
    }
    return new Placed(drawn, photographs);
  }

  /**
   * The same after all files went to their places: where a photograph was saved meanwhile, it
   * stayed.
   */
  Placed published(List<Path> files) {
    Set<Path> there = Set.copyOf(files);
    Map<Boolean, List<Path>> parted =
        drawn.stream().collect(Collectors.partitioningBy(there::contains));
    List<Path> stayed = new ArrayList<>(photographs);
    stayed.addAll(parted.getOrDefault(false, List.of()));
    return new Placed(parted.getOrDefault(true, List.of()), stayed);
  }
}
