package org.barsheet.cli;

import java.util.Objects;
import picocli.CommandLine.IVersionProvider;

/** The version the jar was built as. */
final class Version implements IVersionProvider {

  @Override
  public String[] getVersion() {
    String built = Barsheet.class.getPackage().getImplementationVersion();
    return new String[] {"barsheet " + Objects.requireNonNullElse(built, "(not built as a jar)")};
  }
}
