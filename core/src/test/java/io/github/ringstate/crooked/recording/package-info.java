@NullMarked
package io.github.ringstate.crooked.recording;

import org.jspecify.annotations.NullMarked;
