/**
 * Integration of ordinary differential equations on plain arrays. It knows no physics.
 *
 * <p>The problem: a state y follows dy/dt = f(t, y), leg by leg. Each leg has its own f, and ends
 * when its time is over or a quantity passes through zero. The user writes {@link
 * io.github.ringstate.integrate.Equations}: rates into an array, and a view of an instant, which is
 * whatever the user's {@link io.github.ringstate.integrate.Event}s look at. An event has a
 * quantity, the direction in which it passes through zero, a condition, and either stops its leg or
 * is noted in the {@link io.github.ringstate.integrate.EventLog}. A {@link
 * io.github.ringstate.integrate.Sampler} takes views at equal steps of time.
 *
 * <table>
 * <caption>Propagators</caption>
 * <tr><th>class</th><th>method</th><th>use</th></tr>
 * <tr><td>{@link io.github.ringstate.integrate.FastPropagator}</td>
 *     <td>Bogacki and Shampine's pair of order 3(2), 1989</td>
 *     <td>bulk work: no allocation, steps as long as the error allows</td></tr>
 * <tr><td>{@link io.github.ringstate.integrate.PrecisePropagator}</td>
 *     <td>any adaptive integrator of Hipparchus</td>
 *     <td>the yardstick</td></tr>
 * </table>
 *
 * <p>The fast one is made of a step ({@code BogackiShampine}, with {@code DecayWeights} for one
 * quantity that decays fast), a {@code StepControl}, an {@code EventSearch} on the cubic between
 * the ends of a step, and {@code Checkpoints} from which a first leg can be propagated again. Time
 * is in seconds; the units of the state are the user's.
 */
@NullMarked
package io.github.ringstate.integrate;

import org.jspecify.annotations.NullMarked;
