package io.github.ringstate.files.digest;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.DigestOutputStream;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;

/** SHA-256 digests as hexadecimal digits. */
public final class Digest {

  private Digest() {}

  /**
   * The digest of bytes.
   *
   * @param bytes the bytes
   * @return 64 hexadecimal digits
   */
  public static String of(byte[] bytes) {
    return HexFormat.of().formatHex(sha256().digest(bytes));
  }

  /**
   * The digest of a text in UTF-8.
   *
   * @param text the text
   * @return 64 hexadecimal digits
   */
  public static String of(String text) {
    return of(text.getBytes(UTF_8));
  }

  /**
   * The digest of a file.
   *
   * @param file the file
   * @return 64 hexadecimal digits
   * @throws IOException if it cannot be read
   */
  public static String of(Path file) throws IOException {
    try (InputStream in = Files.newInputStream(file)) {
      return of(in);
    }
  }

  /**
   * The digest of all that a stream gives.
   *
   * @param in the stream, which stays open
   * @return 64 hexadecimal digits
   * @throws IOException if it cannot be read
   */
  public static String of(InputStream in) throws IOException {
    MessageDigest digest = sha256();
    in.transferTo(new DigestOutputStream(OutputStream.nullOutputStream(), digest));
    return HexFormat.of().formatHex(digest.digest());
  }

  private static MessageDigest sha256() {
    try {
      return MessageDigest.getInstance("SHA-256");
    } catch (NoSuchAlgorithmException impossible) {
      throw new IllegalStateException(impossible); // every Java platform has it
    }
  }
}
