/**
 * The demo production's panel drawings, cut from paper by a program; entry class {@link
 * Storyboard}.
 */
@NullMarked
package org.barsheet.demo.drawing;

import org.jspecify.annotations.NullMarked;
