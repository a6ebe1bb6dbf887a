@NullMarked
package org.barsheet.align.conflict;

import org.jspecify.annotations.NullMarked;
