/**
 * The command {@code desk}: the whole briefing on a local page, for those who use no command line.
 *
 * <p>The page holds a plan. The desk writes it down as a plan file, runs the tool's own commands on
 * that file and shows their reports, so a number on the page is that of the command: {@link
 * io.github.ringstate.instructor.desk.Tool} is all it knows of them. Nothing is computed here.
 */
@NullMarked
package io.github.ringstate.instructor.desk;

import org.jspecify.annotations.NullMarked;
