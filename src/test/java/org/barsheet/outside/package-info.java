/** Checks of the main job against files and programs that nobody here wrote. */
@NullMarked
package org.barsheet.outside;

import org.jspecify.annotations.NullMarked;
