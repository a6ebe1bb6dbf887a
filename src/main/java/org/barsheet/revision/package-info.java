/**
 * What became of the music between two versions of a score; entry class {@link
 * org.barsheet.revision.Revision}.
 */
@NullMarked
package org.barsheet.revision;

import org.jspecify.annotations.NullMarked;
