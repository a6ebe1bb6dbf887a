/** The commands a person types; entry class {@link org.barsheet.cli.Barsheet}. */
@NullMarked
package org.barsheet.cli;

import org.jspecify.annotations.NullMarked;
