/**
 * Plan files: what was planned and briefed for a flight, kept as the record of it. Options of the
 * tool stand in them under their own names, so that a plan is computed again by one command.
 */
@NullMarked
package io.github.ringstate.files.plan;

import org.jspecify.annotations.NullMarked;
