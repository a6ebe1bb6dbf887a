@NullMarked
package org.barsheet.production.noted;

import org.jspecify.annotations.NullMarked;
