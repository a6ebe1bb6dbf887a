package org.barsheet.desk;

import com.google.gson.JsonArray;
import com.google.gson.JsonObject;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.CancellationException;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.function.Consumer;
import org.barsheet.input.InputException;
import org.barsheet.input.Problem;
import org.barsheet.production.Extras;
import org.barsheet.production.Made;
import org.barsheet.production.Production;

/** Makes the sheets while the desk goes on; one make at a time, which can be stopped. */
final class Making {

  private final Path plan;
  private final Path folder;
  private final Consumer<JsonObject> told;
  private final Consumer<Throwable> faults;
  private final AtomicBoolean going = new AtomicBoolean();
  private volatile boolean stopped;

  /**
   * Makes nothing yet.
   *
   * @param told hears each step, and how it ended
   * @param faults hears what went wrong inside
   */
  Making(Path plan, Path folder, Consumer<JsonObject> told, Consumer<Throwable> faults) {
    this.plan = plan;
    this.folder = folder;
    this.told = told;
    this.faults = faults;
  }

  /** Begins, unless it goes on already. */
  void begin() {
    if (going.compareAndSet(false, true)) {
      stopped = false;
      Thread thread = new Thread(this::make, "make");
      thread.setDaemon(true);
      thread.start();
    }
  }

  /** Ends it at its next step; the sheets before stay as they are. */
  void stop() {
    stopped = true;
  }

  private void make() {
    try {
      Production.requireClosedWorkbook(plan, folder);
      Made made = Production.make(plan, folder, Extras.NONE, this::step);
      tell("made", files(made.files()));
    } catch (CancellationException asked) {
      tell("stopped", new JsonArray());
    } catch (InputException refused) {
      tell("refused", Told.problems(refused.problems()));
    } catch (RuntimeException | Error fault) {
      Problem told = Problem.ofFile("", "internal error; your files are unchanged", "report it");
      tell("refused", Told.problems(List.of(told)));
      faults.accept(fault);
    } finally {
      going.set(false);
    }
  }

  private void step(String doing) {
    if (stopped) {
      throw new CancellationException();
    }
    JsonObject step = new JsonObject();
    step.addProperty("step", doing);
    told.accept(step);
  }

  private void tell(String how, JsonArray what) {
    JsonObject end = new JsonObject();
    end.add(how, what);
    told.accept(end);
  }

  /** The files as addresses on the desk, which begins in the plan's folder. */
  private JsonArray files(List<Path> files) {
    JsonArray list = new JsonArray();
    Path root = plan.resolveSibling("");
    files.forEach(
        file -> list.add(root.relativize(file.toAbsolutePath()).toString().replace('\\', '/')));
    return list;
  }
}
