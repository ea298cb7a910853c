package io.github.ringstate.validation.figure;

import java.util.List;

/**
 * A figure drawn.
 *
 * @param svg one {@code svg} element, without an XML declaration
 * @param keys what its lines and points mean
 */
public record Drawing(String svg, List<Key> keys) {

  /** Copies the keys. */
  public Drawing {
    keys = List.copyOf(keys);
  }
}
