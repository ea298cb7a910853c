@NullMarked
package io.github.ringstate.crooked.pilot;

import org.jspecify.annotations.NullMarked;
