package io.github.ringstate.inflow;

import io.github.ringstate.quantity.MadeOf;
import io.github.ringstate.quantity.ParameterSet;
import io.github.ringstate.quantity.Quantity;
import java.util.stream.Stream;

/**
 * An inflow model that stands on another: whatever it does not answer itself, the other answers.
 * For a model that changes one thing about another, and for one that works it out in another way.
 *
 * <p>A class that changes the induced velocity has to change the slope with it; an encounter and a
 * sweep refuse it otherwise.
 */
public abstract class InflowOver extends MadeOf implements InflowModel {

  private final InflowModel model;

  /**
   * Puts a model over another.
   *
   * @param model the model beneath
   * @param more what else the model over it is made of, each a value itself
   */
  protected InflowOver(InflowModel model, Object... more) {
    super(Stream.concat(Stream.of(model), Stream.of(more)).toArray());
    this.model = model;
  }

  /**
   * The model beneath.
   *
   * @return the model
   */
  public final InflowModel model() {
    return model;
  }

  @Override
  public String name() {
    return model.name();
  }

  @Override
  public ParameterSet numbers() {
    return model.numbers();
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
    return model.induced(edgewise, axial);
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

  @Override
  public boolean hasGradient() {
    return model.hasGradient();
  }
}
