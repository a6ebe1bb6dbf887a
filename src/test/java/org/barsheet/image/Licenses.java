package org.barsheet.image;

import java.io.File;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.jar.JarEntry;
import java.util.jar.JarFile;
import java.util.stream.Stream;

/** The licenses of all parts, each text once with the parts it came with. */
final class Licenses {

  private static final String TEXTS = "(META-INF/)?(LICENSE|NOTICE)(\\.txt|\\.md)?";

  private Licenses() {}

  /** The licenses of a program with its libraries, which lie on this program's class path too. */
  static String of(Path program) throws IOException {
    List<String> parts = new ArrayList<>();
    Map<String, List<String>> texts = new LinkedHashMap<>();
    try (JarFile whole = new JarFile(program.toFile())) {
      for (String file : System.getProperty("java.class.path").split(File.pathSeparator, -1)) {
        if (file.endsWith(".jar")) {
          addIfPart(Path.of(file), whole, parts, texts);
        }
      }
    }
    StringBuilder text = new StringBuilder();
    text.append("barsheet is under the Apache License 2.0. It holds these libraries, whose\n");
    text.append("license is the same unless a text below says otherwise:\n\n");
    parts.forEach(part -> text.append("  ").append(part).append('\n'));
    text.append("\nThe Java runtime is OpenJDK: its licenses lie in runtime/legal.\n");
    texts.forEach(
        (license, of) -> {
          text.append("\n").append("=".repeat(78)).append('\n');
          text.append(String.join(", ", of)).append("\n\n").append(license).append('\n');
        });
    return text.toString();
  }

  private static void addIfPart(
      Path library, JarFile whole, List<String> parts, Map<String, List<String>> texts)
      throws IOException {
    try (JarFile jar = new JarFile(library.toFile())) {
      if (firstClasses(jar).noneMatch(entry -> whole.getEntry(entry.getName()) != null)) {
        return;
      }
      String name = String.valueOf(library.getFileName()).replace(".jar", "");
      parts.add(name);
      List<JarEntry> found = jar.stream().filter(entry -> entry.getName().matches(TEXTS)).toList();
      for (JarEntry entry : found) {
        byte[] bytes = jar.getInputStream(entry).readAllBytes();
        String text = new String(bytes, StandardCharsets.UTF_8).replace("\r\n", "\n").strip();
        texts.computeIfAbsent(text, unknown -> new ArrayList<>()).add(name);
      }
    }
  }

  private static Stream<JarEntry> firstClasses(JarFile jar) {
    return jar.stream()
        .filter(entry -> entry.getName().endsWith(".class"))
        .filter(entry -> !entry.getName().contains("-info") && !entry.getName().startsWith("META"))
        .limit(1);
  }
}
