/**
 * What is printed on paper at true size: cutting sheets, the artwork in tiles, slates; entry class
 * {@link org.barsheet.paper.PaperSheets}.
 */
@NullMarked
package org.barsheet.paper;

import org.jspecify.annotations.NullMarked;
