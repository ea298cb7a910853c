package io.github.ringstate.instructor.progress;

import io.github.ringstate.instructor.delivery.StandardStream;
import io.github.ringstate.study.Progress;
import java.io.PrintStream;
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
 * standard error shows how far it has come, if that is a terminal.
 */
public final class Work implements AutoCloseable {

  private static final long PATIENCE = TimeUnit.SECONDS.toNanos(1);
  private static final int UPDATE = 200;

  private final long flights;
  private final TerminalLine line;
  private final BooleanSupplier isTerminal;
  private final LongSupplier nanoseconds;
  private final long start;
  private long begun;
  private boolean asked;
  private @Nullable ProgressBar bar;
  private @Nullable Thread wiper;

  Work(long flights, PrintStream err, BooleanSupplier isTerminal, LongSupplier nanoseconds) {
    this.flights = flights;
    line = new TerminalLine(err);
    this.isTerminal = isTerminal;
    this.nanoseconds = nanoseconds;
    start = nanoseconds.getAsLong();
  }

  /**
   * Begins a computation.
   *
   * @param flights how many flights it has
   * @return the computation
   */
  public static Work of(long flights) {
    return new Work(flights, System.err, StandardStream.ERROR::isTerminal, System::nanoTime);
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
    if (!asked && nanoseconds.getAsLong() - start > PATIENCE) {
      asked = true;
      if (isTerminal.getAsBoolean()) {
        bar = bar();
      }
    }
    if (bar != null) {
      bar.stepTo(flown);
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
