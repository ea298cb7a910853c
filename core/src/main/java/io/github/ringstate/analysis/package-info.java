/**
 * Analysis: why the sink runs away, how stable a flight is, which number matters, and how far each
 * technique is from the best.
 *
 * <table>
 * <caption>Chapters</caption>
 * <tr><th>package</th><th>for</th></tr>
 * <tr><td>{@link io.github.ringstate.analysis.continuation}</td>
 *     <td>solutions of equations followed through folds; knows no physics</td></tr>
 * <tr><td>{@link io.github.ringstate.analysis.linear}</td>
 *     <td>linear models about a state, their modes</td></tr>
 * <tr><td>{@link io.github.ringstate.analysis.equilibrium}</td>
 *     <td>steady flight within limits, equilibria of descent, folds, the hysteresis loop</td></tr>
 * <tr><td>{@link io.github.ringstate.analysis.sensitivity}</td>
 *     <td>which numbers the altitude loss depends on</td></tr>
 * <tr><td>{@link io.github.ringstate.analysis.best}</td>
 *     <td>the recovery of least altitude loss, and what each technique loses more</td></tr>
 * </table>
 *
 * <h2>Programs to begin with</h2>
 *
 * Each is shorter than 60 lines, stands in {@code examples/embedding}, and is run by a test.
 *
 * <ul>
 *   <li>{@code FoldData}: steady descents through their folds, ready to be plotted
 *   <li>{@code FlownHysteresis}: the collective lowered and raised until the sink has jumped
 *   <li>{@code LinearModes}: modes of a descent within the ring, on both sides of its memory
 *   <li>{@code LossTornado}: the altitude loss with one number changed at a time
 *   <li>{@code SobolShares}: which number accounts for which share of the variance
 *   <li>{@code LeastLoss}: the least altitude loss, and what a recovery loses more
 * </ul>
 */
@NullMarked
package io.github.ringstate.analysis;

import org.jspecify.annotations.NullMarked;
