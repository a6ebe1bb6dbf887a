package org.barsheet.cli;

import java.lang.module.ModuleDescriptor;
import java.util.Optional;
import picocli.CommandLine.IVersionProvider;

/** The version the jar, or the module of a runtime of its own, was built as. */
final class Version implements IVersionProvider {

  @Override
  public String[] getVersion() {
    String built =
        Optional.ofNullable(Barsheet.class.getModule().getDescriptor())
            .flatMap(ModuleDescriptor::rawVersion)
            .or(() -> Optional.ofNullable(Barsheet.class.getPackage().getImplementationVersion()))
            .orElse("(not built as a jar)");
    return new String[] {"barsheet " + built};
  }
}
