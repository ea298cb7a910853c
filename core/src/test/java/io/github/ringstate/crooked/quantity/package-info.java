@NullMarked
package io.github.ringstate.crooked.quantity;

import org.jspecify.annotations.NullMarked;
