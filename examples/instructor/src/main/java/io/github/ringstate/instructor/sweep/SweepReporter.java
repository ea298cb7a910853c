package io.github.ringstate.instructor.sweep;

import io.github.ringstate.instructor.progress.Work;
import io.github.ringstate.study.Progress;
import java.util.Locale;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;

/** Tells people how a sweep comes on, and what is kept if it is ended from outside. */
final class SweepReporter implements SweepWatch, AutoCloseable {

  private static final int SECONDS_A_MINUTE = 60;

  private final long points;
  private final boolean quiet;
  private final Consumer<String> err;
  private final Interruption interruption;
  private long before;
  private @Nullable Work work;
  private Progress progress = Progress.SILENT;

  /**
   * Begins to listen.
   *
   * @param points how many points there are
   * @param quiet whether nothing is said of how far it has come
   * @param err takes what is said
   */
  SweepReporter(long points, boolean quiet, Consumer<String> err) {
    this.points = points;
    this.quiet = quiet;
    this.err = err;
    interruption = new Interruption(points, err);
  }

  @Override
  public void kept(long rows) {
    interruption.kept(rows);
    if (work == null && !quiet) {
      before = rows;
      work = Work.longRun(points, rows, this::line);
      progress = work.part(points - rows);
    }
  }

  @Override
  public void flown(long rows) {
    progress.flown(rows - before, points - before);
  }

  private void line(long flown, double rate, double left) {
    err.accept(
        SweepMessages.SAY.progress(
            flown, points, String.format(Locale.ROOT, "%.0f", rate), clock(left)));
  }

  /** Hours, minutes and seconds. */
  static String clock(double seconds) {
    long whole = (long) Math.ceil(seconds);
    long minutes = whole / SECONDS_A_MINUTE;
    return String.format(
        Locale.ROOT,
        "%d:%02d:%02d",
        minutes / SECONDS_A_MINUTE,
        minutes % SECONDS_A_MINUTE,
        whole % SECONDS_A_MINUTE);
  }

  @Override
  public void close() {
    if (work != null) {
      work.close();
    }
    interruption.close();
  }
}
