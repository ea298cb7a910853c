package io.github.ringstate.cluster.result;

import static java.nio.charset.StandardCharsets.US_ASCII;

import io.github.ringstate.files.digest.Digest;
import io.github.ringstate.files.whole.WholeFile;
import java.io.IOException;
import java.io.InputStream;
import java.util.EnumSet;
import java.util.UUID;
import org.apache.hadoop.conf.Configuration;
import org.apache.hadoop.fs.CreateFlag;
import org.apache.hadoop.fs.FSDataOutputStream;
import org.apache.hadoop.fs.FileAlreadyExistsException;
import org.apache.hadoop.fs.FileContext;
import org.apache.hadoop.fs.Path;
import org.apache.hadoop.fs.local.RawLocalFs;

/** Files of results on one file system: each is there as a whole or not at all. */
public final class ResultFiles {

  /** Drafts begin with it; readers of folders pass over such files. */
  static final String DRAFT = ".";

  private static final int LONGEST_DIGEST = 128;

  private final FileContext context;

  private ResultFiles(FileContext context) {
    this.context = context;
  }

  /**
   * The files of a file system.
   *
   * @param path any path there
   * @param settings how to reach it
   * @return its files
   * @throws IOException if there is no such file system
   */
  public static ResultFiles at(Path path, Configuration settings) throws IOException {
    Configuration raw = new Configuration(settings);
    // without files of checksums, which would be moved in a step of their own
    raw.set("fs.AbstractFileSystem.file.impl", RawLocalFs.class.getName());
    return new ResultFiles(
        path.toUri().getScheme() == null
            ? FileContext.getFileContext(raw)
            : FileContext.getFileContext(path.toUri(), raw));
  }

  FileContext context() {
    return context;
  }

  /**
   * Whether a file is there.
   *
   * @param place its place
   * @return true if it is, and then it is whole
   * @throws IOException if the file system does not answer
   */
  public boolean exists(Path place) throws IOException {
    return context.util().exists(place);
  }

  /**
   * Puts a file in its place, unless one is there by then. Its folder must be there.
   *
   * <p>Whether the file system replaces a file that came first or refuses to, the place is never
   * empty again once it was filled; whoever fills it must have the same content.
   *
   * @param place the place
   * @param content what the file holds
   * @throws IOException if it cannot be written
   */
  public void place(Path place, WholeFile.Content content) throws IOException {
    place(place, content, draft -> {});
  }

  /**
   * Puts a file in its place as {@link #place}, and before that its digest beside it, so that no
   * file stands there without one.
   *
   * @param place the place
   * @param content what the file holds
   * @throws IOException if it cannot be written
   */
  public void placeWithDigest(Path place, WholeFile.Content content) throws IOException {
    place(
        place,
        content,
        draft -> {
          byte[] digest = digest(draft).getBytes(US_ASCII);
          place(digestOf(place), out -> out.write(digest));
        });
  }

  /**
   * Whether a file is what was put in its place with its digest.
   *
   * @param place the place
   * @return false if the file was changed since, or its digest is missing or was changed
   * @throws IOException if it cannot be read
   */
  public boolean agreesWithDigest(Path place) throws IOException {
    if (!exists(digestOf(place))) {
      return false;
    }
    try (InputStream in = context.open(digestOf(place))) {
      return new String(in.readNBytes(LONGEST_DIGEST), US_ASCII).equals(digest(place));
    }
  }

  /**
   * Removes a file that was put in its place with its digest, and the digest.
   *
   * @param place the place
   * @throws IOException if one of them cannot be removed
   */
  public void removeWithDigest(Path place) throws IOException {
    context.delete(place, false);
    context.delete(digestOf(place), false);
  }

  /** Readers of folders pass over names that begin so. */
  private static Path digestOf(Path place) {
    return new Path(place.getParent(), "_" + place.getName() + ".sha256");
  }

  private String digest(Path file) throws IOException {
    try (InputStream in = context.open(file)) {
      return Digest.of(in);
    }
  }

  /** Something to be done between writing a draft and moving it to its place. */
  @FunctionalInterface
  private interface Before {
    void move(Path draft) throws IOException;
  }

  private void place(Path place, WholeFile.Content content, Before before) throws IOException {
    Path draft = new Path(place.getParent(), DRAFT + place.getName() + DRAFT + UUID.randomUUID());
    boolean placed = false;
    try {
      try (FSDataOutputStream out = context.create(draft, EnumSet.of(CreateFlag.CREATE))) {
        content.writeTo(out);
        out.hsync();
      }
      before.move(draft);
      context.rename(draft, place);
      placed = true;
    } catch (FileAlreadyExistsException sameBits) {
      if (!exists(place)) {
        throw sameBits;
      }
    } finally {
      if (!placed) {
        context.delete(draft, false);
      }
    }
  }
}
