/**
 * Extensions: jars with recoveries, entries, models, delays and columns of a user's own.
 *
 * <p>A jar is read into memory as a whole, and its classes are those bytes: what is flown is what
 * the digest was taken of, even if the file changes meanwhile.
 */
@NullMarked
package io.github.ringstate.files.extension;

import org.jspecify.annotations.NullMarked;
