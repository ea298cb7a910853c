package io.github.ringstate.validation.catalogue;

import io.github.ringstate.inflow.InflowModel;
import io.github.ringstate.inflow.VortexRing;
import io.github.ringstate.quantity.Quantity;
import java.util.function.DoubleBinaryOperator;

/**
 * An inflow model with something added to its induced velocity.
 *
 * @param model the model
 * @param added what is added, by edgewise and axial speed
 */
record AlteredInflow(InflowModel model, DoubleBinaryOperator added) implements InflowModel {

  @Override
  public String name() {
    return model.name();
  }

  @Override
  public Quantity edgewiseRange() {
    return model.edgewiseRange();
  }

  @Override
  public Quantity axialRange() {
    return model.axialRange();
  }

  @Override
  public double induced(double edgewise, double axial) {
    return model.induced(edgewise, axial) + added.applyAsDouble(edgewise, axial);
  }

  @Override
  public double slope(double edgewise, double axial) {
    return model.slope(edgewise, axial);
  }

  @Override
  public double lossShare(double edgewise, double axial) {
    return model.lossShare(edgewise, axial);
  }

  @Override
  public VortexRing ring() {
    return model.ring();
  }
}
