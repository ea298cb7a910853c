/** Flights and the pilots of a study as tables in files: CSV and Parquet. */
@NullMarked
package io.github.ringstate.files.flight;

import org.jspecify.annotations.NullMarked;
