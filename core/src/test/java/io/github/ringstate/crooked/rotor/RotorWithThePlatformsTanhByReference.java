package io.github.ringstate.crooked.rotor;

import java.util.function.DoubleUnaryOperator;

record RotorWithThePlatformsTanhByReference() {
  DoubleUnaryOperator step() {
    return Math::tanh;
  }
}
