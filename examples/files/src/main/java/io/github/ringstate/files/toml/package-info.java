/** Files that users write as TOML, and what to say of a mistake in them: line, key and value. */
@NullMarked
package io.github.ringstate.files.toml;

import org.jspecify.annotations.NullMarked;
