package io.github.ringstate.files.row;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.EOFException;
import java.io.IOException;
import java.nio.BufferUnderflowException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.channels.Channels;
import java.nio.channels.FileChannel;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Optional;

/**
 * Finds a value in the key-value metadata of a Parquet file (field 5 of {@code FileMetaData} in
 * {@code parquet.thrift}, in the compact protocol of Apache Thrift) and passes over all else.
 */
public final class ParquetFooter {

  private static final int PAIRS = 5;
  private static final int MAGIC = 4;
  private static final int BOOLEANS = 2;
  private static final int BYTE = 3;
  private static final int VARINTS = 6;
  private static final int DOUBLE = 7;
  private static final int BINARY = 8;
  private static final int STRUCT = 12;
  private static final int DEEPEST = 20;

  private final ByteBuffer in;

  private ParquetFooter(ByteBuffer in) {
    this.in = in;
  }

  /**
   * Reads a value.
   *
   * @param file the file
   * @param key its key
   * @return the value; empty if there is none of that key
   * @throws IOException if the file cannot be read, or is no Parquet
   */
  public static Optional<String> read(Path file, String key) throws IOException {
    try (FileChannel channel = FileChannel.open(file, StandardOpenOption.READ)) {
      long end = channel.size() - Integer.BYTES - MAGIC;
      int length = end < 0 ? -1 : bytes(channel, end, Integer.BYTES).getInt();
      if (length < 0 || length > end) {
        throw new IOException("it is no whole Parquet file");
      }
      return new ParquetFooter(bytes(channel, end - length, length)).value(key);
    } catch (BufferUnderflowException torn) {
      throw new IOException("its table of contents is damaged", torn);
    }
  }

  private static ByteBuffer bytes(FileChannel channel, long from, int size) throws IOException {
    byte[] bytes = Channels.newInputStream(channel.position(from)).readNBytes(size);
    if (bytes.length < size) {
      throw new EOFException();
    }
    return ByteBuffer.wrap(bytes).order(ByteOrder.LITTLE_ENDIAN);
  }

  private Optional<String> value(String key) throws IOException {
    int id = 0;
    for (int head = next(); head != 0; head = next()) {
      id = id(id, head);
      int type = head & 0xF;
      if (id == PAIRS) {
        return pairs(key);
      }
      skip(type, 0);
    }
    return Optional.empty();
  }

  private Optional<String> pairs(String key) throws IOException {
    int head = next();
    int size = head >> 4 == 15 ? (int) varint() : head >> 4;
    for (int i = 0; i < size; i++) {
      String name = "";
      String value = "";
      int id = 0;
      for (int field = next(); field != 0; field = next()) {
        id = id(id, field);
        if ((field & 0xF) != BINARY) {
          skip(field & 0xF, 0);
        } else if (id == 1) {
          name = text();
        } else {
          value = text();
        }
      }
      if (name.equals(key)) {
        return Optional.of(value);
      }
    }
    return Optional.empty();
  }

  private int id(int before, int head) {
    return head >> 4 == 0 ? (int) (varint() >>> 1) : before + (head >> 4);
  }

  private void skip(int type, int depth) throws IOException {
    if (depth > DEEPEST) {
      throw new IOException("its table of contents is damaged");
    }
    if (type == BYTE) {
      next();
    } else if (type > BYTE && type <= VARINTS) {
      varint();
    } else if (type == DOUBLE) {
      in.getLong();
    } else if (type == BINARY) {
      text();
    } else if (type == STRUCT) {
      for (int field = next(); field != 0; field = next()) {
        id(0, field);
        skip(field & 0xF, depth + 1);
      }
    } else if (type > BINARY && type < STRUCT - 1) {
      int head = next();
      int size = head >> 4 == 15 ? (int) varint() : head >> 4;
      for (int i = 0; i < size; i++) {
        int inner = head & 0xF;
        skip(inner <= BOOLEANS ? BYTE : inner, depth + 1); // a Boolean in a list has a byte
      }
    } else if (type > BOOLEANS) {
      throw new IOException("its table of contents is damaged");
    }
  }

  private String text() throws IOException {
    long length = varint();
    if (length < 0 || length > in.remaining()) {
      throw new IOException("its table of contents is damaged");
    }
    byte[] bytes = new byte[(int) length];
    in.get(bytes);
    return new String(bytes, UTF_8);
  }

  private long varint() {
    long value = 0;
    for (int shift = 0; shift < Long.SIZE; shift += 7) {
      int piece = next();
      value |= (long) (piece & 0x7F) << shift;
      if (piece < 0x80) {
        break;
      }
    }
    return value;
  }

  private int next() {
    return in.get() & 0xFF;
  }
}
