package org.barsheet.plan;

/**
 * From how much on a photograph is told to be wrong.
 *
 * @param camera pixels of the film's frame by which anything still may be elsewhere
 * @param light stops by which still things may be brighter or darker
 * @param color stops by which red or blue may change against green
 * @param step percent of its hole by which a free edge may be off the plan
 * @param shadow stops by which a part may be darker or brighter than in other photographs
 * @param focus percent of the first photograph's detail that must be left
 * @param clipped percent of the still parts that may be clipped
 * @param backing stops by which a part of the backing may be off its middle
 * @param spill percent of the backing's color that may lie on the paper beside the hole
 */
public record Tolerances(
    double camera,
    double light,
    double color,
    double step,
    double shadow,
    double focus,
    double clipped,
    double backing,
    double spill) {

  /**
   * A quarter of a pixel, a thirtieth of a stop and the like: what rendered sequences with the
   * faults of a copy stand need (see {@code RenderedSequencesTest}), no other source.
   */
  public static final Tolerances DEFAULT =
      new Tolerances(0.25, 0.03, 0.03, 1.5, 0.08, 70, 1, 1, 15);
}
