/**
 * Units of print: in which units people read lengths, speeds and heights, and how heights are
 * rounded.
 */
@NullMarked
package io.github.ringstate.files.unit;

import org.jspecify.annotations.NullMarked;
