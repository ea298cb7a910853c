/** User errors: the one exception with which the tool says no, and its exit status. */
@NullMarked
package io.github.ringstate.files.error;

import org.jspecify.annotations.NullMarked;
