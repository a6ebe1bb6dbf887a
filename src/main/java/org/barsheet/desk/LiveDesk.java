package org.barsheet.desk;

import com.google.gson.JsonArray;
import com.google.gson.JsonObject;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.barsheet.input.InputException;
import org.barsheet.input.Problem;
import org.barsheet.plan.edit.PlanEdit;
import org.barsheet.plan.edit.PlanTexts;
import org.barsheet.plan.read.PlanReader;
import org.barsheet.production.editing.EditedPlan;
import org.barsheet.production.editing.Outcome;
import org.barsheet.review.ReviewPage;
import org.jspecify.annotations.Nullable;

/** The plan on the desk: what all windows show, and what happens to it, one thing after another. */
final class LiveDesk {

  private static final int MOST_SHOWN = 16;

  private final Path plan;
  private final Path folder;
  private final Windows windows;
  private LaidPlan laid = LaidPlan.NOTHING;
  private long version;
  private @Nullable EditedPlan edited;

  /** What the plan said in the last few states: an edit may come from a window that shows one. */
  private final Map<Long, PlanTexts> shown =
      new LinkedHashMap<>() {
        @Override
        protected boolean removeEldestEntry(Map.Entry<Long, PlanTexts> eldest) {
          return size() > MOST_SHOWN;
        }
      };

  /**
   * A plan.
   *
   * @param folder with the sheets made last
   */
  LiveDesk(Path plan, Path folder, Windows windows) {
    this.plan = plan;
    this.folder = folder;
    this.windows = windows;
  }

  /** Reads the plan's files again, and tells the windows where that makes a difference. */
  synchronized void look() {
    LaidPlan now = laidAgain();
    if (isRewritten() || !now.looksLike(laid)) {
      show(now);
    }
  }

  private LaidPlan laidAgain() {
    return laid.again(plan, () -> PlanReader.read(plan), folder);
  }

  /** Whether somebody wrote into the plan's files since they were last looked at. */
  private boolean isRewritten() {
    try {
      return edited().look();
    } catch (InputException unreadable) {
      return false; // told among the problems
    }
  }

  private void show(LaidPlan now) {
    laid = now;
    tellVersion();
  }

  private void tellVersion() {
    version++;
    windows.tell(versionEvent());
  }

  /** The event that says which state is the latest. */
  synchronized String versionEvent() {
    return Windows.event("laid", String.valueOf(version));
  }

  /** The whole page with the film as it is. */
  synchronized String page() {
    return laid.film()
        .map(film -> ReviewPage.live(film, laid.json()))
        .orElseGet(() -> WrongPlanPage.of(plan, version, Told.problems(laid.problems(), typed())));
  }

  /**
   * Makes edits, and keeps them unless they make a plan impossible that was possible before.
   *
   * @param json as {@link Orders} reads it
   * @param keep whether to write the plan, rather than only to tell what would come of it
   * @return what came of it, as JSON
   */
  synchronized String edit(String json, boolean keep) {
    Optional<PlanTexts> after = Optional.empty();
    try {
      PlanEdit edit = Orders.read(json);
      PlanTexts seen = seen(Orders.version(json));
      after = Optional.of(seen.with(edit));
      LaidPlan next = laid.again(plan, after.get()::understood, folder);
      if (!next.problems().isEmpty() && laid.problems().isEmpty()) {
        return Told.refused(next.problems(), after);
      }
      List<String> found = next.foundSince(laid);
      if (keep && edited().make(edit, seen) instanceof Outcome.Question question) {
        look();
        return Told.asked(question.places());
      }
      if (keep) {
        show(edited().now().isSameAs(after.get()) ? next : laidAgain());
      }
      return Told.done(next, found, Orders.motif(json));
    } catch (InputException wrong) {
      return Told.refused(wrong.problems(), after);
    } catch (IllegalArgumentException nowhere) {
      String sentence = "the plan has changed meanwhile";
      return Told.refused(
          List.of(Problem.ofFile("", sentence, "look at it and try again")), Optional.empty());
    }
  }

  /** The plan as a window saw it, as far back as that is known; else as it is now. */
  private PlanTexts seen(long at) {
    return Optional.ofNullable(shown.get(at)).orElseGet(() -> edited().now());
  }

  /** The plan as it is typed; nothing where it can't be read, which is told among the problems. */
  private Optional<PlanTexts> typed() {
    try {
      return Optional.of(edited().now());
    } catch (InputException unreadable) {
      return Optional.empty();
    }
  }

  /** Opened with the first use: a plan that cannot be read yet may be put right before. */
  private EditedPlan edited() {
    EditedPlan opened = edited == null ? EditedPlan.open(plan) : edited;
    edited = opened;
    return opened;
  }

  /** Takes the last edit back, or makes it again. */
  synchronized String step(boolean back) {
    try {
      Outcome outcome = back ? edited().undo() : edited().redo();
      show(laidAgain());
      return outcome instanceof Outcome.Question question
          ? Told.asked(question.places())
          : Told.done(laid, List.of(), "");
    } catch (InputException wrong) {
      return Told.refused(wrong.problems(), Optional.empty());
    }
  }

  /** Keeps a drawing beside the plan; told where, or why not. */
  String drawing(String name, byte[] image) {
    try {
      JsonObject kept = new JsonObject();
      kept.addProperty("file", DroppedDrawings.keep(plan.resolveSibling(""), name, image));
      return kept.toString();
    } catch (InputException refused) {
      return Told.refused(refused.problems(), Optional.empty());
    }
  }

  /** Figures of the score that return and that nobody has named. */
  synchronized String figures() {
    JsonArray figures = new JsonArray();
    laid.film().ifPresent(film -> Figures.of(film).forEach(figures::add));
    JsonObject told = new JsonObject();
    told.add("figures", figures);
    return told.toString();
  }

  /** Everything a window shows, as JSON. */
  synchronized String state() {
    JsonObject desk = new JsonObject();
    desk.addProperty("version", version);
    desk.addProperty("plan", String.valueOf(plan.getFileName()));
    desk.addProperty("folder", String.valueOf(folder.getFileName()));
    desk.add("problems", Told.problems(laid.problems(), typed()));
    desk.add("moved", Told.texts(laid.moved()));
    typed()
        .ifPresent(
            now -> {
              shown.put(version, now);
              desk.addProperty("undo", edited().canUndo());
              desk.addProperty("redo", edited().canRedo());
              desk.add("tree", Orders.json(now.tree()));
            });
    return "{\"desk\":"
        + desk
        + ",\"film\":"
        + (laid.json().isEmpty() ? "null" : laid.json())
        + "}";
  }
}
