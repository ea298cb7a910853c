package io.github.ringstate.instructor.desk;

import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.util.Map;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;

/** The page and what it can ask for, open until it is ended. */
final class Desk implements AutoCloseable {

  private final DeskServer server;
  private final CountDownLatch ended = new CountDownLatch(1);

  private Desk(DeskServer server) {
    this.server = server;
  }

  /**
   * Opens a desk.
   *
   * @param port the port; 0 for any that is free
   * @param tool the tool's commands
   * @param fields the fields of a plan
   * @return the desk
   * @throws IOException if the port cannot be had
   */
  static Desk open(int port, Tool tool, Fields fields) throws IOException {
    Desk desk = new Desk(DeskServer.at(port));
    Commands commands = new Commands(tool);
    Papers papers = new Papers(commands, fields);
    desk.server.serve(
        Map.of(
            "start", (body, reply) -> reply.send(Opening.words(fields)),
            "study", new Studies(commands, fields)::answer,
            "sheet", papers::sheet,
            "save", papers::save,
            "open", papers::open,
            "craft", papers::craft,
            "manual", papers::manual,
            "review", new Reviews(commands, fields)::answer,
            "here", (body, reply) -> reply.send(JsonNodeFactory.instance.objectNode()),
            "end", desk::end));
    return desk;
  }

  /** The address of the page. */
  String address() {
    return server.address();
  }

  private void end(Body body, Reply reply) throws IOException {
    ObjectNode bye = JsonNodeFactory.instance.objectNode();
    reply.send(bye.put("ended", true));
    ended.countDown();
  }

  /**
   * Waits until the page ends the desk.
   *
   * @throws InterruptedException if the thread is interrupted
   */
  void awaitEnd() throws InterruptedException {
    ended.await();
  }

  /**
   * Waits until the page ends the desk, or no page has been there for long enough.
   *
   * @param alone so long, ns
   * @throws InterruptedException if the thread is interrupted
   */
  void awaitEnd(long alone) throws InterruptedException {
    long left = alone;
    while (left > 0 && !ended.await(left, TimeUnit.NANOSECONDS)) {
      left = alone - server.silence();
    }
  }

  @Override
  public void close() {
    server.close();
  }
}
