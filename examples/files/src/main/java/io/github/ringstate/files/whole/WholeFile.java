package io.github.ringstate.files.whole;

import io.github.ringstate.files.error.UserError;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;

/**
 * A file that is written as a whole or not at all: first beside its place, under another name, and
 * then moved there in one step.
 */
public final class WholeFile {

  /** Writes the content of a file. */
  @FunctionalInterface
  public interface Content {
    /**
     * Writes.
     *
     * @param out where to
     * @throws IOException if the stream takes no more
     */
    void writeTo(OutputStream out) throws IOException;
  }

  private final String name;
  private final Path place;
  private final Path folder;

  private WholeFile(String name, Path place, Path folder) {
    this.name = name;
    this.place = place;
    this.folder = folder;
  }

  /**
   * A file by name.
   *
   * @param option where the file was named
   * @param name the name
   * @return the file, which need not exist
   * @throws UserError if the name is none, the folder does not exist, or something other than a
   *     plain file is there
   */
  public static WholeFile named(String option, String name) {
    if (name.isBlank()) {
      throw UserError.option(option, name, "the name of a file");
    }
    try {
      Path path = Path.of(name).toAbsolutePath();
      if (Files.isDirectory(path)) {
        throw UserError.file(name, "cannot be written: it is a directory", null);
      }
      if (Files.exists(path) && !Files.isRegularFile(path)) {
        throw UserError.file(
            name,
            "cannot be written: it is not a plain file, and only a plain file can be replaced as a"
                + " whole",
            null);
      }
      // What a link points to is replaced, not the link.
      Path place = Files.exists(path) ? path.toRealPath() : path.normalize();
      Path folder = place.getParent();
      if (folder == null || !Files.isDirectory(folder)) {
        throw UserError.file(name, "cannot be written: its folder does not exist", null);
      }
      return new WholeFile(name, place, folder);
    } catch (InvalidPathException invalid) {
      throw UserError.option(option, name, "the name of a file");
    } catch (IOException failed) {
      throw refused(name, failed);
    }
  }

  /**
   * Replaces the file, or makes it.
   *
   * @param content what it holds from now on
   * @throws UserError if it cannot be written; the old file is then as it was
   */
  public void replace(Content content) {
    try {
      // in memory first, so that the file itself takes but a moment
      ByteArrayOutputStream written = new ByteArrayOutputStream();
      content.writeTo(written);
      Path draft = folder.resolve("." + place.getFileName() + "." + ProcessHandle.current().pid());
      try (Guard guard = Guard.over(draft)) {
        guard.whole(
            () -> {
              try {
                Files.write(
                    draft,
                    written.toByteArray(),
                    StandardOpenOption.CREATE_NEW,
                    StandardOpenOption.WRITE);
                Files.move(draft, place, StandardCopyOption.ATOMIC_MOVE);
              } finally {
                Files.deleteIfExists(draft);
              }
            });
      }
    } catch (IOException failed) {
      throw refused(name, failed);
    }
  }

  /**
   * Where the file is or will be.
   *
   * @return the absolute path; what a link points to, if it is one
   */
  public Path place() {
    return place;
  }

  /**
   * The folder of the file.
   *
   * @return the absolute path
   */
  public Path folder() {
    return folder;
  }

  /**
   * What to say if something beside the file or the file itself cannot be written.
   *
   * @param failed what the system said
   * @return the user error
   */
  public UserError refused(IOException failed) {
    return refused(name, failed);
  }

  private static UserError refused(String name, IOException failed) {
    String why =
        failed instanceof AccessDeniedException
            ? "permission denied"
            : failed instanceof NoSuchFileException
                ? "its folder does not exist"
                : String.valueOf(failed.getMessage());
    return UserError.file(name, "cannot be written: " + why, failed);
  }
}
