@NullMarked
package org.barsheet.review;

import org.jspecify.annotations.NullMarked;
