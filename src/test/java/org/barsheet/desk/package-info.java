@NullMarked
package org.barsheet.desk;

import org.jspecify.annotations.NullMarked;
