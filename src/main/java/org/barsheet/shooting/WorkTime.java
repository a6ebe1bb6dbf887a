package org.barsheet.shooting;

import java.time.LocalDate;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * How long work takes and when it is done, at the director's own rates.
 *
 * @param hours of work, 0 or more
 * @param firstDay the working day it begins on, from 1, where hours a day are given
 * @param lastDay the working day it ends on
 * @param begins date of the first day, where the plan says when the work starts; days are counted
 *     one after another, without days of rest
 * @param ends date of the last day
 */
public record WorkTime(
    double hours,
    OptionalInt firstDay,
    OptionalInt lastDay,
    Optional<LocalDate> begins,
    Optional<LocalDate> ends) {}
