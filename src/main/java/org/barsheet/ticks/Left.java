package org.barsheet.ticks;

import java.time.LocalDate;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;

/**
 * Work that is left.
 *
 * @param photographs to take, those to be taken again with them
 * @param setups that have any of them
 * @param hours where a pace is told or measured: each of those setups is set up once more
 * @param days working days, a begun one with them, where the plan says how long they are
 * @param ends the last of them, counted from the day after the last tick with a time, else from the
 *     day the plan says the work starts; days are counted one after another
 * @param perHour photographs an hour, where told or measured
 * @param measured whether the pace was measured from the times of ticks
 */
public record Left(
    int photographs,
    int setups,
    OptionalDouble hours,
    OptionalInt days,
    Optional<LocalDate> ends,
    OptionalDouble perHour,
    boolean measured) {}
