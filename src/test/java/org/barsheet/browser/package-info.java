@NullMarked
package org.barsheet.browser;

import org.jspecify.annotations.NullMarked;
