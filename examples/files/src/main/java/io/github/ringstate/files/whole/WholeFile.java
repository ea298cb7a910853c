package io.github.ringstate.files.whole;

import io.github.ringstate.files.error.UserError;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.LinkOption;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.attribute.PosixFileAttributeView;
import java.nio.file.attribute.PosixFilePermission;
import java.util.Collections;
import java.util.EnumSet;
import java.util.Objects;

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

  private static final int MOST_LINKS = 40;

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
        throw UserError.file(name, "cannot be written: it is a directory");
      }
      if (Files.exists(path) && !Files.isRegularFile(path)) {
        throw UserError.file(
            name,
            "cannot be written: it is not a plain file, and only a plain file can be replaced as a"
                + " whole");
      }
      Path place = followed(path);
      if (Files.exists(place) && isReadOnly(place)) {
        throw UserError.file(name, "cannot be written: it is read-only");
      }
      Path folder = Objects.requireNonNull(place.getParent());
      return new WholeFile(name, place, folder);
    } catch (InvalidPathException invalid) {
      throw UserError.option(option, name, "the name of a file");
    } catch (IOException failed) {
      throw refused(name, failed);
    }
  }

  /** What a path leads to, be it there or not: what a link points to is written, not the link. */
  private static Path followed(Path path) throws IOException {
    Path place = path;
    for (int links = 0; links < MOST_LINKS; links++) {
      Path folder = place.getParent();
      Path last = place.getFileName();
      if (folder == null || last == null || !Files.isDirectory(folder)) {
        throw new NoSuchFileException(path.toString());
      }
      // step by step: behind a link, .. is not the folder before
      Path real = folder.toRealPath();
      place = real.resolve(last);
      if (!Files.isSymbolicLink(place)) {
        return place;
      }
      place = real.resolve(Files.readSymbolicLink(place));
    }
    throw new IOException("its links lead nowhere");
  }

  /** Nobody may write it, or this user may not; the system lets a superuser do it all the same. */
  private static boolean isReadOnly(Path file) throws IOException {
    PosixFileAttributeView posix = Files.getFileAttributeView(file, PosixFileAttributeView.class);
    return !Files.isWritable(file)
        || (posix != null
            && Collections.disjoint(
                posix.readAttributes().permissions(),
                EnumSet.of(
                    PosixFilePermission.OWNER_WRITE,
                    PosixFilePermission.GROUP_WRITE,
                    PosixFilePermission.OTHERS_WRITE)));
  }

  /**
   * Gives a file that is to replace this one the same permissions, where there are such.
   *
   * @param draft the file
   * @throws IOException if the system does not let it
   */
  public void permitAsBefore(Path draft) throws IOException {
    PosixFileAttributeView permitted =
        Files.getFileAttributeView(draft, PosixFileAttributeView.class);
    if (permitted != null && Files.exists(place)) {
      permitted.setPermissions(Files.getPosixFilePermissions(place));
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
      Path draft = draft();
      try (Guard guard = Guard.over(draft)) {
        guard.whole(
            () -> {
              Files.createFile(draft); // fails if another's is there by now
              try {
                Files.write(draft, written.toByteArray());
                permitAsBefore(draft);
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

  /** A name that nobody uses. */
  private Path draft() {
    String start = "." + place.getFileName() + "." + ProcessHandle.current().pid();
    Path draft = folder.resolve(start);
    for (int i = 1; Files.exists(draft, LinkOption.NOFOLLOW_LINKS); i++) {
      draft = folder.resolve(start + "." + i);
    }
    return draft;
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
