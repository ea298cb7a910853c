/**
 * A whole helicopter: mass, main rotor, engine, body and limits.
 *
 * <p>{@link io.github.ringstate.craft.Helicopter} holds one value for each parameter of its
 * sections and refuses what does not fit together; the {@link io.github.ringstate.craft.EngineKind}
 * says how its power falls with density and how quickly it follows what is asked of it, the {@link
 * io.github.ringstate.craft.RotationSense} to which side the tail rotor pushes it. {@link
 * io.github.ringstate.craft.DemoCraft} has four invented helicopters of different size, so that
 * everything can be tried at once; whoever wants an answer about a craft of their own writes its
 * numbers down and says where they come from.
 */
@NullMarked
package io.github.ringstate.craft;

import org.jspecify.annotations.NullMarked;
