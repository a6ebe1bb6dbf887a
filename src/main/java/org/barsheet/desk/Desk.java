package org.barsheet.desk;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Optional;
import java.util.function.Consumer;
import org.barsheet.input.InputException;
import org.barsheet.input.Problem;
import org.barsheet.production.Production;
import org.barsheet.production.Watcher;

/** Opens a plan in the browser: the review page, alive, and with everything that changes a plan. */
public final class Desk {

  private Desk() {}

  /**
   * Where a desk is.
   *
   * @param address to open in a browser
   * @param already whether it was open before
   */
  public record Opened(String address, boolean already) {}

  /**
   * Opens a desk and follows the plan's files until the pause says to end. Where a desk has the
   * plan already, it tells that one's address and ends at once.
   *
   * @param plan a plan that is there
   * @param told hears the address as soon as it can be opened
   * @param faults hears what goes wrong inside while the desk goes on
   * @throws InputException if the plan is not there, or no port is free
   */
  public static void run(
      Path plan, Watcher.Pause pause, Consumer<Opened> told, Consumer<Throwable> faults) {
    try (pause) {
      Path real = real(plan);
      Optional<OneDesk> one = OneDesk.take(real);
      if (one.isEmpty()) {
        told.accept(new Opened(OneDesk.address(real), true));
        return;
      }
      try (OneDesk mine = one.get()) {
        serve(real, pause, mine, told, faults);
      }
    } catch (IOException refused) {
      throw new InputException(
          Problem.ofFile(
              plan.toString(),
              "this computer doesn't let the desk answer a browser (" + refused.getMessage() + ")",
              "check what forbids programs to listen on 127.0.0.1"));
    }
  }

  private static Path real(Path plan) {
    try {
      return plan.toRealPath();
    } catch (IOException notThere) {
      throw new InputException(
          Problem.ofFile(
              plan.toString(), "there is no such file", "check the name and the folder"));
    }
  }

  private static void serve(
      Path plan,
      Watcher.Pause pause,
      OneDesk one,
      Consumer<Opened> told,
      Consumer<Throwable> faults)
      throws IOException {
    Windows windows = new Windows();
    Path folder = Production.defaultFolder(plan);
    LiveDesk desk = new LiveDesk(plan, folder, windows);
    Making making =
        new Making(
            plan, folder, step -> windows.tell(Windows.event("making", step.toString())), faults);
    ProductionFiles files = new ProductionFiles(plan.resolveSibling("").toRealPath());
    desk.look();
    try (DeskServer server = DeskServer.start(windows, desk, making, files, faults)) {
      one.tell(server.address());
      told.accept(new Opened(server.address(), false));
      new Watcher(plan, saved -> desk.look(), pause).run();
    }
  }
}
