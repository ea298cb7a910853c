package io.github.ringstate.files.row;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.ByteArrayOutputStream;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.function.Consumer;

/**
 * Writes structures in the compact protocol of Apache Thrift, as far as the metadata of Parquet
 * needs it (Thrift specification, "Thrift Compact protocol encoding").
 */
final class CompactThrift {

  private static final int I32 = 5;
  private static final int I64 = 6;
  private static final int BINARY = 8;
  private static final int LIST = 9;
  private static final int STRUCT = 12;
  private static final int SHORT_LIST = 15;

  private final ByteArrayOutputStream out = new ByteArrayOutputStream();
  private final Deque<Integer> outer = new ArrayDeque<>();
  private int last;

  /** Writes one structure. */
  static byte[] struct(Consumer<CompactThrift> fields) {
    CompactThrift thrift = new CompactThrift();
    thrift.body(fields);
    return thrift.out.toByteArray();
  }

  private void body(Consumer<CompactThrift> fields) {
    outer.push(last);
    last = 0;
    fields.accept(this);
    out.write(0); // no more fields
    last = outer.pop();
  }

  CompactThrift i32(int id, int value) {
    field(id, I32);
    varint(((long) value << 1) ^ (value >> 31));
    return this;
  }

  CompactThrift i64(int id, long value) {
    field(id, I64);
    varint((value << 1) ^ (value >> 63));
    return this;
  }

  CompactThrift text(int id, String value) {
    return bytes(id, value.getBytes(UTF_8));
  }

  CompactThrift bytes(int id, byte[] value) {
    field(id, BINARY);
    varint(value.length);
    out.write(value, 0, value.length);
    return this;
  }

  CompactThrift struct(int id, Consumer<CompactThrift> fields) {
    field(id, STRUCT);
    body(fields);
    return this;
  }

  CompactThrift i32s(int id, int... values) {
    field(id, LIST);
    list(values.length, I32);
    for (int value : values) {
      varint(((long) value << 1) ^ (value >> 31));
    }
    return this;
  }

  CompactThrift texts(int id, List<String> values) {
    field(id, LIST);
    list(values.size(), BINARY);
    values.forEach(this::binary);
    return this;
  }

  CompactThrift structs(int id, List<Consumer<CompactThrift>> values) {
    field(id, LIST);
    list(values.size(), STRUCT);
    values.forEach(this::body);
    return this;
  }

  private void field(int id, int type) {
    int step = id - last;
    if (step > 0 && step < 16) {
      out.write((step << 4) | type);
    } else {
      out.write(type);
      varint((long) id << 1);
    }
    last = id;
  }

  private void list(int size, int type) {
    if (size < SHORT_LIST) {
      out.write((size << 4) | type);
    } else {
      out.write((SHORT_LIST << 4) | type);
      varint(size);
    }
  }

  private void binary(String value) {
    byte[] bytes = value.getBytes(UTF_8);
    varint(bytes.length);
    out.write(bytes, 0, bytes.length);
  }

  private void varint(long value) {
    varint(value, out);
  }

  /** Seven bits to a byte, the lowest first. */
  static void varint(long value, ByteArrayOutputStream out) {
    long rest = value;
    while ((rest & ~0x7FL) != 0) {
      out.write((int) ((rest & 0x7F) | 0x80));
      rest >>>= 7;
    }
    out.write((int) rest);
  }
}
