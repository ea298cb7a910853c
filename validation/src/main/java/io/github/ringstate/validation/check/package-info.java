/**
 * Checks as data: what the library gives, beside what something outside it says.
 *
 * <p>A {@link io.github.ringstate.validation.check.Question} says what is asked and of whom: the
 * quantity, its unit, the {@link io.github.ringstate.validation.check.Source}, {@link
 * io.github.ringstate.validation.check.ComparedWith what} the library is compared with, how that
 * number was {@link io.github.ringstate.validation.check.Obtained obtained}, and of which {@link
 * io.github.ringstate.validation.check.CheckKind kind} the answer is: a verification, a calibration
 * or a validation. Given what is expected and what the library gives it becomes a {@link
 * io.github.ringstate.validation.check.Check}, which passes, fails, or is a {@link
 * io.github.ringstate.validation.check.KnownDifference known difference}: the library does not
 * agree with the source, an explanation says why, and the size of the difference is itself held, so
 * that it can neither grow nor vanish unseen. Checks on one subject stand in a {@link
 * io.github.ringstate.validation.check.Section} with their figures.
 */
@NullMarked
package io.github.ringstate.validation.check;

import org.jspecify.annotations.NullMarked;
