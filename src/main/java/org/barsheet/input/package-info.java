/**
 * What a person is told about material that cannot be used; entry class {@link
 * org.barsheet.input.InputException}.
 */
@NullMarked
package org.barsheet.input;

import org.jspecify.annotations.NullMarked;
