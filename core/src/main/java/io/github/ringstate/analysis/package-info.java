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
 */
@NullMarked
package io.github.ringstate.analysis;

import org.jspecify.annotations.NullMarked;
