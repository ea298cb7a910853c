/**
 * Craft files: a helicopter written down as TOML, one table for each section of {@link
 * io.github.ringstate.craft.Helicopter#SECTIONS}, the unit in each key.
 */
@NullMarked
package io.github.ringstate.files.craft;

import org.jspecify.annotations.NullMarked;
