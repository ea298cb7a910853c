/** What the library costs, measured with JMH: a baseline beside every variant. */
@NullMarked
package io.github.ringstate.benchmarks;

import org.jspecify.annotations.NullMarked;
