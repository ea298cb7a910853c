package io.github.ringstate.files.row;

import java.util.ArrayList;
import java.util.List;
import java.util.zip.CRC32C;

/**
 * Blocks of rows put together to a chunk.
 *
 * @param chunk what is to be known of it
 * @param pieces its bytes, in order: each part holds all rows before the next begins
 */
public record ChunkRows(Chunk chunk, List<byte[]> pieces) {

  /**
   * Puts blocks together.
   *
   * @param format their format
   * @param blocks the blocks, in order, at least one
   * @return the chunk
   */
  public static ChunkRows of(RowFormat format, List<EncodedRows> blocks) {
    int parts = blocks.get(0).parts().size();
    long[] plain = new long[parts];
    long[] written = new long[parts];
    List<byte[]> pieces = new ArrayList<>();
    CRC32C crc = new CRC32C();
    for (int i = 0; i < parts; i++) {
      RowFormat.PartHead head = format.partHead(i);
      pieces.add(head.bytes());
      crc.update(head.bytes());
      plain[i] = head.plain();
      written[i] = head.bytes().length;
      for (EncodedRows block : blocks) {
        byte[] piece = block.parts().get(i);
        pieces.add(piece);
        crc.update(piece);
        plain[i] += block.plain()[i];
        written[i] += piece.length;
      }
    }
    int rows = blocks.stream().mapToInt(EncodedRows::rows).sum();
    int failed = blocks.stream().mapToInt(EncodedRows::failed).sum();
    List<Bounds> bounds = format.joined(blocks.stream().map(EncodedRows::bounds).toList());
    return new ChunkRows(
        new Chunk(rows, failed, (int) crc.getValue(), plain, written, bounds), pieces);
  }
}
