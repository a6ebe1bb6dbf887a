/** Tests of what the director asks for. */
@NullMarked
package org.barsheet.plan;

import org.jspecify.annotations.NullMarked;
