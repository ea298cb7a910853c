package io.github.ringstate.study.run;

/** How a check of a run comes out, the mildest first. */
public enum Finding {
  /** What is checked holds as planned. */
  HOLDS,
  /** It holds as planned as long as the least airspeed is kept, in turns too. */
  HOLDS_WITH_A_LIMIT,
  /** It fails as planned, and holds at another ground speed. */
  NOT_AS_PLANNED,
  /** It fails, and no ground speed makes up for it. */
  FAILS
}
