@NullMarked
package org.barsheet.follow;

import org.jspecify.annotations.NullMarked;
