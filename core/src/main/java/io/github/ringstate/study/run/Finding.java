package io.github.ringstate.study.run;

/** How a check of a run comes out, the mildest first. */
public enum Finding {
  /** What is checked holds as planned. */
  HOLDS,
  /** It holds as planned, but not through a turn downwind unless the airspeed is kept up. */
  HOLDS_WITH_A_LIMIT,
  /** It is short; if all else holds, a limit of airspeed or ground speed makes up for it. */
  SHORT,
  /** It fails, and no limit makes up for it. */
  FAILS
}
