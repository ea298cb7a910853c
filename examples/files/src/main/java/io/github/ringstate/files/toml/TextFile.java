package io.github.ringstate.files.toml;

import io.github.ringstate.files.error.UserError;
import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;

/** A text that a user wrote, in UTF-8. */
public final class TextFile {

  private TextFile() {}

  /**
   * Reads a text.
   *
   * @param name the file, as the user named it
   * @param what what it should hold, for messages, with its article
   * @param largest the most bytes it may have; a bound for what is read by mistake
   * @return the text
   * @throws UserError if the file cannot be read, is too large or no text
   */
  public static String read(String name, String what, int largest) {
    byte[] bytes = bytes(name, what, largest);
    try {
      String text = StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(bytes)).toString();
      return text.startsWith("\uFEFF") ? text.substring(1) : text; // some editors put a mark there
    } catch (CharacterCodingException failed) {
      throw UserError.file(name, "cannot be read: it is not text in UTF-8", failed);
    }
  }

  /**
   * Reads the bytes of a file of any kind.
   *
   * @param name the file's name
   * @param what what it is meant to be, with its article
   * @param largest the most bytes that it may have
   * @return the bytes
   * @throws UserError if it cannot be read or is larger
   */
  public static byte[] bytes(String name, String what, int largest) {
    try (InputStream in = Files.newInputStream(named(name))) {
      byte[] bytes = in.readNBytes(largest + 1);
      if (bytes.length > largest) {
        throw UserError.file(
            name, "cannot be " + what + ": it is larger than " + largest + " bytes");
      }
      return bytes;
    } catch (IOException failed) {
      throw refused(name, failed);
    }
  }

  /**
   * A file to read, by name.
   *
   * @param name the name, as the user gave it
   * @return the file, which need not exist
   * @throws UserError if the name is none
   */
  public static Path named(String name) {
    try {
      if (!name.isBlank()) {
        return Path.of(name);
      }
    } catch (InvalidPathException wrong) {
      // refused below
    }
    throw UserError.file(UserError.quoted(name), "cannot be read: it is no name of a file");
  }

  /**
   * What to say of a file that could not be read.
   *
   * @param name the file, as the user named it
   * @param failed what the system said
   * @return the user error
   */
  public static UserError refused(String name, IOException failed) {
    return UserError.file(name, "cannot be read: " + why(failed), failed);
  }

  private static String why(IOException failed) {
    if (failed instanceof NoSuchFileException) {
      return "there is no such file";
    }
    if (failed instanceof AccessDeniedException) {
      return "permission denied";
    }
    return String.valueOf(failed.getMessage());
  }
}
