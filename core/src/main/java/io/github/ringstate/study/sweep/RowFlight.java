package io.github.ringstate.study.sweep;

import io.github.ringstate.craft.DemoCraft;
import io.github.ringstate.dynamics.NoSteadyFlightException;
import io.github.ringstate.encounter.Approach;
import io.github.ringstate.encounter.BulkFlight;
import io.github.ringstate.encounter.EdgeCheck;
import io.github.ringstate.encounter.Encounter;
import io.github.ringstate.encounter.Ending;
import io.github.ringstate.encounter.Simulator;
import io.github.ringstate.encounter.UnfinishedFlightException;
import io.github.ringstate.quantity.IncompatibleValuesException;
import io.github.ringstate.quantity.OutOfRangeException;
import io.github.ringstate.study.sweep.PilotCache.Pilot;
import java.util.Objects;
import java.util.OptionalDouble;
import java.util.concurrent.CancellationException;
import java.util.function.BooleanSupplier;
import org.jspecify.annotations.Nullable;

/**
 * Flies points one after the other into rows. Points that differ in the pilot alone share their
 * approach. For one thread.
 */
final class RowFlight {

  /** What a pilot does in it does not depend on it: for pilots whose own scene cannot be. */
  private static final Encounter ANY_SCENE = Encounter.of(DemoCraft.TRAINER);

  private final Cursor cursor;
  private final Composition composition;
  private final Models models;
  private final PilotCache pilots;
  private final RowLayout layout;
  private final @Nullable Seen seen;
  private long sceneNumber = -1;
  private @Nullable Encounter scene;
  private @Nullable BulkFlight shared;
  private @Nullable EdgeCheck edge;
  private @Nullable RuntimeException noScene;

  RowFlight(
      Cursor cursor, Composition composition, Models models, PilotCache pilots, RowLayout layout) {
    this.cursor = cursor;
    this.composition = composition;
    this.models = models;
    this.pilots = pilots;
    this.layout = layout;
    seen = layout.own().isEmpty() ? null : new Seen();
  }

  Rows fly(long from, int size, BooleanSupplier cancelled) {
    Rows rows = new Rows(layout.columns(), size);
    for (int row = 0; row < size; row++) {
      if (cancelled.getAsBoolean()) {
        throw new CancellationException("the sweep was ended");
      }
      fly(from + row, rows, row);
    }
    return rows;
  }

  private void fly(long index, Rows rows, int row) {
    cursor.move(index);
    Values values = cursor.values();
    rows.set(0, row, index);
    int column = 1;
    for (Setting setting : layout.shown()) {
      int slot = values.slot(setting.key());
      if (layout.columns().get(column).type() == Column.Type.WORD) {
        rows.set(column, row, values.word(slot));
      } else {
        rows.set(column, row, values.number(slot));
      }
      column++;
    }
    if (values.pilot() >= 0) {
      rows.set(column++, row, values.pilot());
    }
    rows.set(column, row, Composition.craftName(values));
    rows.set(column + 1, row, Composition.entryName(values));
    rows.set(column + 2, row, Composition.techniqueName(values));
    int error = layout.columns().size() - 1;
    for (int i = column + 3; i < error; i++) {
      if (layout.columns().get(i).type() == Column.Type.NUMBER) {
        rows.set(i, row, Double.NaN);
      }
    }
    try {
      flyOn(index, values, rows, column + 3, row);
    } catch (OutOfRangeException
        | IncompatibleValuesException
        | NoSteadyFlightException
        | UnfinishedFlightException bad) {
      rows.set(error, row, bad.getMessage());
      rows.countFailed();
    } catch (RuntimeException fault) {
      throw new PointFaultException(index, fault);
    }
  }

  private void flyOn(long index, Values values, Rows rows, int first, int row) {
    if (cursor.scene() != sceneNumber) {
      set(cursor.scene(), values);
    }
    Encounter own = null;
    Pilot pilot;
    if (noScene == null && shared == null) {
      own = composition.flown(scene(), values);
      pilot = Pilot.of(own, layout.drawn());
    } else {
      pilot = pilots.get(cursor.placeInScene(), () -> drawn(values));
    }
    int column = first;
    rows.set(column++, row, pilot.recognition().delay());
    for (double number : pilot.numbers()) {
      rows.set(column++, row, number);
    }
    if (noScene != null) {
      throw noScene;
    }
    BulkFlight flight = own == null ? shared() : flight(own);
    Ending ending = flight.fly(pilot.recovery(), pilot.recognition());
    Output.Units units = layout.output();
    rows.set(column++, row, ending.label());
    rows.set(column++, row, rounded(units.length().fromSi(flight.altitudeLoss())));
    rows.set(column++, row, rounded(units.length().fromSi(flight.lossAfterRecognition())));
    rows.set(column++, row, rounded(units.rate().fromSi(flight.peakDescent())));
    rows.set(column++, row, rounded(flight.timeToArrest()));
    rows.set(column++, row, rounded(units.rate().fromSi(flight.impactSpeed())));
    if (seen != null) {
      seen.look(index, flight, ending, pilot, own);
      for (OutputColumn mine : layout.own()) {
        rows.set(column++, row, value(mine, seen));
      }
    }
    if (layout.sensitive()) {
      EdgeCheck check = own == null ? edge() : new EdgeCheck(own);
      boolean sensitive =
          check.isSensitive(pilot.recovery(), pilot.recognition(), flight.outcome());
      rows.set(column, row, Boolean.toString(sensitive));
    }
  }

  private BulkFlight flight(Encounter encounter) {
    Approach approach = Approach.fly(encounter, Simulator.fast());
    return layout.sensitive() ? BulkFlight.withEvents(approach) : new BulkFlight(approach);
  }

  private EdgeCheck edge() {
    if (edge == null) {
      edge = new EdgeCheck(scene());
    }
    return edge;
  }

  private Pilot drawn(Values values) {
    return Pilot.of(composition.flown(scene == null ? ANY_SCENE : scene, values), layout.drawn());
  }

  private static double value(OutputColumn column, FlownPoint point) {
    OptionalDouble value = column.value().apply(point);
    if (value.isEmpty()) {
      return Double.NaN;
    }
    if (!Double.isFinite(value.getAsDouble())) {
      throw new IllegalStateException(
          "the column " + column.name() + " is " + value.getAsDouble() + ", not a finite number");
    }
    return value.getAsDouble();
  }

  private Encounter scene() {
    return Objects.requireNonNull(scene, "no scene is set");
  }

  private BulkFlight shared() {
    return Objects.requireNonNull(shared, "no approach is shared");
  }

  private void set(long number, Values values) {
    sceneNumber = number;
    shared = null;
    edge = null;
    scene = null;
    noScene = null;
    try {
      InflowKind kind = composition.inflow(values);
      Encounter set = composition.scene(values, models.of(kind, Composition.model(kind, values)));
      scene = set;
      // gusts and shaking are those of the pilot, if pilots are drawn
      if (values.pilot() < 0 || !set.disturbances().random()) {
        shared = flight(set);
      }
    } catch (OutOfRangeException
        | IncompatibleValuesException
        | NoSteadyFlightException
        | UnfinishedFlightException bad) {
      noScene = bad;
    }
  }

  private static double rounded(double value) {
    return Math.rint(value * 1000) / 1000 + 0.0;
  }

  /** The last flight, as columns of extensions see it. */
  private final class Seen implements FlownPoint {

    private long index;
    private @Nullable BulkFlight flight;
    private Ending ending = Ending.NO_ONSET;
    private @Nullable Pilot pilot;
    private @Nullable Encounter own;

    void look(
        long flown, BulkFlight by, Ending ended, Pilot flying, @Nullable Encounter encounter) {
      index = flown;
      flight = by;
      ending = ended;
      pilot = flying;
      own = encounter;
    }

    private BulkFlight flight() {
      return Objects.requireNonNull(flight, "nothing was flown");
    }

    @Override
    public long index() {
      return index;
    }

    @Override
    public Encounter encounter() {
      if (own != null) {
        return own;
      }
      Pilot flying = Objects.requireNonNull(pilot, "nothing was flown");
      return scene().withRecovery(flying.recovery()).withRecognition(flying.recognition());
    }

    @Override
    public Ending ending() {
      return ending;
    }

    @Override
    public double altitudeLoss() {
      return flight().altitudeLoss();
    }

    @Override
    public double lossAfterRecognition() {
      return flight().lossAfterRecognition();
    }

    @Override
    public double peakDescent() {
      return flight().peakDescent();
    }

    @Override
    public double timeToArrest() {
      return flight().timeToArrest();
    }

    @Override
    public double impactSpeed() {
      return flight().impactSpeed();
    }
  }
}
