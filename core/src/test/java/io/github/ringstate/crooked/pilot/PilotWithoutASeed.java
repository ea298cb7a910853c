package io.github.ringstate.crooked.pilot;

import java.util.SplittableRandom;

record PilotWithoutASeed() {
  double delay() {
    return new SplittableRandom().nextDouble();
  }
}
