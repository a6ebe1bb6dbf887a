package org.barsheet.production;

import java.nio.file.Path;
import java.util.OptionalInt;

/**
 * Photographs that came out of a camera, and what is asked about them.
 *
 * @param folder they are in
 * @param of the movement, opening, setup or plate they are photographs of
 * @param from number of the first one, where they are retakes from there on
 * @param accept whether a pairing that is not plain is right
 * @param even whether evened copies are wanted
 */
public record PhotographRequest(
    Path folder, String of, OptionalInt from, boolean accept, boolean even) {}
