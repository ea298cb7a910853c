package io.github.ringstate.instructor.progress;

import java.io.PrintStream;
import me.tongfei.progressbar.ProgressBarConsumer;

/** The line of a terminal on which the bar is drawn over and over, and wiped away in the end. */
final class TerminalLine implements ProgressBarConsumer {

  private static final int WIDTH = 79;

  private final PrintStream out;
  private int longest;
  private boolean wiped;

  TerminalLine(PrintStream out) {
    this.out = out;
  }

  @Override
  public int getMaxRenderedLength() {
    return WIDTH;
  }

  @Override
  public synchronized void accept(String bar) {
    if (wiped) {
      return;
    }
    String line = bar.length() > WIDTH ? bar.substring(0, WIDTH) : bar;
    longest = Math.max(longest, line.length());
    out.print("\r" + line);
    out.flush();
  }

  /** Wipes the bar away; from then on nothing is drawn. */
  synchronized void wipe() {
    if (!wiped && longest > 0) {
      out.print("\r" + " ".repeat(longest) + "\r");
      out.flush();
    }
    wiped = true;
  }

  @Override
  public void close() {
    out.flush();
  }
}
