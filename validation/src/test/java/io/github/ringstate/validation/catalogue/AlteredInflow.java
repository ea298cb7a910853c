package io.github.ringstate.validation.catalogue;

import io.github.ringstate.inflow.InflowModel;
import io.github.ringstate.inflow.InflowOver;
import java.util.function.DoubleBinaryOperator;

/** An inflow model with something added to its induced velocity, whose slope is left as it was. */
final class AlteredInflow extends InflowOver {

  private final DoubleBinaryOperator added;

  /**
   * Adds to a model.
   *
   * @param model the model
   * @param added what is added, by edgewise and axial speed
   */
  AlteredInflow(InflowModel model, DoubleBinaryOperator added) {
    super(model, added);
    this.added = added;
  }

  @Override
  public double induced(double edgewise, double axial) {
    return super.induced(edgewise, axial) + added.applyAsDouble(edgewise, axial);
  }
}
