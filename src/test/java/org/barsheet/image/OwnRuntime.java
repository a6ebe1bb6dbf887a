package org.barsheet.image;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.List;
import java.util.jar.JarEntry;
import java.util.jar.JarFile;
import java.util.spi.ToolProvider;
import java.util.stream.Collectors;

/**
 * A Java runtime with the program in it: the jar as a module, linked with those modules of the JDK
 * that it uses, and the classes of a run of the demo as they lie in memory (class-data sharing). As
 * a module the class data stay good wherever the folder is moved; for a jar they would not be.
 */
final class OwnRuntime {

  private static final String MODULE = "barsheet";
  private static final String MAIN = MODULE + "/org.barsheet.cli.Barsheet";
  private static final String SERVICES = "META-INF/services/";

  private final Path jar;
  private final String version;
  private final Path work;
  private final Path runtime;

  private OwnRuntime(Path jar, String version, Path work, Path runtime) {
    this.jar = jar;
    this.version = version;
    this.work = work;
    this.runtime = runtime;
  }

  /**
   * Writes a runtime.
   *
   * @param jar the program with its libraries
   * @param version of the program
   * @param runtime folder to write, not there yet
   * @param options what Java is to be started with each time
   * @param plan of the demo
   */
  static void write(Path jar, String version, Path runtime, String options, Path plan)
      throws IOException, InterruptedException {
    Path work = Files.createTempDirectory("barsheet-image");
    try {
      OwnRuntime own = new OwnRuntime(jar, version, work, runtime);
      own.link(own.module(), options);
      own.shareClasses(plan);
    } finally {
      Folders.delete(work);
    }
  }

  /** The jar with a description of itself as a module. */
  private Path module() throws IOException {
    Path modules = Files.createDirectories(work.resolve("modules"));
    Path copy = modules.resolve(MODULE + ".jar");
    Files.copy(jar, copy, StandardCopyOption.REPLACE_EXISTING);
    Path source = work.resolve("module-info.java");
    Files.writeString(source, description());
    Path classes = work.resolve("classes");
    run(
        "javac",
        "-d",
        classes.toString(),
        "--module-version",
        version,
        "--patch-module",
        MODULE + "=" + jar,
        source.toString());
    run(
        "jar",
        "--update",
        "--file",
        copy.toString(),
        "-C",
        classes.toString(),
        "module-info.class");
    return modules;
  }

  private String description() throws IOException {
    StringBuilder text = new StringBuilder("open module " + MODULE + " {\n");
    String used =
        run(
            "jdeps",
            "--multi-release",
            "17",
            "--ignore-missing-deps",
            "--print-module-deps",
            jar.toString());
    for (String module : used.strip().split(",", -1)) {
      text.append("  requires ").append(module).append(";\n");
    }
    try (JarFile file = new JarFile(jar.toFile())) {
      List<JarEntry> services =
          file.stream()
              .filter(entry -> entry.getName().startsWith(SERVICES) && !entry.isDirectory())
              .toList();
      for (JarEntry service : services) {
        String name = service.getName().substring(SERVICES.length());
        text.append("  uses ").append(name).append(";\n");
        text.append("  provides ").append(name).append(" with ");
        text.append(providers(file, service)).append(";\n");
      }
    }
    return text.append("}\n").toString();
  }

  /** The classes a provider-configuration file names, as the Javadoc of ServiceLoader has it. */
  private static String providers(JarFile file, JarEntry service) throws IOException {
    String text = new String(file.getInputStream(service).readAllBytes(), StandardCharsets.UTF_8);
    return text.lines()
        .map(line -> line.replaceFirst("#.*", "").strip())
        .filter(line -> !line.isEmpty())
        .distinct()
        .collect(Collectors.joining(", "));
  }

  private void link(Path modules, String options) {
    run(
        "jlink",
        "--module-path",
        modules.toString(),
        "--add-modules",
        MODULE,
        "--no-header-files",
        "--no-man-pages",
        "--add-options",
        options + " --add-exports=java.desktop/com.sun.media.sound=" + MODULE,
        "--output",
        runtime.toString());
  }

  /** Puts in the place of the JDK's class data, which are for no program, those of a run. */
  private void shareClasses(Path plan) throws IOException, InterruptedException {
    String list = work.resolve("classes.list").toString();
    String sheets = work.resolve("sheets").toString();
    java("-XX:DumpLoadedClassList=" + list, "-m", MAIN, "make", plan.toString(), "--out", sheets);
    java(
        "-XX:-UseSerialGC",
        "-XX:+UseG1GC",
        "-Xshare:dump",
        "-XX:SharedClassListFile=" + list,
        "-m",
        MAIN);
  }

  private void java(String... arguments) throws IOException, InterruptedException {
    List<String> command = new ArrayList<>();
    command.add(runtime.resolve("bin").resolve("java").toString());
    command.addAll(List.of(arguments));
    Path log = work.resolve("java.log");
    Process process =
        new ProcessBuilder(command).redirectErrorStream(true).redirectOutput(log.toFile()).start();
    if (process.waitFor() != 0) {
      throw new IOException(command + "\n" + Files.readString(log));
    }
  }

  /** Runs a tool of the JDK; returns what it printed. */
  private static String run(String tool, String... arguments) {
    StringWriter out = new StringWriter();
    StringWriter err = new StringWriter();
    int status =
        ToolProvider.findFirst(tool)
            .orElseThrow(() -> new IllegalStateException("this is no JDK: it has no " + tool))
            .run(new PrintWriter(out), new PrintWriter(err), arguments);
    if (status != 0) {
      throw new IllegalStateException(tool + ": " + out + err);
    }
    return out.toString();
  }
}
