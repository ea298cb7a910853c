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
   * @param blocks the blocks, in order, at least one, all of the same format
   * @return the chunk
   */
  public static ChunkRows of(List<EncodedRows> blocks) {
    int parts = blocks.get(0).parts().size();
    long[] plain = new long[parts];
    long[] written = new long[parts];
    List<byte[]> pieces = new ArrayList<>();
    CRC32C crc = new CRC32C();
    for (int i = 0; i < parts; i++) {
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
    return new ChunkRows(new Chunk(rows, failed, (int) crc.getValue(), plain, written), pieces);
  }
}
