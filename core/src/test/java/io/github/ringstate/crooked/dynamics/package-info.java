@NullMarked
package io.github.ringstate.crooked.dynamics;

import org.jspecify.annotations.NullMarked;
