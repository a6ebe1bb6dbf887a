package org.barsheet.cues;

import org.barsheet.input.Problem;
import org.barsheet.plan.MotifRequest;

/**
 * A motif, or a further shape of one, that is too plain to be looked for. The rest of the plan goes
 * on without it.
 *
 * @param motif as the plan asks for it
 * @param why what makes it so and what to do, without file or position
 */
public record PlainMotif(MotifRequest motif, Problem why) {}
