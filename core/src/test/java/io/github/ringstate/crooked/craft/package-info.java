@NullMarked
package io.github.ringstate.crooked.craft;

import org.jspecify.annotations.NullMarked;
