package org.barsheet.shooting;

import org.apache.commons.numbers.fraction.BigFraction;

/**
 * Work without an interruption, on its hours.
 *
 * @param setup which setup
 * @param piece which of the things it takes; {@link #SETTING_UP} before the first
 * @param from first photograph of it, from 0
 * @param to behind the last one
 * @param begins hours of work since the first morning: evenings left unused count, nights do not
 * @param ends the same
 */
record Slot(int setup, int piece, int from, int to, BigFraction begins, BigFraction ends) {

  static final int SETTING_UP = -1;
}
