package io.github.ringstate.crooked.flight;

record FlightThatPrints(double height) {
  void print() {
    System.out.println(height);
  }
}
