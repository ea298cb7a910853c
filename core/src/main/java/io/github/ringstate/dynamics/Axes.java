package io.github.ringstate.dynamics;

/**
 * The body's axes in the earth frame (north, east, up): nose, right side, shaft. The shaft is fixed
 * to the body.
 */
final class Axes {

  double noseN;
  double noseE;
  double noseU;
  double rightN;
  double rightE;
  double rightU;
  double shaftN;
  double shaftE;
  double shaftU;

  /** Turns the axes to an attitude. */
  void turn(double sinHeading, double cosHeading, double pitch, double bank) {
    double sinPitch = Angle.sin(pitch);
    double cosPitch = Angle.cos(pitch);
    double sinBank = Angle.sin(bank);
    double cosBank = Angle.cos(bank);
    noseN = cosPitch * cosHeading;
    noseE = cosPitch * sinHeading;
    noseU = sinPitch;
    rightN = sinBank * sinPitch * cosHeading - cosBank * sinHeading;
    rightE = sinBank * sinPitch * sinHeading + cosBank * cosHeading;
    rightU = -sinBank * cosPitch;
    shaftN = -cosBank * sinPitch * cosHeading - sinBank * sinHeading;
    shaftE = -cosBank * sinPitch * sinHeading + sinBank * cosHeading;
    shaftU = cosBank * cosPitch;
  }
}
