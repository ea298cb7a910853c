@NullMarked
package io.github.ringstate.crooked.flight;

import org.jspecify.annotations.NullMarked;
