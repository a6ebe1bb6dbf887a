/**
 * What a film is warned about, a class for each kind of rule; entry class {@link
 * org.barsheet.findings.FilmFindings}.
 */
@NullMarked
package org.barsheet.findings;

import org.jspecify.annotations.NullMarked;
