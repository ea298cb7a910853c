package io.github.ringstate.instructor.craftfile;

import io.github.ringstate.craft.Helicopter;
import io.github.ringstate.instructor.refusal.Refusal;
<<<<<<< HEAD
import io.github.ringstate.instructor.toml.TextFile;
=======
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
import java.util.List;
>>>>>>> sheets

/** A helicopter in a file. */
public final class CraftFile {

  /** More than any craft fills, comments included; a bound for what is read by mistake. */
  private static final int LARGEST = 65_536;

  private CraftFile() {}

  /**
   * Reads a helicopter.
   *
   * @param name the file, as the user named it
   * @return the helicopter
   * @throws Refusal if the file cannot be read or holds a bad value
   */
  public static Helicopter read(String name) {
<<<<<<< HEAD
    return CraftReader.read(name, TextFile.read(name, "a craft", LARGEST));
=======
    return CraftReader.read(name, text(name));
  }

  /**
   * Reads the points of the height-velocity curve that a file may hold.
   *
   * @param name the file, as the user named it
   * @return the points, none if the file holds none
   * @throws Refusal if the file cannot be read or holds a bad value
   */
  public static List<HeightVelocityPoint> heightVelocity(String name) {
    return CraftReader.heightVelocity(name, text(name));
  }

  private static String text(String name) {
    byte[] bytes;
    try (InputStream in = Files.newInputStream(Path.of(name))) {
      bytes = in.readNBytes(LARGEST + 1);
    } catch (IOException | InvalidPathException failed) {
      throw Refusal.file(name, "cannot be read: " + why(failed), failed);
    }
    if (bytes.length > LARGEST) {
      throw Refusal.file(name, "cannot be a craft: it is larger than " + LARGEST + " bytes", null);
    }
    try {
      String text = StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(bytes)).toString();
      return text.startsWith("\uFEFF") ? text.substring(1) : text; // some editors put a mark there
    } catch (CharacterCodingException failed) {
      throw Refusal.file(name, "cannot be read: it is not text in UTF-8", failed);
    }
  }

  private static String why(Exception failed) {
    if (failed instanceof NoSuchFileException) {
      return "there is no such file";
    }
    if (failed instanceof AccessDeniedException) {
      return "permission denied";
    }
    return String.valueOf(failed.getMessage());
>>>>>>> sheets
  }
}
