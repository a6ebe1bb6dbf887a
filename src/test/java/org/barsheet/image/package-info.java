/**
 * Builds the archives that people install, run by {@code mvn -Pimage package}: {@code WriteImage}.
 */
@NullMarked
package org.barsheet.image;

import org.jspecify.annotations.NullMarked;
