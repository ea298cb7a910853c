package io.github.ringstate.instructor.desk;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import io.github.ringstate.files.report.Report;
import io.github.ringstate.files.unit.UnitSystem;
import io.github.ringstate.instructor.origin.Kept;
import java.io.IOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import java.util.concurrent.Semaphore;
import java.util.function.Supplier;

/**
 * Flies what is on the desk: at once what one standard pilot loses, then more and more pilots. Each
 * page has one study under way; the next one ends it.
 */
final class Studies {

  /** What a plan and a craft are called in the commands. */
  static final String PLAN = "plan.toml";

  /** Pages that study at once; a person has one or two. */
  private static final int MOST = 4;

  private final Commands commands;
  private final Fields fields;
  private final Map<String, Running> running = new HashMap<>();

  /**
   * What is overtaken may fly for a moment more, and where the machine is busy, for longer than it
   * takes the page to ask again: so many fly at once, and who is overtaken waiting never does.
   */
  private final Semaphore flights = new Semaphore(MOST, true);

  Studies(Commands commands, Fields fields) {
    this.commands = commands;
    this.fields = fields;
  }

  /** Answers the page that wants to know. */
  void answer(Body body, Reply reply) throws Refused, IOException {
    JsonNode sent = body.sent();
    Errand errand = Errand.of(sent, fields);
    String tab = Errand.text(sent.path("tab"));
    List<Step> steps =
        Step.of(errand, Errand.text(sent.path("delay")), Errand.text(sent.path("shown")));
    try (Running own = begin(tab)) {
      Reply.Lines lines = reply.lines();
      lines.send(last(own, steps, errand, lines));
    }
  }

  /** Answers step by step, and says how that ended. */
  private ObjectNode last(Running own, List<Step> steps, Errand errand, Reply.Lines lines)
      throws IOException {
    ObjectNode last = JsonNodeFactory.instance.objectNode();
    try {
      for (Step step : steps) {
        lines.send(own.fly(() -> line(step, errand)));
      }
      return last.put("done", true);
    } catch (CancellationException overtaken) {
      return last.put("overtaken", DeskMessages.SAY.overtaken());
    }
  }

  private ObjectNode line(Step step, Errand errand) {
    String units = errand.units();
    Map<String, String> kept = new HashMap<>(errand.kept());
    kept.put(PLAN, errand.planText(step.without()));
    List<String> arguments = new ArrayList<>(step.arguments());
    arguments.add(1, "--plan=" + PLAN);
    arguments.add("--units=" + units);
    Commands.Done done = commands.report(arguments, Kept.alone(kept, Map.of()));
    ObjectNode line = JsonNodeFactory.instance.objectNode();
    line.put("panel", step.panel());
    line.put("pilots", step.pilots());
    Optional<Report> report = done.report();
    if (!done.isWell() || report.isEmpty()) {
      return line.put("refused", done.refusal());
    }
    UnitSystem system = units(units);
    line.set("sheet", ReportJson.sheet(report.get(), system));
    ReportJson.addTables(report.get(), line);
    if (step.panel().equals("fly")) {
      line.set("scale", ReportJson.scale(system));
    }
    if (step.drawn()) {
      ReportJson.addDrawings(report.get(), system, line, step.panel());
    }
    done.said().forEach(line.putArray("notices")::add);
    return line;
  }

  static UnitSystem units(String name) {
    for (UnitSystem units : UnitSystem.values()) {
      if (units.label().equals(name)) {
        return units;
      }
    }
    throw new IllegalArgumentException(name); // the command has refused it
  }

  private Running begin(String tab) throws Refused {
    synchronized (running) {
      Running before = running.get(tab);
      if (before == null && running.size() >= MOST) {
        throw new Refused(Refused.BUSY, "more than " + MOST + " pages are at work");
      }
      if (before != null) {
        before.overtake();
      }
      Running own = new Running(tab);
      running.put(tab, own);
      return own;
    }
  }

  /**
   * A study under way on the thread that began it. Only its flying is interrupted: an interruption
   * of a thread that writes to a channel closes the channel (InterruptibleChannel).
   */
  private final class Running implements AutoCloseable {

    private final String tab;
    private final Thread thread = Thread.currentThread();
    private boolean flying;
    private boolean ended;

    Running(String tab) {
      this.tab = tab;
    }

    void overtake() {
      ended = true;
      if (flying) {
        thread.interrupt();
      }
    }

    /** Flies a step unless the study is overtaken. */
    ObjectNode fly(Supplier<ObjectNode> step) {
      flies(true);
      try {
        flights.acquire();
        try {
          return step.get();
        } finally {
          flights.release();
        }
      } catch (InterruptedException overtaken) {
        throw new CancellationException();
      } finally {
        flies(false);
      }
    }

    private void flies(boolean now) {
      synchronized (running) {
        if (now && ended) {
          throw new CancellationException();
        }
        flying = now;
        if (!now) {
          Thread.interrupted(); // an interruption that comes late is not for what is written
        }
      }
    }

    @Override
    public void close() {
      synchronized (running) {
        running.remove(tab, this);
      }
    }
  }
}
