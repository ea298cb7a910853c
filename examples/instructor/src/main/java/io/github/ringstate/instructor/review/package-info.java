/** The command {@code review}: what a recorded flight shows, beside the model and the briefing. */
@NullMarked
package io.github.ringstate.instructor.review;

import org.jspecify.annotations.NullMarked;
