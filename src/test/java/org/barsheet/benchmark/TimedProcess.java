package org.barsheet.benchmark;

import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * One run of what was built.
 *
 * @param seconds from start to end
 * @param processor seconds of processor time, user and system, its children's too; 0 where the
 *     system does not tell
 * @param megabytes most memory held at once, as the system counts it; 0 where it does not tell
 */
record TimedProcess(double seconds, double processor, long megabytes) {

  private static final int RUNS = 5;

  /** Clock ticks a second that Linux counts processor time in (proc(5), USER_HZ). */
  private static final double TICKS = 100;

  /**
   * The run of the median time out of five.
   *
   * @param program the launcher, or Java and how it is to run the jar
   */
  static TimedProcess median(List<String> program, List<String> arguments)
      throws IOException, InterruptedException {
    List<String> command = new ArrayList<>(program);
    command.addAll(arguments);
    List<TimedProcess> runs = new ArrayList<>();
    for (int run = 0; run < RUNS; run++) {
      runs.add(once(command));
    }
    runs.sort(Comparator.comparingDouble(TimedProcess::seconds));
    return runs.get(RUNS / 2);
  }

  /** One run of a command. */
  static TimedProcess once(List<String> command) throws IOException, InterruptedException {
    long start = System.nanoTime();
    Process process =
        new ProcessBuilder(command)
            .redirectErrorStream(true)
            .redirectOutput(new File("target/benchmark.log"))
            .start();
    long kilobytes = 0;
    double before = childrenSeconds();
    while (process.isAlive()) {
      kilobytes = Math.max(kilobytes, residentKilobytes(process.pid()));
      Thread.sleep(10);
    }
    double seconds = (System.nanoTime() - start) / 1e9;
    if (process.exitValue() != 0) {
      throw new IOException(Files.readString(Path.of("target", "benchmark.log")));
    }
    return new TimedProcess(seconds, childrenSeconds() - before, kilobytes / 1024);
  }

  /** What all ended children of this process took: fields 16 and 17 of its stat (proc(5)). */
  private static double childrenSeconds() {
    try {
      String stat = Files.readString(Path.of("/proc/self/stat"));
      String[] fields = stat.substring(stat.lastIndexOf(')') + 2).split(" ", -1);
      return (Long.parseLong(fields[13]) + Long.parseLong(fields[14])) / TICKS;
    } catch (IOException notLinux) {
      return 0;
    }
  }

  /** Linux keeps the most memory a process has held in its status. */
  private static long residentKilobytes(long pid) {
    try {
      return Files.readAllLines(Path.of("/proc", Long.toString(pid), "status")).stream()
          .filter(line -> line.startsWith("VmHWM:"))
          .mapToLong(line -> Long.parseLong(line.replaceAll("\\D", "")))
          .findFirst()
          .orElse(0);
    } catch (IOException goneOrNotLinux) {
      return 0;
    }
  }
}
