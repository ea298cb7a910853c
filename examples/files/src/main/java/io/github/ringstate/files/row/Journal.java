package io.github.ringstate.files.row;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.Closeable;
import java.io.IOException;
import java.nio.channels.Channels;
import java.nio.channels.FileChannel;
import java.nio.channels.OverlappingFileLockException;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** The journal of a run: what is being made, and the chunks of it that are whole. */
final class Journal implements Closeable {

  /** What is there is no journal. */
  static final class ForeignException extends IOException {
    private static final long serialVersionUID = 1L;
  }

  /** Another run holds the journal. */
  static final class InUseException extends IOException {
    private static final long serialVersionUID = 1L;
  }

  private final FileChannel channel;
  private long whole;
  private final List<String> asked = new ArrayList<>();
  private final List<Chunk> chunks = new ArrayList<>();

  private Journal(FileChannel channel) {
    this.channel = channel;
  }

  /**
   * Opens a journal, or begins one. What was there stays as it is until {@link #goOn} or {@link
   * #begin}.
   *
   * @param title the line with which such a journal begins
   * @throws InUseException if another run holds it
   * @throws ForeignException if the file is no such journal
   */
  static Journal open(Path file, String title) throws IOException {
    FileChannel channel =
        FileChannel.open(
            file, StandardOpenOption.CREATE, StandardOpenOption.READ, StandardOpenOption.WRITE);
    try {
      if (channel.tryLock() == null) {
        throw new InUseException();
      }
      Journal journal = new Journal(channel);
      journal.read(title);
      return journal;
    } catch (OverlappingFileLockException here) {
      channel.close();
      throw new InUseException();
    } catch (IOException failed) {
      channel.close();
      throw failed;
    }
  }

  /** Reads the lines that are whole; what stands behind them was torn by a kill. */
  private void read(String title) throws IOException {
    String text = new String(Channels.newInputStream(channel).readAllBytes(), UTF_8);
    int start = 0;
    while (true) {
      int end = text.indexOf('\n', start);
      String line = end < 0 ? null : unsealed(text.substring(start, end));
      if (line == null) {
        break;
      }
      Optional<Chunk> chunk = Chunk.read(line);
      if (chunk.isPresent()) {
        chunks.add(chunk.get());
      } else {
        asked.add(line);
      }
      start = end + 1;
    }
    boolean begun = asked.isEmpty() ? sealed(title).startsWith(text) : asked.get(0).equals(title);
    if (!begun) {
      throw new ForeignException();
    }
    whole = text.substring(0, start).getBytes(UTF_8).length;
  }

  /** Cuts off what was torn, to append to what is whole. */
  void goOn() throws IOException {
    channel.truncate(whole);
    channel.position(whole);
  }

  /** What is being made; empty if nothing was begun. */
  List<String> asked() {
    return asked;
  }

  /** The chunks that are whole, in order. */
  List<Chunk> chunks() {
    return chunks;
  }

  void begin(List<String> lines) throws IOException {
    channel.truncate(0);
    asked.clear();
    chunks.clear();
    StringBuilder text = new StringBuilder();
    for (String line : lines) {
      text.append(sealed(line));
    }
    append(text.toString());
    asked.addAll(lines);
    whole = channel.position();
  }

  void add(Chunk chunk) throws IOException {
    append(sealed(chunk.line()));
    chunks.add(chunk);
  }

  private void append(String text) throws IOException {
    Channels.newOutputStream(channel).write(text.getBytes(UTF_8));
    channel.force(true);
  }

  private static String sealed(String line) {
    return line + " #" + Integer.toHexString(Chunk.check(line.getBytes(UTF_8))) + "\n";
  }

  private static @Nullable String unsealed(String sealed) {
    int seal = sealed.lastIndexOf(" #");
    if (seal < 0) {
      return null;
    }
    String line = sealed.substring(0, seal);
    return sealed(line).equals(sealed + "\n") ? line : null;
  }

  @Override
  public void close() throws IOException {
    channel.close();
  }
}
