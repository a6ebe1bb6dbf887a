package org.barsheet.plan;

import java.time.LocalDate;
import java.util.Optional;

/**
 * The director's own rates of work; nothing is assumed where they are not given.
 *
 * @param picturesAnHour photographs taken in an hour
 * @param minutesASetUp to set up a model, its light and the camera
 * @param starts first day, where given
 * @param hoursADay working hours a day, where given
 */
public record Shoot(
    double picturesAnHour,
    double minutesASetUp,
    Optional<LocalDate> starts,
    Optional<Double> hoursADay) {}
