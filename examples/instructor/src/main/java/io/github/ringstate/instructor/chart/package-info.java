/** Charts: how lines, marks and letters look, the same on every sheet. */
@NullMarked
package io.github.ringstate.instructor.chart;

import org.jspecify.annotations.NullMarked;
