/** Charts: how lines, marks and letters look, the same on every sheet. */
@NullMarked
package io.github.ringstate.sheets.chart;

import org.jspecify.annotations.NullMarked;
