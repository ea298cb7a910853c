/**
 * The best possible recovery: the history of controls with the least altitude loss that the model
 * allows, and how far each technique is from it.
 *
 * <p>{@link io.github.ringstate.analysis.best.ControlHistory} is a recovery that follows commands
 * of pitch, bank and collective, each linear between knots in time, with power capped where a pilot
 * caps it. {@link io.github.ringstate.analysis.best.BestRecovery} looks for the knots with the
 * least loss by direct shooting: CMA-ES (Hansen and Ostermeier, Evolutionary Computation 9, 2001)
 * from several starts, then a local search ({@link
 * io.github.ringstate.analysis.best.DirectSearch}). The history found is flown through the ordinary
 * {@link io.github.ringstate.encounter.Encounter}, by the precise simulator, and it is that loss
 * that counts. History and techniques keep the same limits: those of the craft, and those that a
 * careful pilot keeps ({@link io.github.ringstate.pilot.Limited}).
 *
 * <p>The best histories bank to one side; their mirror images are a second optimum, for the demo
 * craft {@code trainer} 2 ft higher. So each search also goes on from the mirror image of where it
 * ended. From 20 random starts it then ended within 0.1 ft of the same loss, for {@code trainer} at
 * delays of 0.5, 1 and 2 s each.
 *
 * <p>No bound is claimed: a search from many starts that ends at the same loss shows that it is
 * hard to do better with these knots, and not that nothing is better. A history that is unlike
 * anything taught is a result of the model and nothing more; nobody has flown it.
 *
 * <pre>{@code
 * Encounter encounter = Encounter.of(DemoCraft.UTILITY).withDelay(1.5);
 * BestRecovery best = BestRecovery.find(encounter, BestRecovery.ALL_POWER, 1);
 * best.loss();
 * best.excess(Technique.LATERAL);
 * }</pre>
 */
@NullMarked
package io.github.ringstate.analysis.best;

import org.jspecify.annotations.NullMarked;
