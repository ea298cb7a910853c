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
 * <p>The first way is a difference of losses, {@link io.github.ringstate.study.Sensitivity}. The
 * second are the variational equations: the derivative of the state by the number is integrated
 * along with one precise flight, and jumps where an event moves in time, as onset, the pilot's
 * action, the end of a phase and the arrest do. The two share the equations of motion and what is
 * flown, but neither flights nor steps. Where the neighbours of a flight take another way, as at a
 * kink, the second way gives nothing.
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
