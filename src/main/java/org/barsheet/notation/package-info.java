/** What the notes of a performance would be on paper. Begin with {@link WrittenMusic}. */
@NullMarked
package org.barsheet.notation;

import org.jspecify.annotations.NullMarked;
