package io.github.ringstate.instructor.progress;

import io.github.ringstate.instructor.delivery.StandardStream;
import io.github.ringstate.study.Progress;
import java.io.PrintStream;
import java.time.Duration;
import java.util.concurrent.CancellationException;
import java.util.concurrent.TimeUnit;
import java.util.function.BooleanSupplier;
import java.util.function.LongSupplier;
import me.tongfei.progressbar.ProgressBar;
import me.tongfei.progressbar.ProgressBarBuilder;
import me.tongfei.progressbar.ProgressBarStyle;
import org.jspecify.annotations.Nullable;

/**
 * A computation of many flights, one part after the other. Once it has taken a second, a bar on
 * standard error shows how far it has come, with the rate and the time left, if that is a terminal.
 * Elsewhere, as in the log of a batch job, a long run says it every half minute.
 */
public final class Work implements AutoCloseable {

  private static final long PATIENCE = TimeUnit.SECONDS.toNanos(1);
  private static final long BETWEEN_LINES = TimeUnit.SECONDS.toNanos(30);
  private static final double NANOS = TimeUnit.SECONDS.toNanos(1);
  private static final int UPDATE = 200;

  /** Takes what there is to say where nobody watches. */
  @FunctionalInterface
  public interface Log {

    /** Says nothing. */
    Log SILENT = (flown, rate, left) -> {};

    /**
     * A run goes on.
     *
     * @param flown how many are flown, those of runs before included
     * @param rate how many a second, in this run
     * @param left the time left at that rate, s
     */
    void line(long flown, double rate, double left);
  }

  private final long flights;
  private final long before;
  private final Log log;
  private final TerminalLine line;
  private final BooleanSupplier isTerminal;
  private final LongSupplier nanoseconds;
  private final long start;
  private long begun;
  private long said;
  private boolean asked;
  private @Nullable ProgressBar bar;
  private @Nullable Thread wiper;

  Work(
      long flights,
      long before,
      Log log,
      PrintStream err,
      BooleanSupplier isTerminal,
      LongSupplier nanoseconds) {
    this.flights = flights;
    this.before = before;
    this.log = log;
    line = new TerminalLine(err);
    this.isTerminal = isTerminal;
    this.nanoseconds = nanoseconds;
    start = nanoseconds.getAsLong();
    said = start;
    begun = before;
  }

  /**
   * Begins a computation.
   *
   * @param flights how many flights it has
   * @return the computation
   */
  public static Work of(long flights) {
    return longRun(flights, 0, Log.SILENT);
  }

  /**
   * Begins a computation that may take hours, or goes on with it.
   *
   * @param flights how many flights it has
   * @param before how many of them were flown by runs before
   * @param log hears of it where there is no terminal
   * @return the computation
   */
  public static Work longRun(long flights, long before, Log log) {
    return new Work(
        flights, before, log, System.err, StandardStream.ERROR::isTerminal, System::nanoTime);
  }

  /**
   * Begins the next part; those before are done.
   *
   * @param size how many flights it has
   * @return hears how far the part has come
   */
  public Progress part(long size) {
    long before = begun;
    begun += size;
    return (flown, limit) -> show(before + flown);
  }

  private void show(long flown) {
    long now = nanoseconds.getAsLong();
    if (!asked && now - start > PATIENCE) {
      asked = true;
      if (isTerminal.getAsBoolean()) {
        bar = bar();
      }
    }
    if (bar != null) {
      bar.stepTo(flown);
    } else if (now - said >= BETWEEN_LINES && flown > before) {
      said = now;
      double rate = (flown - before) * NANOS / (now - start);
      log.line(flown, rate, (flights - flown) / rate);
    }
  }

  private ProgressBar bar() {
    Thread wiping = new Thread(line::wipe);
    try {
      Runtime.getRuntime().addShutdownHook(wiping);
    } catch (IllegalStateException ending) {
      throw new CancellationException("the virtual machine ends");
    }
    wiper = wiping;
    return new ProgressBarBuilder()
        .setTaskName("flights")
        .setInitialMax(flights)
        .startsFrom(before, Duration.ZERO)
        .showSpeed()
        .setUpdateIntervalMillis(UPDATE)
        .setStyle(ProgressBarStyle.ASCII)
        .setConsumer(line)
        .build();
  }

  @Override
  public void close() {
    if (bar != null) {
      bar.close();
      line.wipe();
    }
    if (wiper != null) {
      try {
        Runtime.getRuntime().removeShutdownHook(wiper);
      } catch (IllegalStateException ending) {
        // the virtual machine ends and has wiped the line
      }
    }
  }
}
