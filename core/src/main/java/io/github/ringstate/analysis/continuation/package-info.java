/**
 * Continuation: solutions of n equations in n unknowns and a parameter, followed as a curve.
 *
 * <p>The equations are a Hipparchus {@link org.hipparchus.analysis.MultivariateVectorFunction} of n
 * + 1 numbers, the unknowns and last the parameter, all scaled so that one is a great change and
 * 1e-6 a small one. {@link io.github.ringstate.analysis.continuation.Continuation} follows the
 * curve by its arc length (Keller, in: Applications of Bifurcation Theory, 1977; from memory), so
 * that it goes around a fold, where the parameter turns back. {@link
 * io.github.ringstate.analysis.continuation.Fold} locates folds by Newton's method on the equations
 * together with the condition that their matrix has a null vector (Moore and Spence, SIAM Journal
 * on Numerical Analysis 17, 1980; from memory). The condition is smooth, so folds converge as
 * quickly as other solutions, and {@link io.github.ringstate.analysis.continuation.FoldEquations}
 * can be followed in a second parameter like any others: through the cusp, where two folds meet.
 *
 * <p>Derivatives are central differences with an estimate of their error ({@link
 * io.github.ringstate.analysis.continuation.Slopes}); linear algebra is EJML's.
 */
@NullMarked
package io.github.ringstate.analysis.continuation;

import org.jspecify.annotations.NullMarked;
