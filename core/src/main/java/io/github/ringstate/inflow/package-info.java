/** The steady mean induced velocity of a rotor, its working states and their boundaries. */
@NullMarked
package io.github.ringstate.inflow;

import org.jspecify.annotations.NullMarked;
