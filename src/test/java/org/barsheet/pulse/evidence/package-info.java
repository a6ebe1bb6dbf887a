@NullMarked
package org.barsheet.pulse.evidence;

import org.jspecify.annotations.NullMarked;
