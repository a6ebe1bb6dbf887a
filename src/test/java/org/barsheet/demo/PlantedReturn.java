package org.barsheet.demo;

import java.math.BigDecimal;
import java.util.List;

/**
 * One return of a motif that the composer put there, for the finder to be measured against.
 *
 * @param bar the bar of its first note; the pickup is bar 0
 * @param beat the beat of its first note, in quarters counted from 1
 * @param parts who plays it, as track names
 * @param phrase its notes as the first of them sounds them; ticks count from the bar line
 */
public record PlantedReturn(
    Motif motif, Form form, int bar, BigDecimal beat, List<String> parts, Phrase phrase) {}
