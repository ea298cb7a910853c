/** Digests: what tells one content from any other. */
@NullMarked
package io.github.ringstate.files.digest;

import org.jspecify.annotations.NullMarked;
