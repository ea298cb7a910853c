@NullMarked
package io.github.ringstate.crooked.inflow;

import org.jspecify.annotations.NullMarked;
