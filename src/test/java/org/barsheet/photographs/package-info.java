@NullMarked
package org.barsheet.photographs;

import org.jspecify.annotations.NullMarked;
