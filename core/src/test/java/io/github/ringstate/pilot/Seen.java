package io.github.ringstate.pilot;

import java.lang.reflect.Proxy;
import java.util.Map;

/** What a pilot sees at one instant, given by name; what is not given is zero. */
public final class Seen {

  private Seen() {}

  /** The cockpit that shows these numbers, each by the name of its method. */
  public static Cockpit of(Map<String, Double> shown) {
    return (Cockpit)
        Proxy.newProxyInstance(
            Cockpit.class.getClassLoader(),
            new Class<?>[] {Cockpit.class},
            (proxy, method, arguments) -> {
              double value = shown.getOrDefault(method.getName(), 0.0);
              return method.getReturnType() == int.class ? (Object) (int) value : (Object) value;
            });
  }
}
