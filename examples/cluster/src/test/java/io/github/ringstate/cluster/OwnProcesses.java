package io.github.ringstate.cluster;

import java.util.Collection;
import java.util.List;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.stream.Stream;

/**
 * The processes that a test started and those that they started in turn. All of them are ended with
 * this, at the latest when the test's own virtual machine ends.
 */
final class OwnProcesses implements AutoCloseable {

  private final Set<ProcessHandle> known = ConcurrentHashMap.newKeySet();
  private final Thread atTheEnd = new Thread(this::killAll);

  OwnProcesses() {
    Runtime.getRuntime().addShutdownHook(atTheEnd);
  }

  void add(Process process) {
    known.add(process.toHandle());
  }

  /**
   * All that are alive. Who was started by a process that is dead by now is among them if this was
   * asked before its death.
   */
  Collection<ProcessHandle> alive() {
    for (ProcessHandle one : List.copyOf(known)) {
      one.descendants().forEach(known::add);
    }
    known.removeIf(one -> !one.isAlive());
    return List.copyOf(known);
  }

  /** The children of one that run a class. */
  List<ProcessHandle> childrenRunning(Process parent, String className) {
    alive();
    try (Stream<ProcessHandle> children = parent.descendants()) {
      return children
          .filter(child -> child.info().commandLine().orElse("").contains(className))
          .toList();
    }
  }

  private void killAll() {
    for (int round = 0; round < 10 && !alive().isEmpty(); round++) {
      for (ProcessHandle one : alive()) {
        one.destroyForcibly(); // SIGKILL, which ends stopped ones too
      }
      for (ProcessHandle one : List.copyOf(known)) {
        waitFor(one);
      }
    }
  }

  private static void waitFor(ProcessHandle one) {
    try {
      one.onExit().get(2, TimeUnit.SECONDS);
    } catch (InterruptedException interrupted) {
      Thread.currentThread().interrupt();
    } catch (java.util.concurrent.ExecutionException | TimeoutException stillThere) {
      // another round sees it
    }
  }

  @Override
  public void close() {
    killAll();
    Runtime.getRuntime().removeShutdownHook(atTheEnd);
  }
}
