/**
 * Reference data: comma-separated files with their origin in {@code #} lines, and a largest and a
 * root-mean-square error that the library may have in each column.
 *
 * <p>A file begins with {@code #} lines. Those of the form {@code # budget COLUMN: largest NUMBER,
 * root mean square NUMBER} give the budgets, in the column's unit; all others say where the numbers
 * come from and are shown in the report as they are. Then come one line of column names and the
 * rows.
 */
@NullMarked
package io.github.ringstate.validation.reference;

import org.jspecify.annotations.NullMarked;
