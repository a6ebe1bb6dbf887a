package org.barsheet.plan;

import java.time.LocalDate;
import java.util.Optional;

/**
 * The director's own rates of work; nothing is assumed where they are not given.
 *
 * @param photographsPerHour photographs taken in an hour
 * @param minutesPerSetup to set up a model, its light and the camera
 * @param starts first day, where given
 * @param hoursPerDay working hours a day, where given
 */
public record Shoot(
    double photographsPerHour,
    double minutesPerSetup,
    Optional<LocalDate> starts,
    Optional<Double> hoursPerDay) {}
