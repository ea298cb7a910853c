package io.github.ringstate.instructor.desk;

/** A request that is not answered, with the status of HTTP that says why (RFC 9110). */
final class Refused extends Exception {

  static final int BAD_REQUEST = 400;
  static final int FORBIDDEN = 403;
  static final int NOT_FOUND = 404;
  static final int METHOD_NOT_ALLOWED = 405;
  static final int TOO_LARGE = 413;
  static final int WRONG_TYPE = 415;
  static final int FAULT = 500;
  static final int BUSY = 503;

  private static final long serialVersionUID = 1L;

  private final int status;

  Refused(int status, String why) {
    super(why);
    this.status = status;
  }

  int status() {
    return status;
  }
}
