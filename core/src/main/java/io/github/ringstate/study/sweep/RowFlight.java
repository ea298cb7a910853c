package io.github.ringstate.study.sweep;

import io.github.ringstate.dynamics.NoSteadyFlightException;
import io.github.ringstate.encounter.Approach;
import io.github.ringstate.encounter.BulkFlight;
import io.github.ringstate.encounter.Encounter;
import io.github.ringstate.encounter.Ending;
import io.github.ringstate.encounter.Simulator;
import io.github.ringstate.quantity.IncompatibleValuesException;
import io.github.ringstate.quantity.OutOfRangeException;
import io.github.ringstate.quantity.Unit;
import io.github.ringstate.study.sweep.PilotCache.Pilot;
import java.util.List;
import java.util.concurrent.CancellationException;
import java.util.function.BooleanSupplier;
import org.jspecify.annotations.Nullable;

/**
 * Flies points one after the other into rows. Points that differ in the pilot alone share their
 * approach. For one thread.
 */
final class RowFlight {

  /** The columns behind those of the axes. */
  static final List<Column> COLUMNS =
      List.of(
          new Column("craft", Column.Type.WORD),
          new Column("entry", Column.Type.WORD),
          new Column("recovery", Column.Type.WORD),
          new Column("delay_s", Column.Type.NUMBER),
          new Column("outcome", Column.Type.WORD),
          new Column("altitude_loss_ft", Column.Type.NUMBER),
          new Column("loss_after_recognition_ft", Column.Type.NUMBER),
          new Column("peak_descent_fpm", Column.Type.NUMBER),
          new Column("time_to_arrest_s", Column.Type.NUMBER),
          new Column("impact_fpm", Column.Type.NUMBER),
          new Column("error", Column.Type.WORD));

  private final Cursor cursor;
  private final Composition composition;
  private final Models models;
  private final PilotCache pilots;
  private final List<String> shown;
  private final List<Column> columns;
  private long sceneNumber = -1;
  private @Nullable Encounter scene;
  private @Nullable BulkFlight shared;
  private @Nullable RuntimeException noScene;

  RowFlight(
      Cursor cursor,
      Composition composition,
      Models models,
      PilotCache pilots,
      List<String> shown,
      List<Column> columns) {
    this.cursor = cursor;
    this.composition = composition;
    this.models = models;
    this.pilots = pilots;
    this.shown = shown;
    this.columns = columns;
  }

  Rows fly(long from, int size, BooleanSupplier cancelled) {
    Rows rows = new Rows(columns, size);
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
    for (String key : shown) {
      int slot = values.slot(key);
      if (columns.get(column).type() == Column.Type.WORD) {
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
    for (int i = 3; i < COLUMNS.size(); i++) {
      if (COLUMNS.get(i).type() == Column.Type.NUMBER) {
        rows.set(column + i, row, Double.NaN);
      }
    }
    try {
      flyOn(values, rows, column + 3, row);
    } catch (OutOfRangeException | IncompatibleValuesException | NoSteadyFlightException bad) {
      rows.set(column + COLUMNS.size() - 1, row, bad.getMessage());
      rows.countFailed();
    } catch (RuntimeException fault) {
      throw new IllegalStateException("point " + index + " of the sweep met a fault", fault);
    }
  }

  private void flyOn(Values values, Rows rows, int column, int row) {
    if (cursor.scene() != sceneNumber) {
      set(cursor.scene(), values);
    }
    if (noScene != null) {
      throw noScene;
    }
    Pilot pilot;
    BulkFlight flight = shared;
    if (flight == null) {
      Encounter encounter = composition.flown(scene(), values);
      pilot = Pilot.of(encounter);
      flight = new BulkFlight(Approach.fly(encounter, Simulator.fast()));
    } else {
      pilot = pilots.get(cursor.placeInScene(), () -> Pilot.of(composition.flown(scene(), values)));
    }
    rows.set(column, row, pilot.recognition().delay());
    Ending ending = flight.fly(pilot.recovery(), pilot.recognition());
    rows.set(column + 1, row, ending.label());
    rows.set(column + 2, row, rounded(Unit.FOOT.fromSi(flight.altitudeLoss())));
    rows.set(column + 3, row, rounded(Unit.FOOT.fromSi(flight.lossAfterRecognition())));
    rows.set(column + 4, row, rounded(Unit.FOOT_PER_MINUTE.fromSi(flight.peakDescent())));
    rows.set(column + 5, row, rounded(flight.timeToArrest()));
    rows.set(column + 6, row, rounded(Unit.FOOT_PER_MINUTE.fromSi(flight.impactSpeed())));
  }

  private Encounter scene() {
    if (scene == null) {
      throw new IllegalStateException("no scene is set");
    }
    return scene;
  }

  private void set(long number, Values values) {
    sceneNumber = number;
    shared = null;
    scene = null;
    noScene = null;
    try {
      Encounter set = composition.scene(values, models.of(Composition.model(values)));
      scene = set;
      // gusts and shaking are those of the pilot, if pilots are drawn
      if (values.pilot() < 0 || !set.disturbances().random()) {
        shared = new BulkFlight(Approach.fly(set, Simulator.fast()));
      }
    } catch (OutOfRangeException | IncompatibleValuesException | NoSteadyFlightException bad) {
      noScene = bad;
    }
  }

  private static double rounded(double value) {
    return Math.rint(value * 1000) / 1000 + 0.0;
  }
}
