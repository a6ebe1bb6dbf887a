package org.barsheet.plan;

/** Makes entries of a plan's file. */
final class PlanSource {

  private PlanSource() {}

  static Entry.Keyed read(Reading reading) {
    byte[] bytes = PlanFile.bytes(reading.file(), PlanFile.MOST_BYTES);
    return new YamlSource(reading).read(PlanFile.text(reading.file(), bytes));
  }
}
