package org.barsheet.exposure;

import java.math.BigDecimal;
import java.util.Optional;
import org.barsheet.plan.Opening;

/**
 * What the hand sets for one photograph. Lengths are in millimeters at the model's size; sheets,
 * cards and gauges print these very numbers.
 *
 * @param amount how far the movement has gone in its own unit, as worked out
 * @param set the same as the hand sets it, rounded to what a hand can set; on the last photograph
 *     the whole movement, a way to the tenth of a millimeter
 * @param step what {@code set} adds to the photograph before
 * @param edgeStep way of the free edge from the photograph before, where something has an edge
 * @param height of the free edge above the table, where it leaves the table
 * @param pull how far a thread has been pulled in since photograph 0, where a thread's guide is
 *     known
 * @param uncovered share of the hole uncovered, seen from straight above, 0 to 1
 * @param heldBy what holds it; empty at rest, and where nothing in the plan reaches so high
 */
public record PhotographMeasures(
    double amount,
    BigDecimal set,
    BigDecimal step,
    Optional<BigDecimal> edgeStep,
    Optional<BigDecimal> height,
    Optional<BigDecimal> pull,
    double uncovered,
    Optional<Opening.Support> heldBy) {}
