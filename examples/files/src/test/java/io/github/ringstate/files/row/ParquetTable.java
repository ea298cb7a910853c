package io.github.ringstate.files.row;

import blue.strategic.parquet.ParquetReader;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.zip.GZIPInputStream;
import org.apache.parquet.ParquetReadOptions;
import org.apache.parquet.bytes.BytesInput;
import org.apache.parquet.column.page.PageReadStore;
import org.apache.parquet.compression.CompressionCodecFactory;
import org.apache.parquet.conf.PlainParquetConfiguration;
import org.apache.parquet.example.data.Group;
import org.apache.parquet.example.data.simple.convert.GroupRecordConverter;
import org.apache.parquet.hadoop.ParquetFileReader;
import org.apache.parquet.hadoop.metadata.CompressionCodecName;
import org.apache.parquet.io.ColumnIOFactory;
import org.apache.parquet.io.RecordReader;
import org.apache.parquet.schema.MessageType;
import org.apache.parquet.schema.Type;

/**
 * A Parquet file as its reference implementation, Apache parquet-java, reads it.
 *
 * @param schema the schema
 * @param said the key-value metadata
 * @param groups how many row groups there are
 * @param records the rows, each value as text, empty where there is none
 */
public record ParquetTable(
    MessageType schema, Map<String, String> said, int groups, List<List<String>> records) {

  /** Reads a file. */
  public static ParquetTable read(Path file) throws IOException {
    try (ParquetFileReader reader =
        ParquetFileReader.open(
            ParquetReader.makeInputFile(file.toFile()),
            ParquetReadOptions.builder(new PlainParquetConfiguration())
                .withCodecFactory(new Gzip())
                .build())) {
      MessageType schema = reader.getFileMetaData().getSchema();
      List<List<String>> records = new ArrayList<>();
      int groups = 0;
      PageReadStore pages = reader.readNextRowGroup();
      while (pages != null) {
        groups++;
        RecordReader<Group> rows =
            new ColumnIOFactory()
                .getColumnIO(schema)
                .getRecordReader(pages, new GroupRecordConverter(schema));
        for (long i = 0; i < pages.getRowCount(); i++) {
          records.add(values(schema, rows.read()));
        }
        pages = reader.readNextRowGroup();
      }
      return new ParquetTable(
          schema, reader.getFileMetaData().getKeyValueMetaData(), groups, records);
    }
  }

  private static List<String> values(MessageType schema, Group row) {
    List<String> values = new ArrayList<>();
    for (Type field : schema.getFields()) {
      boolean present = row.getFieldRepetitionCount(field.getName()) > 0;
      values.add(present ? row.getValueToString(schema.getFieldIndex(field.getName()), 0) : "");
    }
    return values;
  }

  /** The names of the columns. */
  public List<String> header() {
    return schema.getFields().stream().map(Type::getName).toList();
  }

  /** What the reference implementation leaves to Hadoop. */
  private static final class Gzip implements CompressionCodecFactory {
    @Override
    public BytesInputCompressor getCompressor(CompressionCodecName name) {
      throw new UnsupportedOperationException();
    }

    @Override
    public BytesInputDecompressor getDecompressor(CompressionCodecName name) {
      return new BytesInputDecompressor() {
        @Override
        public BytesInput decompress(BytesInput bytes, int size) throws IOException {
          try (GZIPInputStream in = new GZIPInputStream(bytes.toInputStream())) {
            byte[] plain = in.readAllBytes();
            if (plain.length != size) {
              throw new IOException(plain.length + " bytes and not " + size);
            }
            return BytesInput.from(plain);
          }
        }

        @Override
        public void decompress(ByteBuffer in, int inSize, ByteBuffer out, int outSize) {
          throw new UnsupportedOperationException();
        }

        @Override
        public void release() {}
      };
    }

    @Override
    public void release() {}
  }
}
