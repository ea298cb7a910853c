/**
 * Conditions: a craft, to what it was fitted, at a mass in an air, and the power that it has left
 * there.
 */
@NullMarked
package io.github.ringstate.instructor.conditions;

import org.jspecify.annotations.NullMarked;
