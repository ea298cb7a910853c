package outside;

import io.github.ringstate.pilot.Spread;
import io.github.ringstate.pilot.Technique;
import io.github.ringstate.study.sweep.OutputColumn;
import io.github.ringstate.study.sweep.SweepExtension;
import java.util.List;
import java.util.OptionalDouble;

/** What sweeps get from here: a recovery and a column. */
public final class OutsideExtension implements SweepExtension {

  @Override
  public String name() {
    return "outside";
  }

  @Override
  public List<Technique> recoveries() {
    return List.of(
        new Technique(
            "diagonal",
            "diagonal",
            "nose down and bank together, then level",
            Technique.Purpose.WAY_OUT,
            "The rotor leaves its wake ahead and to the side.",
            Diagonal.PARAMETERS,
            List.of(Spread.normal(Diagonal.LEAN, 2)),
            Diagonal::new));
  }

  @Override
  public List<OutputColumn> columns() {
    return List.of(
        new OutputColumn(
            "loss_per_second_m_per_s",
            point ->
                point.timeToArrest() > 0
                    ? OptionalDouble.of(point.altitudeLoss() / point.timeToArrest())
                    : OptionalDouble.empty()));
  }
}
