package io.github.ringstate.study.sweep;

/** A point of a sweep met a fault of the program, or of an extension; its cause is that fault. */
public final class PointFaultException extends IllegalStateException {

  private static final long serialVersionUID = 1L;

  PointFaultException(long index, Throwable fault) {
    super("point " + index + " of the sweep met a fault", fault);
  }
}
