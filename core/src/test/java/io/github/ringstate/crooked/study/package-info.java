@NullMarked
package io.github.ringstate.crooked.study;

import org.jspecify.annotations.NullMarked;
