/** Tests of what people are told and how files are written. */
@NullMarked
package org.barsheet.input;

import org.jspecify.annotations.NullMarked;
