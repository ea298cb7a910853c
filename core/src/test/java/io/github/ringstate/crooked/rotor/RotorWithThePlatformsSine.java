package io.github.ringstate.crooked.rotor;

record RotorWithThePlatformsSine(double angle) {
  double height() {
    return Math.sin(angle);
  }
}
