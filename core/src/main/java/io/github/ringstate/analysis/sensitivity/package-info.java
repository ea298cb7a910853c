/**
 * Sensitivity: which numbers the altitude loss depends on.
 *
 * <p>An {@link io.github.ringstate.analysis.sensitivity.Input} is a number of craft, air, pilot or
 * model, the range it may have, and the encounter with another value of it; {@link
 * io.github.ringstate.analysis.sensitivity.Inputs} has all of an encounter. {@link
 * io.github.ringstate.analysis.sensitivity.Tornado} changes one at a time: the derivative of the
 * loss, found by two ways, and the loss at both ends of the range. {@link
 * io.github.ringstate.analysis.sensitivity.SobolIndices} changes all at once and says which share
 * of the variance is due to which; {@link io.github.ringstate.analysis.sensitivity.LossIndices}
 * does so for the loss.
 *
 * <p>The second way to a derivative is a difference of fixed step and higher order in the logarithm
 * of the number (in the number itself where it may vanish), with another integrator. It shares
 * neither steps nor step control nor integrator with {@link io.github.ringstate.study.Sensitivity},
 * but the right-hand side, which is written for plain numbers and cannot be differentiated on the
 * way.
 *
 * <pre>{@code
 * Encounter base = Encounter.of(DemoCraft.TRAINER).withDelay(1.5);
 * for (Tornado.Bar bar : Tornado.of(base, Inputs.craft(base.craft())).bars()) {
 *   bar.input().name();
 *   bar.derivative();
 * }
 * SobolIndices shares = LossIndices.of(base, Inputs.model(), 200, 256, 1).indices();
 * }</pre>
 */
@NullMarked
package io.github.ringstate.analysis.sensitivity;

import org.jspecify.annotations.NullMarked;
