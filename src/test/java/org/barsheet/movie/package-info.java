@NullMarked
package org.barsheet.movie;

import org.jspecify.annotations.NullMarked;
