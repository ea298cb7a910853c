package io.github.ringstate.files.row;

import java.util.List;

/**
 * Some rows as bytes.
 *
 * @param rows how many rows
 * @param failed how many of them could not be flown
 * @param parts the bytes of each part
 * @param plain how many bytes each part has when it is not compressed
 * @param bounds what is known of the values of each column; none for a format that keeps no such
 */
@SuppressWarnings("ArrayRecordComponent") // goes straight to a file
public record EncodedRows(
    int rows, int failed, List<byte[]> parts, long[] plain, List<Bounds> bounds) {}
