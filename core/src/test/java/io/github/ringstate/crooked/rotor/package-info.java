@NullMarked
package io.github.ringstate.crooked.rotor;

import org.jspecify.annotations.NullMarked;
