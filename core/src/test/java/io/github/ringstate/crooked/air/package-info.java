@NullMarked
package io.github.ringstate.crooked.air;

import org.jspecify.annotations.NullMarked;
