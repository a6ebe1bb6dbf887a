@NullMarked
package org.barsheet.recording;

import org.jspecify.annotations.NullMarked;
