package io.github.ringstate.crooked.dynamics;

record DynamicsThatPrint(double height) {
  void print() {
    System.out.println(height);
  }
}
