/** Times of whole processes, run by hand: {@code WholeProcessBenchmark}. */
@NullMarked
package org.barsheet.benchmark;

import org.jspecify.annotations.NullMarked;
