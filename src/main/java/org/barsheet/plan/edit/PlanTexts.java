package org.barsheet.plan.edit;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.barsheet.input.GivenFile;
import org.barsheet.input.Limit;
import org.barsheet.plan.Plan;
import org.barsheet.plan.read.PlanReader;
import org.barsheet.plan.read.PlanSource;
import org.barsheet.plan.source.Entry;
import org.barsheet.plan.source.PlanReading;

/**
 * What a plan's own files hold at one moment: the plan, and the table of its panels if it names
 * one. Immutable; nothing is written to the disk.
 */
public final class PlanTexts {

  private final Path plan;
  private final Map<Path, byte[]> files;
  private final Entry.Keyed tree;

  private PlanTexts(Path plan, Map<Path, byte[]> files, Entry.Keyed tree) {
    this.plan = plan;
    this.files = files;
    this.tree = tree;
  }

  /**
   * What they hold now.
   *
   * @throws org.barsheet.input.InputException if they can't be read as keys and values
   */
  public static PlanTexts read(Path plan) {
    PlanReading reading = new PlanReading(plan);
    PlanSource.read(reading);
    Map<Path, byte[]> files = new LinkedHashMap<>();
    files.put(plan, GivenFile.bytes(plan, Limit.WORKBOOK));
    reading.table().ifPresent(it -> files.put(it, GivenFile.bytes(it, Limit.WORKBOOK)));
    reading.problems().throwIfAny();
    return of(plan, files);
  }

  private static PlanTexts of(Path plan, Map<Path, byte[]> files) {
    PlanReading reading = new PlanReading(plan, files);
    Entry.Keyed tree = PlanSource.read(reading);
    reading.problems().throwIfAny();
    return new PlanTexts(plan, files, tree);
  }

  /** The plan's own file. */
  public Path plan() {
    return plan;
  }

  /** What they say. */
  public Entry.Keyed tree() {
    return tree;
  }

  /**
   * The plan as it is understood.
   *
   * @throws org.barsheet.input.InputException with everything that is wrong with it
   */
  public Plan understood() {
    return PlanReader.read(new PlanReading(plan, files));
  }

  /**
   * What they hold after an edit, every byte but the edit's own as it was; the same where it
   * changes nothing.
   *
   * @throws org.barsheet.input.InputException if the edit can't be made alone where it is to be
   *     made
   * @throws IllegalArgumentException if it leads nowhere
   */
  public PlanTexts with(PlanEdit edit) {
    PlanTexts now = this;
    for (TreeEdit one : smallest(edit)) {
      now = now.edited(one);
    }
    return now;
  }

  private List<TreeEdit> smallest(PlanEdit edit) {
    return new Together(List.of(edit)).in(tree);
  }

  /**
   * An edit that was made in an earlier version of the plan, as it is to be made in this one.
   *
   * @throws IllegalArgumentException if it leads nowhere in that version
   */
  public Carried carried(PlanEdit edit, PlanTexts seen) {
    return Carried.over(seen.smallest(edit), seen.tree, tree);
  }

  private PlanTexts edited(TreeEdit edit) {
    EditPlace place = EditPlace.of(plan, tree, edit);
    byte[] before = Objects.requireNonNull(files.get(place.file()));
    Map<Path, byte[]> edited = new LinkedHashMap<>(files);
    edited.put(place.file(), place.edited(before, tree, edit));
    PlanTexts after = of(plan, edited);
    if (!place.isSo(ChangedTree.of(tree, edit), after.tree)) {
      throw place.refuse();
    }
    return after;
  }

  /** The files that differ from others of the same plan. */
  public List<EditedFile> since(PlanTexts before) {
    List<EditedFile> changed = new ArrayList<>();
    files.forEach(
        (file, now) -> {
          Optional<byte[]> was = Optional.ofNullable(before.files.get(file));
          was.filter(bytes -> !Arrays.equals(bytes, now))
              .ifPresent(bytes -> changed.add(new EditedFile(file, bytes, now)));
        });
    return changed;
  }

  /** Whether they hold the same bytes. */
  public boolean isSameAs(PlanTexts other) {
    return files.keySet().equals(other.files.keySet()) && since(other).isEmpty();
  }
}
