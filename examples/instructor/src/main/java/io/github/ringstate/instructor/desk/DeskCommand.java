package io.github.ringstate.instructor.desk;

import io.github.ringstate.files.error.UserError;
import io.github.ringstate.files.text.Caution;
import io.github.ringstate.instructor.delivery.Delivery;
import io.github.ringstate.instructor.option.NumberText;
import java.io.IOException;
import java.io.OutputStream;
import java.util.concurrent.TimeUnit;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** Opens the briefing desk. */
@Command(
    name = "desk",
    description = {
      "Open the briefing desk in the browser: the whole job on one local page, from the craft to the"
          + " printed sheet. Nothing leaves this machine, and nothing is installed.",
      ""
    },
    footer = {"", "Example", "  ringstate desk", "", Caution.TEXT})
public final class DeskCommand implements Runnable {

  private static final int MOST_PORT = 65_535;
  private static final int MOST_MINUTES = 10_080;

  private final Tool tool;
  private final Supplier<Fields> fields;
  private final OutputStream terminal;

  @Option(
      names = "--port",
      paramLabel = "PORT",
      description = "Port on the loopback address. Unless given: one that is free.")
  private @Nullable String port;

  @Option(names = "--no-browser", description = "Print the address alone; no browser is opened.")
  private boolean noBrowser;

  @Option(
      names = "--idle",
      paramLabel = "MIN",
      description =
          "End after so many minutes without a page, up to a week; a page that is open is heard every"
              + " 20 s. Unless given: the desk stays until it is ended. A double click on the jar"
              + " gives two hours.")
  private @Nullable String idle;

  /**
   * Creates the command.
   *
   * @param tool the tool's commands
   * @param fields the fields of the page
   * @param terminal where the address is printed
   */
  public DeskCommand(Tool tool, Supplier<Fields> fields, OutputStream terminal) {
    this.tool = tool;
    this.fields = fields;
    this.terminal = terminal;
  }

  @Override
  public void run() {
    int wanted = port == null ? 0 : (int) NumberText.whole("--port", port, 1, MOST_PORT);
    long alone =
        idle == null
            ? 0
            : TimeUnit.MINUTES.toNanos(NumberText.whole("--idle", idle, 1, MOST_MINUTES));
    try (Desk desk = Desk.open(wanted, tool, fields.get())) {
      Delivery.print(DeskMessages.SAY.address(desk.address()) + "\n", terminal);
      if (!noBrowser) {
        Browser.open(desk.address());
      }
      if (idle == null) {
        desk.awaitEnd();
      } else {
        desk.awaitEnd(alone);
      }
    } catch (IOException taken) {
      throw UserError.option("--port", String.valueOf(port), DeskMessages.SAY.portTaken());
    } catch (InterruptedException interrupted) {
      Thread.currentThread().interrupt();
    }
  }
}
