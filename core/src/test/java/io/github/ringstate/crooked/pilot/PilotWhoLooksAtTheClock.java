package io.github.ringstate.crooked.pilot;

record PilotWhoLooksAtTheClock() {
  long now() {
    return System.nanoTime();
  }
}
