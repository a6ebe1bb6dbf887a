/** Tests of the builders of HTML and drawings. */
@NullMarked
package org.barsheet.text;

import org.jspecify.annotations.NullMarked;
