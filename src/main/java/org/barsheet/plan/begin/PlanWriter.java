package org.barsheet.plan.begin;

import org.barsheet.plan.read.PlanReader;

/** Writes a first plan that {@link PlanReader} reads, with notes that teach it. */
public final class PlanWriter {

  private PlanWriter() {}

  /** The plan as YAML. Settings not given stand in it as comments with their defaults. */
  public static String yaml(FirstPlan plan) {
    return new FirstPlanYaml(plan).text();
  }

  /**
   * The plan as the bytes of an {@code .xlsx} workbook: a worksheet for each section, notes on the
   * headings, lists to choose from, no macros and no protection. The same plan gives the same
   * bytes.
   */
  public static byte[] workbook(FirstPlan plan) {
    return new BookWriter(FirstPlanTree.of(plan), plan.parts()).bytes();
  }
}
