/**
 * Files that users write as TOML, what to say of a mistake in them (line, key and value), and what
 * the tool writes of the kind.
 */
@NullMarked
package io.github.ringstate.files.toml;

import org.jspecify.annotations.NullMarked;
