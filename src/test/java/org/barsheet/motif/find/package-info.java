@NullMarked
package org.barsheet.motif.find;

import org.jspecify.annotations.NullMarked;
