package io.github.ringstate.files.row;

import io.github.ringstate.files.error.UserError;
import io.github.ringstate.files.whole.WholeFile;
import java.io.Closeable;
import java.io.IOException;
import java.nio.channels.Channels;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** A file of rows that grows chunk by chunk, and what is kept beside it until it is whole. */
public final class RowFile implements Closeable {

  private static final String NOT_OPEN = "the file of rows is not open";

  private final WholeFile file;
  private final Path part;
  private final Path journalPlace;
  private final RowFormat format;
  private final List<EncodedRows> waiting = new ArrayList<>();
  private @Nullable Journal journal;
  private @Nullable FileChannel rows;

  /**
   * A file of rows; nothing is touched yet.
   *
   * @param file the file
   * @param format how rows stand in it
   */
  public RowFile(WholeFile file, RowFormat format) {
    this.file = file;
    this.format = format;
    part = file.folder().resolve(file.place().getFileName() + ".part");
    journalPlace = file.folder().resolve(file.place().getFileName() + ".journal");
  }

  /**
   * Whether a run was begun and not ended.
   *
   * @return true if its files are there
   */
  public boolean begun() {
    return Files.exists(part) || Files.exists(journalPlace);
  }

  /**
   * Opens the file to append to it: from its beginning, or behind the last whole chunk of a run of
   * the same.
   *
   * @param asked what is being made, one thing a line; a run that was begun must have asked for the
   *     same
   * @throws UserError if another run is at work, the run begun was another, or a file is damaged
   */
  public void open(List<String> asked) {
    try {
      if (Files.exists(part) && !Files.exists(journalPlace)) {
        throw damaged("cannot go on: there are rows without a journal");
      }
      Journal opened = Journal.open(journalPlace, asked.get(0));
      journal = opened;
      // killed while it was begun, and nothing was written
      boolean torn =
          opened.asked().size() < asked.size()
              && asked.subList(0, opened.asked().size()).equals(opened.asked())
              && opened.chunks().isEmpty()
              && !Files.exists(part);
      if (torn) {
        opened.begin(asked);
      }
      Optional<String> difference = Difference.between(opened.asked(), asked);
      if (difference.isPresent()) {
        throw damaged("cannot go on: the run that was begun there " + difference.get());
      }
      boolean moved = !Files.exists(part) && !opened.chunks().isEmpty();
      FileChannel channel = moved ? movedRows() : partRows();
      rows = channel;
      long length = checked(channel, opened.chunks());
      opened.goOn();
      if (!moved) {
        channel.truncate(length);
        channel.position(length);
      }
    } catch (Journal.ForeignException foreign) {
      throw UserError.file(
          file.place().toString(),
          "cannot be written: " + journalPlace.getFileName() + " is there and is no journal",
          foreign);
    } catch (Journal.InUseException inUse) {
      throw UserError.file(file.place().toString(), "is being written by another run", inUse);
    } catch (IOException failed) {
      throw file.refused(failed);
    }
  }

  private FileChannel partRows() throws IOException {
    return FileChannel.open(
        part, StandardOpenOption.CREATE, StandardOpenOption.READ, StandardOpenOption.WRITE);
  }

  /** Killed between the move of the rows and the end of the journal. */
  private FileChannel movedRows() throws IOException {
    if (!Files.exists(file.place())) {
      throw damaged("cannot go on: " + part.getFileName() + " is gone");
    }
    return FileChannel.open(file.place(), StandardOpenOption.READ);
  }

  /** Holds the rows against the journal; returns where the last whole chunk ends. */
  private long checked(FileChannel channel, List<Chunk> chunks) throws IOException {
    byte[] head = format.head();
    if (chunks.isEmpty()) {
      channel.truncate(0);
      write(channel, head);
      return head.length;
    }
    long at = head.length;
    if (!Arrays.equals(head, read(channel, 0, head.length))) {
      throw damaged("cannot go on: the rows were changed since");
    }
    for (Chunk chunk : chunks) {
      byte[] bytes = read(channel, at, Math.toIntExact(chunk.length()));
      if (Chunk.check(bytes) != chunk.check()) {
        throw damaged("cannot go on: the rows were changed since");
      }
      at += chunk.length();
    }
    return at;
  }

  private UserError damaged(String why) {
    return UserError.file(
        file.place().toString(),
        why
            + "; to begin anew, remove "
            + part.getFileName()
            + " and "
            + journalPlace.getFileName());
  }

  /**
   * How many rows are in whole chunks.
   *
   * @return the number
   */
  public long rowCount() {
    return journal().chunks().stream().mapToLong(Chunk::rows).sum();
  }

  /**
   * How many rows in whole chunks could not be flown.
   *
   * @return the number
   */
  public long failedCount() {
    return journal().chunks().stream().mapToLong(Chunk::failed).sum();
  }

  /**
   * Appends rows; they reach the disk with the next {@link #sync}.
   *
   * @param encoded the rows
   */
  public void append(EncodedRows encoded) {
    waiting.add(encoded);
  }

  /**
   * Makes the rows appended since the last time one chunk, on the disk when this returns.
   *
   * @throws UserError if they cannot be written
   */
  public void sync() {
    if (waiting.isEmpty()) {
      return;
    }
    ChunkRows gathered = ChunkRows.of(format, waiting);
    waiting.clear();
    try {
      for (byte[] piece : gathered.pieces()) {
        write(rows(), piece);
      }
      rows().force(true);
      journal().add(gathered.chunk());
    } catch (IOException failure) {
      throw file.refused(failure);
    }
  }

  /**
   * Makes the file whole and puts it in its place.
   *
   * @throws UserError if that fails
   */
  public void finish() {
    sync();
    try {
      if (Files.exists(part)) {
        write(rows(), format.tail(journal().chunks()));
        rows().force(true);
        rows().close();
        file.permitAsBefore(part);
        Files.move(part, file.place(), StandardCopyOption.ATOMIC_MOVE);
        forceFolder();
      }
      Files.delete(journalPlace);
      forceFolder();
    } catch (IOException failed) {
      throw file.refused(failed);
    }
  }

  /** Makes the names in the folder last, where the system can do that. */
  private void forceFolder() {
    try (FileChannel folder = FileChannel.open(file.folder(), StandardOpenOption.READ)) {
      folder.force(true);
    } catch (IOException unable) {
      // some systems open no folders; the names then last when the system says so
    }
  }

  private Journal journal() {
    return Objects.requireNonNull(journal, NOT_OPEN);
  }

  private FileChannel rows() {
    return Objects.requireNonNull(rows, NOT_OPEN);
  }

  private static void write(FileChannel channel, byte[] bytes) throws IOException {
    Channels.newOutputStream(channel).write(bytes);
  }

  /** Reads some bytes; fewer if the file ends before. */
  private static byte[] read(FileChannel channel, long from, int size) throws IOException {
    return Channels.newInputStream(channel.position(from)).readNBytes(size);
  }

  @Override
  public void close() {
    try {
      if (rows != null) {
        rows.close();
      }
      if (journal != null) {
        journal.close();
      }
    } catch (IOException failed) {
      throw file.refused(failed);
    }
  }
}
