package org.barsheet.outside;

import java.io.IOException;
import java.nio.file.Files;

/**
 * The accessibility checker axe-core 4.10.3 (MPL-2.0), fetched once into {@code target/} and never
 * committed.
 */
public final class AxeCore {

  private static final RegistryPackage PACKAGE =
      new RegistryPackage(
          "axe-core@4.10.3",
          "axe-core-4.10.3.tgz",
          "Xm7bpRXnDSX2YE2YFfBk2FnF0ep6tmG7xPh8iHee8MIcrgq762Nkce856dYtJYLkuIoYZvGfTs/PbZhideTcEg==",
          "axe-core");

  private AxeCore() {}

  /** Its script, to be run in a page. */
  public static String script() throws IOException {
    return Files.readString(PACKAGE.file("axe.min.js"));
  }
}
