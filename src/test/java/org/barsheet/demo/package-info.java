/** The demo production's score, written out by a program; entry class {@link WriteDemo}. */
@NullMarked
package org.barsheet.demo;

import org.jspecify.annotations.NullMarked;
